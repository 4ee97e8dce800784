using FieldCheck.Mechanics.Checks;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Least greatest residuals that follow by hand: those of the two that are farthest off come out alike.</summary>
public sealed class ExplanationNearestTests
{
    // The search cuts 30 times by a third: 20 (2/3)³⁰ is 1e-4.
    private const double Near = 2e-4;

    [Theory]
    [InlineData(new double[] { 3 }, new double[] { -1 }, 3)]
    [InlineData(new double[] { 3 }, new double[] { 2 }, -1.5)]
    [InlineData(new double[] { 0, 4 }, new double[] { 1, 1 }, -2)] // 2 either way
    [InlineData(new double[] { 1, 4 }, new double[] { 2, -1 }, 1)] // 3 and 3
    [InlineData(new double[] { 5, 0, -5 }, new double[] { 1, 1, 1 }, 0)]
    public void OneNumber_BringsTheGreatestDown(double[] off, double[] of, double expected)
    {
        (double t, double u) = ExplanationNearest.Find(off, of, [], (10, 10));

        Assert.InRange(t, expected - Near, expected + Near);
        Assert.Equal(0, u);
    }

    [Theory]
    [InlineData(new double[] { 3, 5 }, new double[] { 1, 0 }, new double[] { 0, 1 }, -3, -5)]
    [InlineData(new double[] { 3, 5 }, new double[] { 1, 0 }, new double[] { 1, 2 }, -0.5, -2.5)]
    [InlineData(new double[] { 1, 2, 3, 4 }, new double[] { 1, 1, 1, 1 }, new double[] { 0, 1, 2, 3 }, -1, -1)]
    public void TwoNumbers_TakeAllAway(double[] off, double[] of, double[] by, double first, double second)
    {
        (double t, double u) = ExplanationNearest.Find(off, of, by, (10, 10));

        Assert.InRange(t, first - 20 * Near, first + 20 * Near);
        Assert.InRange(u, second - 20 * Near, second + 20 * Near);
    }

    [Fact]
    public void Numbers_StayWithinTheirSizes()
    {
        (double t, double u) = ExplanationNearest.Find([3, 5], [1, 0], [0, 1], (2, 4));

        Assert.InRange(t, -2, -2 + Near);
        Assert.InRange(u, -4, -4 + Near);
    }
}
