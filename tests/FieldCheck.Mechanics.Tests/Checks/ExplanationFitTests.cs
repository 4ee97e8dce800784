using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>How far a figure may be off: half its last digit, or a two-thousandth of the greatest of its kind.</summary>
public sealed class ExplanationFitTests
{
    private static readonly BeamModel Model = Said.Simple(6, Said.Point(2, 12));

    // 1e-6 of it more, for what the arithmetic leaves open.
    [Theory]
    [InlineData(8000, 0, 1, 4)]
    [InlineData(8000, 0, 4.1, 4.1)]
    [InlineData(-8000, 100, 1, 4)]
    [InlineData(100, -8000, 1, 4)]
    public void Verticals_GoByTheGreatestStated(double first, double second, double halfDigit, double allowed)
    {
        ExplanationFit fit = Fit(
            [100_000, 100_000],
            new(0, ReactionPart.Vertical, first, halfDigit), new(1, ReactionPart.Vertical, second, halfDigit));

        Assert.Equal(allowed, fit.Allowed[0], 4);
        Assert.Equal(allowed, fit.Allowed[1], 4);
    }

    [Fact]
    public void MomentsAndForces_GoByTheirOwnKind()
    {
        ExplanationFit fit = Fit(
            [1, 1, 1],
            new(0, ReactionPart.Vertical, 8000, 0.1), new(0, ReactionPart.Moment, 300, 0.1), new(0, ReactionPart.Horizontal, 2, 0.1));

        Assert.Equal(4, fit.Allowed[0], 4);
        Assert.Equal(0.15, fit.Allowed[1], 4);
        Assert.Equal(4, fit.Allowed[2], 4);
    }

    [Fact]
    public void WhereAllThatIsStatedIsNothing_TheGreatestComputedCounts()
    {
        ExplanationFit fit = Fit(
            [-6000, 2000], new(0, ReactionPart.Vertical, 0, 0.1), new(1, ReactionPart.Vertical, 0, 0.1));

        Assert.Equal(3, fit.Allowed[0], 4);
        Assert.Equal(3, fit.Allowed[1], 4);
    }

    [Fact]
    public void WhatIsAllowed_FitsToTheLast()
    {
        ExplanationFit fit = Fit([0, 0], new(0, ReactionPart.Vertical, 0, 8), new(1, ReactionPart.Vertical, 0, 4));

        Assert.True(fit.Fits(0, fit.Allowed[0]));
        Assert.False(fit.Fits(1, 1.01 * fit.Allowed[1]));
        Assert.Equal(1, fit.Worst([0, -fit.Allowed[1]]));
        Assert.True(fit.CouldFit(fit.Allowed[0] + fit.Allowed[1]));
        Assert.False(fit.CouldFit(1.01 * (fit.Allowed[0] + fit.Allowed[1])));
    }

    [Fact]
    public void NothingExactly_FitsNothingOnly()
    {
        ExplanationFit fit = Fit([0, 0], new(0, ReactionPart.Vertical, 0, 0), new(1, ReactionPart.Vertical, 0, 0));

        Assert.Equal(0, fit.Worst([0, 0]));
        Assert.Equal(double.PositiveInfinity, fit.Worst([0, 1e-9]));
    }

    private static ExplanationFit Fit(double[] computed, params ReactionFigure[] figures) =>
        new(new StatedSet(Model, [1], [.. figures]), computed);
}
