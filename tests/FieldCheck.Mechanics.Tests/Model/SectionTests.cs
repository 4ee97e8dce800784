using CsCheck;
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

    [Fact]
    public void PipeWithAlmostNoBore_IsTheCircle() =>
        Gen.Double[0.01, 10].Sample(diameter =>
        {
            Section pipe = Section.Of(new SectionShape.RoundTube(diameter, diameter / 2 * (1 - 1e-9)));
            Section circle = Section.Of(new SectionShape.Round(diameter));

            return Near(pipe.Area, circle.Area) && Near(pipe.Inertia, circle.Inertia);
        });

    [Fact]
    public void UprightIWithWebAsWideAsItsFlanges_IsTheRectangle() =>
        Gen.Select(Gen.Double[0.01, 10], Gen.Double[0.01, 10]).Sample((width, depth) =>
        {
            Section section = Section.Of(new SectionShape.I(width, depth / 4, width, depth));
            Section rectangle = Section.Of(new SectionShape.Rectangle(width, depth));

            return Near(section.Area, rectangle.Area) && Near(section.Inertia, rectangle.Inertia);
        });

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

    private static bool Near(double? actual, double? expected) =>
        Math.Abs(actual!.Value / expected!.Value - 1) < 1e-8;
}
