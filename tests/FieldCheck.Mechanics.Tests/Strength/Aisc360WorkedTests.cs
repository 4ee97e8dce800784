using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Worked apart, in kips and inches, from the formulas of AISC 360-16 chapters F and G; every step is held.</summary>
public sealed class Aisc360WorkedTests
{
    private const double Close = 1e-9;

    /// <summary>W18x50, Fy = 50 ksi: Lb [in], Mn [kip·in].</summary>
    [Theory]
    [InlineData(60, 5050)]
    [InlineData(140, 4033.496601922394)]
    [InlineData(210, 2955.329897673464)]
    [InlineData(300, 1731.0180579230707)]
    public void WideFlange_BucklesSideways(double length, double moment)
    {
        Resistance found = Lateral(WideFlange.Named("W18x50"), 50, length);

        Assert.Equal(CheckClause.Aisc360F2Lateral, found.Clause);
        Same(1.6516328758118692, Steel.Term(found, CheckSymbol.RadiusOfGyration) / Steel.Inch);
        Same(1.9817716372275571, Steel.Term(found, CheckSymbol.EffectiveRadius) / Steel.Inch);
        Same(17.43, Steel.Term(found, CheckSymbol.FlangeDistance) / Steel.Inch);
        Same(70.0067930620303, Steel.Term(found, CheckSymbol.PlasticLength) / Steel.Inch);
        Same(203.4857680520337, Steel.Term(found, CheckSymbol.ElasticLength) / Steel.Inch);
        Same(5050, Steel.Term(found, CheckSymbol.PlasticMoment) / Steel.KipInch);
        Same(moment, Steel.Term(found, CheckSymbol.NominalMoment) / Steel.KipInch);
        Same(0.9 * moment, found.Limit!.Value / Steel.KipInch);
    }

    [Fact]
    public void ElasticBuckling_TellsItsStress()
    {
        Assert.Equal(
            33.24330593558452,
            Steel.Term(Lateral(WideFlange.Named("W18x50"), 50, 210), CheckSymbol.CriticalStress) / Steel.Ksi,
            Close);
        Assert.DoesNotContain(
            Lateral(WideFlange.Named("W18x50"), 50, 140).Terms, term => term.Symbol == CheckSymbol.CriticalStress);
    }

    /// <summary>C15x33.9, Fy = 36 ksi, with c = 1.0772516: Lb [in], Mn [kip·in].</summary>
    [Theory]
    [InlineData(40, 1828.8)]
    [InlineData(60, 1738.5463684418125)]
    [InlineData(240, 723.4871494413782)]
    public void Channel_BucklesSideways(double length, double moment)
    {
        Resistance found = Lateral(Aisc360ExampleTests.Channel(), 36, length);

        Same(44.8742479974131, Steel.Term(found, CheckSymbol.PlasticLength) / Steel.Inch);
        Same(173.98682930424084, Steel.Term(found, CheckSymbol.ElasticLength) / Steel.Inch);
        Same(moment, Steel.Term(found, CheckSymbol.NominalMoment) / Steel.KipInch);
    }

    /// <summary>Tube 4 in wide, 8 in deep, wall 1/4 in, Fy = 50 ksi: Lb [in], Mn [kip·in].</summary>
    [Theory]
    [InlineData(120, 739.0625)]
    [InlineData(480, 703.5239152879673)]
    [InlineData(6000, 233.362682400141)]
    public void DeepTube_BucklesSideways(double length, double moment)
    {
        Resistance found = Lateral(Steel.Tube(4 * Steel.Inch, 8 * Steel.Inch, 0.25 * Steel.Inch), 50, length);

        Assert.Equal(CheckClause.Aisc360F7Lateral, found.Clause);
        Same(123.14445143144862, Steel.Term(found, CheckSymbol.PlasticLength) / Steel.Inch);
        Same(3360.3701207788936, Steel.Term(found, CheckSymbol.ElasticLength) / Steel.Inch);
        Same(moment, Steel.Term(found, CheckSymbol.NominalMoment) / Steel.KipInch);
    }

    /// <summary>Bar 1/2 in wide, 6 in deep, Fy = 50 ksi: Lb [in], Mn [kip·in].</summary>
    [Theory]
    [InlineData(1.5, 225)]
    [InlineData(20, 193.98620689655172)]
    [InlineData(40, 159.97241379310344)]
    [InlineData(60, 114.79166666666666)]
    public void BarOnEdge_BucklesSideways(double length, double moment)
    {
        Resistance found = Lateral(Steel.Bar(0.5 * Steel.Inch, 6 * Steel.Inch), 50, length);

        Assert.Equal(CheckClause.Aisc360F11Lateral, found.Clause);
        Same(length * 24, Steel.Term(found, CheckSymbol.BarSlenderness));
        Same(moment, Steel.Term(found, CheckSymbol.NominalMoment) / Steel.KipInch);
    }

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

    private static Resistance Lateral(Section section, double yieldKsi, double length) => Steel.Find(
        StrengthRules.Aisc360Lrfd,
        Steel.Unbraced(section, Steel.American(yieldKsi), length * Steel.Inch),
        CheckKind.LateralStability)!;

    private static void Same(double expected, double actual) => Assert.Equal(expected, actual, Close * expected);
}
