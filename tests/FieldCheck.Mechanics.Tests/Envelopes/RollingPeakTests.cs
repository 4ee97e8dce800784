using FieldCheck.Mechanics.Envelopes;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>The greatest of a polynomial that a train gives on its way, and what it gives off a stretch.</summary>
public sealed class RollingPeakTests
{
    /// <summary>Before the stretch or after it a train gives nothing; where it is on it all the way, nothing is no value of it.</summary>
    [Fact]
    public void Outside_IsNothingWhereTheTrainIsSomewhereElse()
    {
        Assert.Equal(new RollingPeak(0, 0, 0, 0), RollingPeak.Outside(1, 5, 5));
        Assert.Equal(new RollingPeak(0, 0, 0, 0), RollingPeak.Outside(1, 4, 5));
        Assert.Equal(new RollingPeak(0, 4, 0, 0), RollingPeak.Outside(0, 4, 5));
        Assert.Equal(RollingPeak.None, RollingPeak.Outside(0, 5, 5));
        Assert.Equal(double.NegativeInfinity, RollingPeak.None.Value);
    }

    /// <summary>
    /// 4s(1 - s) is 1 midway and holds on both sides of it. On a part it is greatest at its end, seen from within the part; from the
    /// very ends of the way there is but one side to see from.
    /// </summary>
    [Theory]
    [InlineData(0, 1, 1, 0.5, 0)]
    [InlineData(0, 0.25, 0.75, 0.25, -1)]
    [InlineData(0.75, 1, 0.75, 0.75, 1)]
    [InlineData(0, 0.5, 1, 0.5, -1)]
    [InlineData(0.5, 1, 1, 0.5, 1)]
    [InlineData(0, 0.5000001, 1, 0.5, -1)]
    [InlineData(0.4999999, 1, 1, 0.5, 1)]
    [InlineData(0.4, 0.7, 1, 0.5, 0)]
    public void GreatestOnAPart_LeansIntoIt(double from, double to, double value, double share, int lean) =>
        Assert.Equal(new RollingPeak(value, 7, share, lean), Rounded(Take([0, 4, -4], from, to)));

    [Theory]
    [InlineData(new double[] { 1, 0, 0, 3 }, 0, 1, 4, 1, -1)]
    [InlineData(new double[] { 4, 0, 0, -3 }, 0, 1, 4, 0, 1)]
    [InlineData(new double[] { 1, 0, 0, 3 }, 1, 1, 4, 1, -1)]
    [InlineData(new double[] { 4, 0, 0, -3 }, 0, 0, 4, 0, 1)]
    public void GreatestAtAnEnd_IsSeenFromWithinTheWay(double[] polynomial, double from, double to, double value, double share, int lean) =>
        Assert.Equal(new RollingPeak(value, 7, share, lean), Take(polynomial, from, to));

    /// <summary>What is no more than what is known stays away.</summary>
    [Theory]
    [InlineData(1.0)]
    [InlineData(1.5)]
    public void WhatIsNoMore_IsNotTaken(double known)
    {
        RollingPeak peak = new(known, 3, 0.1, 0);

        RollingScan.Take([0, 4, -4], 7, 0, 1, ref peak);

        Assert.Equal(new RollingPeak(known, 3, 0.1, 0), peak);
    }

    private static RollingPeak Take(double[] polynomial, double from, double to)
    {
        RollingPeak peak = RollingPeak.None;
        RollingScan.Take(polynomial, 7, from, to, ref peak);
        return peak;
    }

    private static RollingPeak Rounded(RollingPeak peak) =>
        peak with { Value = Math.Round(peak.Value, 9), Share = Math.Round(peak.Share, 6) };
}
