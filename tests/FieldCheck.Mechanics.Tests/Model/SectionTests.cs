using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Model;

public sealed class SectionTests
{
    [Fact]
    public void Rectangle_80By300_HasTheFiguresOfTheTextbook()
    {
        // Strength of Materials (Virginia Tech Press, 2026), Example 9.1: 80 x 300 mm, I = 180e6 mm4.
        Section section = Section.Of(new SectionShape.Rectangle(0.080, 0.300));

        Assert.Equal(180e-6, section.Inertia!.Value, 1e-12);
        Assert.Equal(1.2e-3, section.SectionModulus!.Value, 1e-12);
        Assert.Equal(0.024, section.Area!.Value, 1e-12);
        Assert.Equal(0.020, section.ShearArea!.Value, 1e-12);
        Assert.Equal(0.300, section.Depth);
        Assert.Null(section.WeightPerLength);
    }

    [Fact]
    public void Circle_HasFormFactorTenNinths()
    {
        // I = pi d4 / 64 and A = pi d2 / 4 by hand; the form factor 10/9 is the textbook one of a solid circle.
        Section section = Section.Of(new SectionShape.Round(2));

        Assert.Equal(Math.PI, section.Area!.Value, 1e-14);
        Assert.Equal(Math.PI / 4, section.Inertia!.Value, 1e-14);
        Assert.Equal(Math.PI / 4, section.SectionModulus!.Value, 1e-14);
        Assert.Equal(10.0 / 9, section.Area.Value / section.ShearArea!.Value, 1e-14);
    }

    [Fact]
    public void Pipe_TwoInchSchedule40_HasTheTableFigures()
    {
        // Mott, Machine Elements in Mechanical Design, 4th ed., Table A16-6: 2.375 x 0.154 in,
        // A = 1.075 in2, I = 0.6658 in4, S = 0.5607 in3; half a unit of the last digit, but one unit for I and S,
        // whose printed digits are off by one.
        Section section = Section.Of(new SectionShape.RoundTube(2.375, 0.154));

        Assert.Equal(1.075, section.Area!.Value, 0.0005);
        Assert.Equal(0.6658, section.Inertia!.Value, 0.0001);
        Assert.Equal(0.5607, section.SectionModulus!.Value, 0.0001);
        Assert.Equal(section.Area.Value / 2, section.ShearArea);
    }

    [Fact]
    public void UprightI_ByThreeRectangles_HasTheirSums()
    {
        // By hand: flanges 6 x 1, web 8 x 0.5, depth 10: A = 12 + 4 = 16,
        // I = 2 (6/12 + 6 x 4.5^2) + 0.5 x 8^3 / 12 = 244 + 21.3333.
        Section section = Section.Of(new SectionShape.I(6, 1, 0.5, 10));

        Assert.Equal(16, section.Area!.Value, 1e-12);
        Assert.Equal(244 + 64.0 / 3, section.Inertia!.Value, 1e-12);
        Assert.Equal((244 + 64.0 / 3) / 5, section.SectionModulus!.Value, 1e-12);
        Assert.Equal(5, section.ShearArea!.Value, 1e-12);
        Assert.Equal(10, section.Depth);
    }

    [Fact]
    public void FlatI_ByThreeRectangles_HasTheirSums()
    {
        // By hand: I = 2 x 1 x 6^3 / 12 + 8 x 0.5^3 / 12 = 36 + 0.083333; shear in two flanges of 6 x 1.
        Section section = Section.Of(new SectionShape.I(6, 1, 0.5, 10), flat: true);

        Assert.Equal(16, section.Area!.Value, 1e-12);
        Assert.Equal(36 + 1.0 / 12, section.Inertia!.Value, 1e-12);
        Assert.Equal((36 + 1.0 / 12) / 3, section.SectionModulus!.Value, 1e-12);
        Assert.Equal(10, section.ShearArea!.Value, 1e-12);
        Assert.Equal(6, section.Depth);
    }

    // AISC Shapes Database v15.0, inches: d, bf, tw, mean tf, A, Ix, Iy; flanges of American Standard channels slope 1 in 6.
    // Fillets are left out and the corners of the edges are rounded: hence 1.5 %, and 4 % for the weak axis.
    [Theory]
    [InlineData(3, 1.41, 0.17, 0.273, 1.2, 1.65, 0.191)]
    [InlineData(8, 2.26, 0.22, 0.39, 3.37, 32.5, 1.31)]
    [InlineData(12, 2.94, 0.282, 0.501, 6.08, 129, 3.86)]
    [InlineData(15, 3.4, 0.4, 0.65, 10, 315, 8.07)]
    public void ChannelWithSlopingFlanges_HasTheTableFigures(
        double d, double bf, double tw, double tf, double area, double strong, double weak)
    {
        Section section = Section.Of(new SectionShape.Channel(bf, tf, tw, d) { FlangeSlope = 1 / 6.0 });

        Assert.InRange(section.Area!.Value / area, 0.985, 1.015);
        Assert.InRange(section.Inertia!.Value / strong, 0.985, 1.015);
        Assert.InRange(section.LateralInertia!.Value / weak, 0.96, 1.04);
    }

    // By hand: the webs over the whole depth, or upright flanges as two rectangles.
    [Theory]
    [InlineData(false, 2 * 0.1 * 3, 0.5 * 10)]
    [InlineData(true, 2 * 0.1 * 2, 2 * 6 * 1 * 5 / 6.0)]
    public void TubeAndChannel_ShearInTheirWebs(bool flat, double tube, double channel)
    {
        Section rectangular = Section.Of(new SectionShape.RectangularTube(2, 3, 0.1, 0.2, 0.1), flat);
        Section open = Section.Of(new SectionShape.Channel(6, 1, 0.5, 10), flat);

        Assert.Equal(tube, rectangular.ShearArea!.Value, 1e-12);
        Assert.Equal(channel, open.ShearArea!.Value, 1e-12);
        Assert.Equal(flat ? 2 : 3, rectangular.Depth);
        Assert.Equal(flat ? 6 : 10, open.Depth);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    [InlineData(-1, 1)]
    [InlineData(double.NaN, 1)]
    public void Rectangle_WithoutSize_Throws(double width, double depth) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Section.Of(new SectionShape.Rectangle(width, depth)));

    [Fact]
    public void Pipe_WallOfHalfItsDiameter_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Section.Of(new SectionShape.RoundTube(2, 1)));

    public static TheoryData<SectionShape> ImpossibleShapes =>
    [
        new SectionShape.Rectangle(1, 1, 0),
        new SectionShape.Round(0),
        new SectionShape.RoundTube(1, 0),
        new SectionShape.RectangularTube(2, 3, 1, 0, 0),
        new SectionShape.RectangularTube(2, 3, 0.1, 1.1, 1),
        new SectionShape.RectangularTube(2, 3, 0.1, 0.5, 0.91),
        new SectionShape.RectangularTube(2, 3, 0.1, 0.35, 0),
        new SectionShape.RectangularTube(2, 3, 0.1, -0.1, 0),
        new SectionShape.I(6, 5, 0.5, 10),
        new SectionShape.I(6, 1, 6.1, 10),
        new SectionShape.I(6, 1, 0.5, 10, -0.1),
        new SectionShape.I(6, 1, 0.5, 10, 2.8),
        new SectionShape.I(20, 1, 0.5, 10, 4.1),
        new SectionShape.Channel(6, 1, 6.1, 10),
        new SectionShape.Channel(6, 1, 0.5, 2),
        new SectionShape.Channel(6, 1, 1, 10) { FlangeSlope = 0.4 },
        new SectionShape.Channel(6, 1, 1, 3.5) { FlangeSlope = 0.3 },
        new SectionShape.Channel(6, 1, 1, 10) { FlangeSlope = -0.1 },
    ];

    [Theory]
    [MemberData(nameof(ImpossibleShapes))]
    public void ShapeThatCannotBe_Throws(SectionShape shape) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Section.Of(shape));
}
