using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Where influence lines pass through zero, their peaks, and what is asked off the beam.</summary>
public sealed partial class InfluenceLineTests
{
    /// <summary>
    /// Fixed at both ends of l, at x under a force right of it: P·b²/l³·((3a + b)x - a·l) (AISC Manual Table 3-23, fixed at
    /// both ends, from memory), zero at a = l·x/(l - 2x): for l = 3 and x = 0.6 at 1. Parts beside it feel nothing.
    /// </summary>
    [Fact]
    public void Zero_InsideABay()
    {
        BeamModel alone = Spans(3) with { Supports = [Support.Fixed(0), Support.Fixed(3)] };
        BeamModel among = Spans(2, 3, 4) with { Supports = [Support.Fixed(2), Support.Fixed(5)] };

        InfluenceLine line = InfluenceLine.Of(alone, Curve.Moment, 0.6, Side.Left, Solver)!;
        InfluenceLine same = InfluenceLine.Of(among, Curve.Moment, 2.6, Side.Left, Solver)!;

        Assert.Equal([1], Rounded(line.Zeros));
        Assert.Equal(1 / 27.0 * ((((3 * 2) + 1) * 0.6) - (2 * 3)), line.At(2).Left, 1e-13);
        Assert.Equal([2, 3, 5], Rounded(same.Zeros));
        Assert.Equal((0, 0), same.At(1));
        Assert.Equal(line.At(2.5).Left, same.At(4.5).Right, 1e-13);
    }

    /// <summary>
    /// Two spans of 2 m: the left reaction is 1 - 5a/4l + a³/4l³, then -b(l² - b²)/4l³ = -√3/18 at l/√3 from the far end (AISC
    /// Manual Table 3-23, two equal spans, from memory). It ends in zero, which the supports share.
    /// </summary>
    [Fact]
    public void Peaks_AlongTwoSpans()
    {
        InfluenceLine line = InfluenceLine.OfReaction(Spans(2, 2), 0, Solver)!;

        Assert.Equal(
            [
                new Extreme(1, 0), new Extreme(Math.Round(-Math.Sqrt(3) / 18, 9), Math.Round(4 - (2 / Math.Sqrt(3)), 9)),
                new Extreme(0, 4),
            ],
            Rounded(line.Peaks));
        Assert.Equal(1 - (5 / 8.0) + (1 / 32.0), line.At(1).Left, 1e-13);
    }

    /// <summary>The moment over the middle support is less than zero on both sides of a joint within a bay: no zero there.</summary>
    [Fact]
    public void JointWithinABay_IsNoZero()
    {
        BeamModel joints = Spans(0.5, 0.5, 0.5, 0.5) with
        {
            Supports = [Support.Pin(0), Support.Roller(1), Support.Roller(2)],
        };

        Assert.Equal([1], Rounded(InfluenceLine.Of(joints, Curve.Moment, 1, Side.Left, Solver)!.Zeros));
    }

    /// <summary>The shear of a cantilever held at the left is nothing for a force left of the section, and one right of it.</summary>
    [Fact]
    public void ZeroOnOneSideOfAJump_Counts()
    {
        BeamModel model = Spans(10) with { Supports = [Support.Fixed(0)] };
        BeamModel turned = Spans(10) with { Supports = [Support.Fixed(10)] };

        InfluenceLine line = InfluenceLine.Of(model, Curve.Shear, 4, Side.Left, Solver)!;
        InfluenceLine other = InfluenceLine.Of(turned, Curve.Shear, 4, Side.Left, Solver)!;

        Assert.Equal((0, 1), Ordinates(line, 4));
        Assert.Equal([4], Rounded(line.Zeros));
        Assert.Equal((-1, 0), Ordinates(other, 4));
        Assert.Equal([4], Rounded(other.Zeros));
        Assert.Equal([1, 2, 3], Rounded(InfluenceLine.OfReaction(Spans(1, 1, 1, 1), 0, Solver)!.Zeros));
    }

    /// <summary>
    /// Right of a hinge stands a beam of its own: a force left of it does nothing to the last support, whatever rounding leaves,
    /// so there only the nodes are zeros.
    /// </summary>
    [Theory]
    [InlineData(3.7, 4.1, 4.3, 0.9)]
    [InlineData(2.3, 5.9, 3.1, 0.7)]
    [InlineData(1.1, 7.3, 2.9, 0.3)]
    public void BaysThatDoNothing_HaveNoZerosInside(double first, double second, double third, double hinge)
    {
        BeamModel model = Spans(first, second, third) with { Hinges = [first + hinge, first + second - hinge] };

        InfluenceLine line = InfluenceLine.OfReaction(model, 1, Solver)!;
        InfluenceLine last = InfluenceLine.OfReaction(Spans(first, second, third) with { Hinges = [first + hinge] }, 0, Solver)!;

        Assert.Equal(Rounded([first + second - hinge, first + second]), Rounded(line.Zeros).Where(at => at > first + hinge));
        Assert.Equal(Rounded([first, first + second]), Rounded(last.Zeros));
    }

    /// <summary>Places within 1e-9 of the length, here 1.6e-8 m, are one; such near an end are that end.</summary>
    [Fact]
    public void ZerosTooNear_AreOne()
    {
        Assert.Equal([4, 8], Rounded(Shear(4 + 1.2e-8).Zeros));
        Assert.Equal([4, 4 + 2e-8, 8], Shear(4 + 2e-8).Zeros, (one, other) => Math.Abs(one - other) < 1e-10);
        Assert.Equal([4, 8], Rounded(Shear(1.2e-8).Zeros));
        Assert.Equal([2e-8, 4, 8], Shear(2e-8).Zeros, (one, other) => Math.Abs(one - other) < 1e-10);
        Assert.Equal([4, 8], Rounded(Shear(16 - 1.2e-8).Zeros));
        Assert.Equal([4, 8, 16 - 2e-8], Shear(16 - 2e-8).Zeros, (one, other) => Math.Abs(one - other) < 1e-10);

        static InfluenceLine Shear(double at) => InfluenceLine.Of(Spans(4, 4, 8), Curve.Shear, at, Side.Left, Solver)!;
    }

    /// <summary>At the ends of a cantilever: nothing beyond them, so each end has its own side only.</summary>
    [Fact]
    public void SectionsAndForces_AtTheEnds()
    {
        BeamModel model = Spans(10) with { Supports = [Support.Fixed(0)] };

        Assert.Equal(-10, InfluenceLine.Of(model, Curve.Moment, 0, Side.Right, Solver)!.At(10).Right, 1e-12);
        Assert.Equal(1000 / 3.0, InfluenceLine.Of(model, Curve.Deflection, 10, Side.Left, Solver)!.At(10).Left, 1e-9);
        Assert.Equal((1, 1), Ordinates(InfluenceLine.OfReaction(model, 0, Solver)!, 0));
        Assert.Equal(10, InfluenceLine.OfReactionMoment(model, 0, Solver)!.At(10).Right, 1e-12);
    }

    [Fact]
    public void WhatIsNotThere_IsRefused()
    {
        InfluenceLine line = InfluenceLine.OfReaction(Spans(10), 0, Solver)!;

        Refused("Must lie on the beam.", "position", () => line.At(-0.1));
        Refused("Must lie on the beam.", "position", () => line.At(10.1));
        Refused("Must lie on the beam.", "position", () => Of(Curve.Moment, -0.1));
        Refused("Must lie on the beam.", "position", () => Of(Curve.Moment, double.NaN));
        Refused("It has no influence line.", "curve", () => Of(Curve.Slope, 5));
        Assert.Throws<ArgumentNullException>("model", () => InfluenceLine.Of(null!, Curve.Moment, 5, Side.Left, Solver));
        Assert.Throws<ArgumentNullException>("model", () => InfluenceLine.OfReaction(null!, 0, Solver));
        Assert.Throws<ArgumentNullException>("solver", () => InfluenceLine.OfReaction(Spans(10), 0, null!));

        static object Of(Curve curve, double at) => InfluenceLine.Of(Spans(10), curve, at, Side.Left, Solver)!;
    }

    private static void Refused(string says, string what, Func<object> asked) =>
        Assert.StartsWith(
            says, Assert.Throws<ArgumentOutOfRangeException>(what, asked).Message, StringComparison.Ordinal);

    private static (double Left, double Right) Ordinates(InfluenceLine line, double at) =>
        (Math.Round(line.At(at).Left, 12) + 0, Math.Round(line.At(at).Right, 12) + 0);

    private static double[] Rounded(IEnumerable<double> zeros) => [.. zeros.Select(zero => Math.Round(zero, 7))];
}
