using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Lines written down by their polynomials, so that every figure follows by hand.</summary>
public sealed class InfluenceLineTests
{
    private static readonly Target Reaction = Target.Of(0, ReactionPart.Vertical);

    // Across 4t (1 - t), along 1 + t, of a couple (1 - t)², with t from 0 to 1 over 2 m from 3 m on.
    private static readonly InfluenceLine Bow = new([new Stretch(3, 5, 3, 2, [0, 4, -4, 0, 1, 1, 1, -2, 1])], Reaction, 1);

    [Theory]
    [InlineData(3.4, 4.4, 0.64, 1)] // t 0.2 to 0.7, with the top at 0.5
    [InlineData(4.2, 4.8, 0.36, 0.96)] // t 0.6 to 0.9
    [InlineData(3, 5, 0, 1)]
    [InlineData(4.8, 4.8, 0.36, 0.36)]
    [InlineData(0, 3.4, 0, 0.64)] // what lies off the line is not looked at
    [InlineData(4.8, 9, 0, 0.36)]
    [InlineData(6, 9, 0, 0)] // rounding beyond the end: the end itself
    [InlineData(1, 2, 0, 0)]
    public void Range_OfAForceAcross(double from, double to, double low, double high)
    {
        (double least, double greatest) = Bow.RangeOfOne(from, to, along: false);
        (double twiceLeast, double twiceGreatest) = Bow.RangeOf(new Load.Point(4, -2), from, to);

        Assert.Equal((low, high), (Rounded(least), Rounded(greatest)));
        Assert.Equal((-2 * high, -2 * low), (Rounded(twiceLeast), Rounded(twiceGreatest)));
    }

    [Fact]
    public void Range_OfAForceAlong_OfACouple_AndOfBothWaysTogether()
    {
        Assert.Equal((1.25, 1.5), Bow.RangeOfOne(3.5, 4, along: true));
        Assert.Equal((3, 6.75), Bow.RangeOf(new Load.Couple(4, 12), 3.5, 4)); // t 0.25 to 0.5: 12 (1 - t)²

        // 12t (1 - t) + 2 (1 + t) is greatest at t = 7/12: 73/12; 2 at t = 0 and 4 at t = 1.
        (double low, double high) = Bow.RangeOf(new Load.Point(4, 3, 2), 3, 5);
        Assert.Equal((2, 73 / 12.0), (low, high), NearlyEqual);
    }

    // |4 - 8t| per 2 m; its greatest at an end of the range.
    [Theory]
    [InlineData(0, 3.4, 4.4, 1.2)]
    [InlineData(0, 4.2, 4.8, 1.6)]
    [InlineData(0, 0, 9, 2)]
    [InlineData(1, 3.4, 4.4, 0.5)]
    [InlineData(2, 3.4, 4.4, 0.8)]
    [InlineData(2, 4.4, 4.8, 0.3)]
    [InlineData(0, 5, 9, 0)]
    [InlineData(0, 0, 3, 0)]
    public void Steepness_IsTheGreatestSlopeInTheRange(int part, double from, double to, double steepest) =>
        Assert.Equal(steepest, Rounded(Bow.Steepness(part, from, to)));

    // t³ - 1.5t²: slope 3t² - 3t, -0.75 at its turn in the middle, -0.5625 at 0.25 and 0.75.
    [Fact]
    public void Steepness_LooksAtTheTurnOfTheSlope()
    {
        InfluenceLine line = new([new Stretch(0, 1, 0, 1, [0, 0, -1.5, 1, 0, 0, 0, 0, 0])], Reaction, 1);

        Assert.Equal(0.75, Rounded(line.Steepness(0, 0.25, 0.75)));
    }

    [Theory]
    [InlineData(Curve.Shear, false, 1)]
    [InlineData(Curve.Shear, true, 0)]
    [InlineData(Curve.Axial, true, 1)]
    [InlineData(Curve.Axial, false, 0)]
    [InlineData(Curve.Moment, false, 0)]
    public void Jump_IsThatOfTheForceInItsOwnSection(Curve curve, bool along, double jump)
    {
        InfluenceLine line = new([], Target.At(5, Side.Left, curve), 1);

        Assert.Equal(jump, line.JumpOf(along, 4, 6));
        Assert.Equal(0, line.JumpOf(along, 5, 6));
        Assert.Equal(0, line.JumpOf(along, 4, 5));
        Assert.Equal(0, new InfluenceLine([], Reaction, 1).JumpOf(along, 4, 6));
    }

    // -0.5 left of 5 m, 0.5 right of it: the shear in the middle of a simple beam, with loads near it only. A load at 5 m
    // itself stands right of the section that is just left of it, and left of the one that is just right of it.
    [Theory]
    [InlineData(Side.Left, 5, 8, 0.5, 0.5)]
    [InlineData(Side.Left, 2, 5, -0.5, 0.5)]
    [InlineData(Side.Right, 2, 5, -0.5, -0.5)]
    [InlineData(Side.Right, 5, 8, -0.5, 0.5)]
    [InlineData(Side.Right, 2, 8, -0.5, 0.5)]
    [InlineData(Side.Left, 5, 5, -0.5, 0.5)] // at the section itself: to either side of it
    [InlineData(Side.Right, 5, 5, -0.5, 0.5)]
    public void RangeThatEndsAtTheSection_TakesTheLoadOnItsOwnSide(Side side, double from, double to, double low, double high)
    {
        InfluenceLine line = new(
            [Level(0, 5, -0.5), Level(5, 10, 0.5)], Target.At(5, side, Curve.Shear), 1);

        Assert.Equal((low, high), line.RangeOfOne(from, to, along: false));
    }

    // A reaction: where two elements meet either side counts, where a couple stands at a hinge only its own part.
    [Fact]
    public void RangeThatEndsWhereTwoStretchesMeet_TakesTheSideOfTheCouple()
    {
        InfluenceLine line = new([Level(0, 5, -1), Level(5, 10, 3)], Reaction, 1);

        Assert.Equal((-1, 3), line.RangeOfOne(2, 5, along: false));
        Assert.Equal((-1, -1), line.RangeOf(new Load.Couple(4, 1, Side.Left), 2, 5));
        Assert.Equal((-1, 3), line.RangeOf(new Load.Couple(6, 1, Side.Left), 5, 8));
        Assert.Equal((3, 3), line.RangeOf(new Load.Couple(6, 1, Side.Right), 5, 8));
        Assert.Equal((-1, 3), line.RangeOf(new Load.Couple(4, 1, Side.Right), 2, 5));
        Assert.Equal((-1, -1), line.RangeOf(new Load.Couple(0, 1, Side.Left), 0, 0));
    }

    // Rounding may put an end of the beam beyond it: there the couple stands on the only part there is.
    [Fact]
    public void CoupleAtAnEndOfTheBeam_StandsOnItsOnlyPart()
    {
        InfluenceLine line = new([Level(0, 5, -1), Level(5, 10, 3)], Reaction, 1);

        Assert.Equal((-1, -1), line.RangeOf(new Load.Couple(0, 1, Side.Left), -1, 0));
        Assert.Equal((3, 3), line.RangeOf(new Load.Couple(10, 1, Side.Right), 10, 11));
    }

    // Only at the section itself does the side of the section count.
    [Theory]
    [InlineData(Side.Left, 8, 9)]
    [InlineData(Side.Right, 7, 8)]
    public void RangeThatEndsAwayFromTheSection_TakesBothSides(Side side, double from, double to)
    {
        InfluenceLine line = new([Level(0, 5, -1), Level(5, 8, 3), Level(8, 10, 4)], Target.At(5, side, Curve.Shear), 1);

        Assert.Equal((3, 4), line.RangeOfOne(from, to, along: false));
    }

    // A stretch of no length at the section is the load that stands just there.
    [Fact]
    public void StretchOfNoLength_CountsOnlyWhereItIsReached()
    {
        InfluenceLine line = new(
            [Level(0, 5, -1), Level(5, 5, 7), Level(5, 10, 3)], Target.At(5, Side.Left, Curve.Moment), 1);

        Assert.Equal((3, 7), line.RangeOfOne(5, 8, along: false));
        Assert.Equal((-1, -1), line.RangeOfOne(2, 4, along: false));
        Assert.Equal(0, line.Steepness(0, 4, 6));
    }

    private static Stretch Level(double from, double to, double value) =>
        new(from, to, from, Math.Max(to - from, 1), [value, 0, 0, 0, 0, 0, value, 0, 0]);

    private static double Rounded(double value) => Math.Round(value, 12) + 0.0;

    private static bool NearlyEqual((double A, double B) one, (double A, double B) other) =>
        Math.Abs(one.A - other.A) < 1e-12 && Math.Abs(one.B - other.B) < 1e-12;
}
