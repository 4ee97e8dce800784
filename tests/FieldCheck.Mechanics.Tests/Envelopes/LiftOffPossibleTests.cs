using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Whether a support may let go: 4 m on two supports, of which the right one acts one way.</summary>
public sealed class LiftOffPossibleTests
{
    [Theory]
    [InlineData(SupportAction.PushesOnly, 1, false)]
    [InlineData(SupportAction.PushesOnly, -1, true)]
    [InlineData(SupportAction.HoldsDownOnly, 1, true)]
    [InlineData(SupportAction.HoldsDownOnly, -1, false)]
    [InlineData(SupportAction.Both, -1, false)]
    public void SupportThatIsPulled_MayLetGo(SupportAction action, double down, bool mayLetGo) =>
        Assert.Equal(mayLetGo, IsPossible(action, 0, new Load.Point(1, down)));

    /// <summary>A gap to close is one, though a load holds it shut; a settlement of a support that acts both ways is none.</summary>
    [Fact]
    public void SupportWithAGap_MayLetGo()
    {
        Assert.True(IsPossible(SupportAction.PushesOnly, 0.01, new Load.Point(1, 5)));
        Assert.False(IsPossible(SupportAction.Both, 0.01, new Load.Point(1, 5)));
        Assert.False(LiftOff.IsPossible(
            Sum([Support.Pin(0) with { Settlement = 0.01 }, Right(SupportAction.PushesOnly, 0)], [new Load.Point(1, 5)], []), 0));
    }

    /// <summary>
    /// Always 4 kN down in the middle, and 4 kN up that may come: nothing is left of 2 kN, or less by 1e-13 of it, which is
    /// rounding, or by 1e-11, which is not.
    /// </summary>
    [Theory]
    [InlineData(SupportAction.PushesOnly, 1)]
    [InlineData(SupportAction.HoldsDownOnly, -1)]
    public void PullWithinRounding_IsNone(SupportAction action, double sense)
    {
        Assert.False(LiftOff.IsPossible(Held(1e-13), 0));
        Assert.True(LiftOff.IsPossible(Held(1e-11), 0));

        Superposition Held(double more) => Sum(
            [Support.Pin(0), Right(action, 0)],
            [new Load.Point(2, 4e3 * sense)],
            [new Load.Point(2, -4e3 * (1 + more) * sense)]);
    }

    private static bool IsPossible(SupportAction action, double settlement, Load load) =>
        LiftOff.IsPossible(Sum([Support.Pin(0), Right(action, settlement)], [load], []), 0);

    private static Support Right(SupportAction action, double settlement) =>
        Support.Roller(4) with { Action = action, Settlement = settlement };

    private static Superposition Sum(
        ImmutableArray<Support> supports, ImmutableArray<Load> always, ImmutableArray<Load> live)
    {
        BeamModel model = new(
            [new Span(4, 1, 1)],
            supports,
            [],
            [new LoadCase("always", always), new LoadCase("live", live)],
            [new Combination("all", CombinationBasis.Service, [1, 1])]);
        return Superposition.Of(new EnvelopeProblem(model, [1], []), new BeamSolver())!;
    }
}
