using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Response;

/// <summary>
/// Extremes over a stretch from break to break. Forces of 900 N and 600 N at 2 m and 4 m of a span of 6 m: supports
/// push 800 N and 700 N, M under the forces is 1600 N·m and 1400 N·m.
/// </summary>
public sealed class StretchTests
{
    [Theory]
    [InlineData(0, 2, 1600, 2, 0, 0)]
    [InlineData(2, 4, 1600, 2, 1400, 4)]
    [InlineData(4, 6, 1400, 4, 0, 6)]
    [InlineData(0, 4, 1600, 2, 0, 0)]
    [InlineData(2, 6, 1600, 2, 0, 6)]
    [InlineData(0, 6, 1600, 2, 0, 0)]
    public void ExtremesOf_Stretch_AreThoseOfItsPiecesOnly(
        double from, double to, double most, double mostAt, double least, double leastAt)
    {
        Extremes moment = TwoForces().ExtremesOf(Curve.Moment, from, to);

        Equal(most, moment.Max.Value);
        Assert.Equal(mostAt, moment.Max.Position);
        Equal(least, moment.Min.Value, 1600);
        Assert.Equal(leastAt, moment.Min.Position);
    }

    [Theory]
    [InlineData(0, 2, 800)]
    [InlineData(2, 4, -100)]
    [InlineData(4, 6, -700)]
    public void ExtremesOf_Stretch_LeavesOutTheJumpsAtItsEnds(double from, double to, double expected)
    {
        Extremes shear = TwoForces().ExtremesOf(Curve.Shear, from, to);

        Equal(expected, shear.Max.Value);
        Equal(expected, shear.Min.Value);
    }

    [Theory]
    [InlineData(0, 3)]
    [InlineData(1, 4)]
    [InlineData(3, 6)]
    [InlineData(4, 2)]
    [InlineData(2, 2)]
    [InlineData(0, 0)]
    [InlineData(-1, 2)]
    [InlineData(4, 7)]
    public void ExtremesOf_StretchThatIsNotFromBreakToBreak_Throws(double from, double to) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoForces().ExtremesOf(Curve.Shear, from, to));

    private static BeamResponse TwoForces() => Solve(
        6, [Support.Pin(0), Support.Roller(6)], [new Load.Point(2, 900), new Load.Point(4, 600)]);
}
