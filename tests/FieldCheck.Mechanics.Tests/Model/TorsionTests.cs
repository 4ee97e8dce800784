using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Model;

/// <summary>Torsion and warping constants against printed ones.</summary>
public sealed class TorsionTests
{
    // S. P. Timoshenko, J. N. Goodier, Theory of Elasticity, table of k1 = J / (wide x thin^3); from memory.
    [Theory]
    [InlineData(1.0, 0.1406)]
    [InlineData(1.2, 0.166)]
    [InlineData(1.5, 0.196)]
    [InlineData(2.0, 0.229)]
    [InlineData(2.5, 0.249)]
    [InlineData(3.0, 0.263)]
    [InlineData(4.0, 0.281)]
    [InlineData(5.0, 0.291)]
    [InlineData(10.0, 0.312)]
    public void Rectangle_HasTheFactorOfTheTextbook(double wide, double factor)
    {
        double digits = wide == 1 ? 0.00005 : 0.0006;

        Assert.Equal(factor, Section.Of(new SectionShape.Rectangle(1, wide)).TorsionConstant!.Value / wide, digits);
        Assert.Equal(factor, Section.Of(new SectionShape.Rectangle(wide, 1)).TorsionConstant!.Value / wide, digits);
    }

    // The usual closed form 1/3 - 0.21 (b/d) (1 - b^4 / 12 d^4) is said to be within half a per cent.
    [Theory]
    [InlineData(1.0)]
    [InlineData(1.3)]
    [InlineData(2.0)]
    [InlineData(7.0)]
    [InlineData(100.0)]
    public void Rectangle_IsNearTheUsualClosedForm(double wide)
    {
        double usual = wide / 3 - 0.21 * (1 - 1 / (12 * Math.Pow(wide, 4)));

        Assert.Equal(1, usual / Section.Of(new SectionShape.Rectangle(1, wide)).TorsionConstant!.Value, 0.005);
    }

    [Fact]
    public void Plies_TwistAndBendSidewaysEachOnItsOwn()
    {
        Section one = Section.Of(new SectionShape.Rectangle(0.05, 0.2));
        Section three = Section.Of(new SectionShape.Rectangle(0.05, 0.2, 3));

        Assert.Equal(3 * one.TorsionConstant!.Value, three.TorsionConstant!.Value, 1e-15);
        Assert.Equal(3 * one.LateralInertia!.Value, three.LateralInertia!.Value, 1e-15);
        Assert.Equal(3 * 0.05 * Math.Pow(0.2, 3) / 12, three.Inertia!.Value, 1e-15);
    }

    // AISC Shapes Database v15.0, inches: d, bf, tw, tf, k_des, J, Cw; the slenderest, the stoutest, and the two whose
    // printed J is farthest from ours. J is printed to three digits; k_des - tf is only about the radius of the fillet.
    [Theory]
    [InlineData("W4x13", 4.16, 4.06, 0.28, 0.345, 0.595, 0.151, 14.0)]
    [InlineData("W6x25", 6.38, 6.08, 0.32, 0.455, 0.705, 0.461, 150)]
    [InlineData("W8x10", 7.89, 3.94, 0.17, 0.205, 0.505, 0.0426, 30.9)]
    [InlineData("W14x43", 13.7, 8.0, 0.305, 0.53, 1.12, 1.05, 1950)]
    [InlineData("W21x50", 20.8, 6.53, 0.38, 0.535, 1.04, 1.14, 2570)]
    [InlineData("W30x99", 29.7, 10.5, 0.52, 0.67, 1.32, 3.77, 26800)]
    public void RolledI_HasThePrintedConstants(
        string name, double d, double bf, double tw, double tf, double foot, double torsion, double warping)
    {
        Section section = Section.Of(new SectionShape.I(bf, tf, tw, d, foot - tf, IsRolled: true));

        Assert.InRange(section.TorsionConstant!.Value / torsion, 0.994, 1.006);
        Assert.InRange(section.WarpingConstant!.Value / warping, 0.983, 1.017);
        Assert.NotEmpty(name);
    }

    // European I sections, mm, with their printed torsion constant in cm4; from memory.
    [Theory]
    [InlineData("IPE 200", 200, 100, 5.6, 8.5, 12, 6.98)]
    [InlineData("IPE 300", 300, 150, 7.1, 10.7, 15, 20.12)]
    [InlineData("IPE 400", 400, 180, 8.6, 13.5, 21, 51.08)]
    [InlineData("IPE 600", 600, 220, 12, 19, 24, 165.4)]
    [InlineData("HEA 200", 190, 200, 6.5, 10, 18, 20.98)]
    [InlineData("HEB 200", 200, 200, 9, 15, 18, 59.28)]
    [InlineData("HEB 300", 300, 300, 11, 19, 27, 185)]
    public void EuropeanI_IsNearThePrintedConstant(
        string name, double h, double b, double tw, double tf, double r, double printed)
    {
        Section section = Section.Of(new SectionShape.I(b, tf, tw, h, r, IsRolled: true));

        Assert.InRange(section.TorsionConstant!.Value / (printed * 1e4), 0.985, 1.025);
        Assert.NotEmpty(name);
    }

    // EN 10210-2, 100 x 100 x 5 with corners of 1.5 and 1.0 walls: A = 18.7 cm2, I = 279 cm4, W = 55.9 cm3,
    // Wpl = 66.4 cm3, It = 439 cm4; from memory.
    [Fact]
    public void SquareTube_HasThePrintedFigures()
    {
        Section section = Section.Of(new SectionShape.RectangularTube(100, 100, 5, 7.5, 5));

        Assert.Equal(18.7, section.Area!.Value / 1e2, 0.05);
        Assert.Equal(279, section.Inertia!.Value / 1e4, 0.5);
        Assert.Equal(55.9, section.SectionModulus!.Value / 1e3, 0.05);
        Assert.Equal(66.4, section.PlasticModulus!.Value / 1e3, 0.05);
        Assert.Equal(439, section.TorsionConstant!.Value / 1e4, 0.5);
    }

    // AISC Shapes Database, J and Cw of American Standard channels, inches; from memory. Taper and fillets are left out.
    [Theory]
    [InlineData("C6x8.2", 6, 1.92, 0.2, 0.343, 0.0736, 4.70)]
    [InlineData("C8x11.5", 8, 2.26, 0.22, 0.39, 0.130, 16.5)]
    [InlineData("C10x15.3", 10, 2.6, 0.24, 0.436, 0.209, 45.5)]
    public void Channel_IsBelowThePrintedConstants(
        string name, double d, double bf, double tw, double tf, double torsion, double warping)
    {
        Section section = Section.Of(new SectionShape.Channel(bf, tf, tw, d));

        Assert.InRange(section.TorsionConstant!.Value / torsion, 0.75, 1);
        Assert.InRange(section.WarpingConstant!.Value / warping, 0.97, 1.01);
        Assert.NotEmpty(name);
    }
}
