using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Worked apart, in kips and inches, from the formulas of AISC 360-16 chapters F and G; every step is held.</summary>
public sealed class Aisc360WorkedTests
{
    private const double Close = 1e-9;

    /// <summary>Welded I, flanges b x tf, web 0.4 in, 20 in deep, Fy = 50 ksi, on edge and flat.</summary>
    [Theory]
    [InlineData(12, 0.5, false, CheckClause.Aisc360F3Flange, 6957.28603349746)]
    [InlineData(20, 0.4, false, CheckClause.Aisc360F3Flange, 4274.205754963458)]
    [InlineData(12, 0.5, true, CheckClause.Aisc360F6Flange, 1647.7315791109636)]
    [InlineData(20, 0.4, true, CheckClause.Aisc360F6Flange, 1707.84784384)]
    [InlineData(12, 1.0, true, CheckClause.Aisc360F6Yielding, 3636)] // 50 x (1 x 12² / 2 + 18 x 0.4² / 4)
    public void WideFlanges_BuckleLocally(double b, double tf, bool isFlat, CheckClause clause, double moment)
    {
        Section section = Steel.Plates(
            b * Steel.Inch, tf * Steel.Inch, 0.4 * Steel.Inch, 20 * Steel.Inch, false, isFlat);

        Worked(section, clause, moment);
    }

    /// <summary>Tubes, Fy = 50 ksi: width, depth, wall [in].</summary>
    [Theory]
    [InlineData(4, 8, 0.25, CheckClause.Aisc360F7Yielding, 739.0625)]
    [InlineData(10, 6, 0.3125, CheckClause.Aisc360F7Flange, 1053.4209210438053)]
    [InlineData(6, 20, 0.25, CheckClause.Aisc360F7Web, 3645.4018616040657)]
    public void RectangularTubes_BuckleLocally(
        double width, double depth, double wall, CheckClause clause, double moment) => Worked(
        Steel.Tube(width * Steel.Inch, depth * Steel.Inch, wall * Steel.Inch), clause, moment);

    /// <summary>Round tubes of 20 in, Fy = 50 ksi: wall, A, S, Z [in], Mn [kip·in], Vn [kip].</summary>
    [Theory]
    [InlineData(
        0.25, 15.511613727099604, 75.64335381605916, 97.52083333333333, 4358.002721727708, 232.67420590649405)]
    [InlineData(0.1, 6.2517693806436725, 30.947821376531255, 39.60133333333321, 1480.8532528670205, 24.99888050020907)]
    public void RoundTubes_BuckleLocally(double wall, double area, double s, double z, double moment, double shear)
    {
        Section section = Steel.Of(new SectionShape.RoundTube(20 * Steel.Inch, wall * Steel.Inch), area, s, z);

        Worked(section, CheckClause.Aisc360F8Local, moment);
        Assert.Equal(shear, Shear(section, CheckClause.Aisc360G5), Close * shear);
    }

    /// <summary>Shear [kip], Fy = 50 ksi.</summary>
    [Fact]
    public void SlenderWebs_ShearSooner()
    {
        Section welded = Steel.Plates(12 * Steel.Inch, 0.5 * Steel.Inch, 0.3 * Steel.Inch, 40 * Steel.Inch, false);
        Section tube = Steel.Tube(6 * Steel.Inch, 20 * Steel.Inch, 0.25 * Steel.Inch);
        Section flat = Steel.Plates(20 * Steel.Inch, 0.4 * Steel.Inch, 0.4 * Steel.Inch, 20 * Steel.Inch, false, true);

        Same(169.52605622630693, Shear(welded, CheckClause.Aisc360G2));
        Same(210.52884615384616, Shear(tube, CheckClause.Aisc360G4));
        Same(480, Shear(flat, CheckClause.Aisc360G6));
        Same(60, Shear(Steel.Bar(0.5 * Steel.Inch, 6 * Steel.Inch), CheckClause.SolidBarShear));
    }

    /// <summary>
    /// HSS8x4x1/4 with a wall of 0.233 in and corners of two walls outside: no more than half a wall is taken off for a
    /// corner where that would hide slenderness, the whole of it where it would add area.
    /// </summary>
    [Fact]
    public void Corners_NeverHelp()
    {
        const double Wall = 0.233;
        Section section = Section.Of(new SectionShape.RectangularTube(
            4 * Steel.Inch, 8 * Steel.Inch, Wall * Steel.Inch, 2 * Wall * Steel.Inch, Wall * Steel.Inch));
        Member member = Steel.Braced(section, Steel.American(50));

        Resistance bending = Steel.Find(StrengthRules.Aisc360Asd, member, CheckKind.Bending)!;
        Resistance shear = Steel.Find(StrengthRules.Aisc360Asd, member, CheckKind.Shear)!;

        Same((4 - 3 * Wall) / Wall, Steel.Term(bending, CheckSymbol.FlangeSlenderness));
        Same((8 - 3 * Wall) / Wall, Steel.Term(bending, CheckSymbol.WebSlenderness));
        Same(2 * (8 - 4 * Wall) * Wall * Steel.Inch * Steel.Inch, Steel.Term(shear, CheckSymbol.WebArea));
    }

    private static void Worked(Section section, CheckClause clause, double moment)
    {
        Resistance found =
            Steel.Find(StrengthRules.Aisc360Asd, Steel.Braced(section, Steel.American(50)), CheckKind.Bending)!;

        Assert.Equal(clause, found.Clause);
        Same(moment / 1.67, found.Limit!.Value / Steel.KipInch);
    }

    /// <summary>The nominal shear [kip].</summary>
    private static double Shear(Section section, CheckClause clause)
    {
        Resistance found =
            Steel.Find(StrengthRules.Aisc360Lrfd, Steel.Braced(section, Steel.American(50)), CheckKind.Shear)!;

        Assert.Equal(clause, found.Clause);
        Same(0.9 * Steel.Term(found, CheckSymbol.NominalShear), found.Limit!.Value);
        return Steel.Term(found, CheckSymbol.NominalShear) / Steel.Kip;
    }

    private static void Same(double expected, double actual) => Assert.Equal(expected, actual, Close * expected);
}
