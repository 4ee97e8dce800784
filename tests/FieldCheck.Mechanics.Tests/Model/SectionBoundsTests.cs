using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Model;

/// <summary>Where the rules of sections begin and end.</summary>
public sealed class SectionBoundsTests
{
    public static TheoryData<SectionShape> Impossible =>
    [
        new SectionShape.I(6, 0, 0.5, 10),
        new SectionShape.I(6, 1, 0, 10),
        new SectionShape.RectangularTube(2, 3, 0, 0.1, 0.5),
        new SectionShape.RectangularTube(2, 3, 0.1, 0, -0.1),
        new SectionShape.RectangularTube(2, 3, 0.1, 1.05, 0.85),
    ];

    /// <summary>Each breaks one rule and no other.</summary>
    [Theory]
    [MemberData(nameof(Impossible))]
    public void ShapeThatBreaksOneRule_Throws(SectionShape shape) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Section.Of(shape));

    [Fact]
    public void NoShape_Throws() => Assert.Throws<ArgumentNullException>(() => Section.Of(null!));

    public static TheoryData<SectionShape, double> Thickness => new()
    {
        { new SectionShape.Rectangle(2, 3), 2 },
        { new SectionShape.Rectangle(3, 2), 2 },
        { new SectionShape.Round(4), 4 },
        { new SectionShape.RoundTube(4, 0.5), 0.5 },
        { new SectionShape.I(6, 1, 0.5, 10), 1 },
        { new SectionShape.I(6, 0.5, 1, 10), 1 },
        { new SectionShape.Channel(6, 1, 0.5, 10), 1 },
        { new SectionShape.Channel(6, 0.5, 1, 10), 1 },
    };

    [Theory]
    [MemberData(nameof(Thickness))]
    public void Thickest_IsThatOfTheThickestPlate_OrTheLesserSideOfABar(SectionShape shape, double thickness) =>
        Assert.Equal(thickness, shape.Thickest);

    [Fact]
    public void ChannelWithoutFlangesBeyondItsWeb_IsABar()
    {
        Section channel = Section.Of(new SectionShape.Channel(1, 1, 1, 10));
        Section bar = Section.Of(new SectionShape.Rectangle(1, 10));

        Assert.Equal(10, channel.Area!.Value, 1e-12);
        Assert.Equal(bar.Inertia!.Value, channel.Inertia!.Value, 1e-12);
        Assert.Equal(bar.LateralInertia!.Value, channel.LateralInertia!.Value, 1e-12);
    }

    // The fit to rolled sections holds to a fillet of two flange thicknesses, a web as thick as the flange, and a section
    // three times as wide and four times as deep; beyond, the plates are counted apart, and they are less.
    [Theory]
    [InlineData(6, 0.8, 12, 2, true)]
    [InlineData(6, 1, 12, 1, true)]
    [InlineData(3, 0.5, 12, 1, true)]
    [InlineData(6, 0.8, 4, 1, true)]
    [InlineData(6, 0.8, 12, 2.01, false)]
    [InlineData(6, 1.01, 12, 1, false)]
    [InlineData(2.99, 0.5, 12, 1, false)]
    [InlineData(6, 0.8, 3.99, 0.9, false)]
    [InlineData(6, 0.8, 12, 0, false)]
    public void FilletsCountInTorsion_OnlyWhereTheFitHolds(double width, double web, double depth, double radius, bool counts)
    {
        double whole = Section.Of(new SectionShape.I(width, 1, web, depth, radius)).TorsionConstant!.Value;
        double flange = Section.Of(new SectionShape.Rectangle(width, 1)).TorsionConstant!.Value;
        double between = Section.Of(new SectionShape.Rectangle(depth - 2, web)).TorsionConstant!.Value;
        double apart = 2 * flange + between;

        Assert.InRange(whole / apart, counts ? 1.01 : 1 - 1e-12, counts ? 3 : 1 + 1e-12);
    }

    [Fact]
    public void LeastWidthBetweenTwoLevels_IsTheNarrowerOfTheTwo()
    {
        PlaneArea steps = new([new AreaPart.Strip(2, 0, 1), new AreaPart.Strip(3, 1, 2)]);
        PlaneArea half = new([new AreaPart.HalfDisc(1, 0, IsUpper: true)]);

        Assert.Equal(2, steps.LeastWidth(0, 1));
        Assert.Equal(3, steps.LeastWidth(1, 2));
        Assert.Equal(1.6, half.LeastWidth(0, 0.6), 1e-15);
        Assert.Equal(0, half.LeastWidth(0.6, 1), 1e-15);
    }
}
