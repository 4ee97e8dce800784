using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// Two spans of 1 m, EI = 1: the middle raised by one gives 48EI/(2l)³ = 6 there, half of it down at each end (AISC Manual
/// Table 3-23, a force in the middle of a simple beam, from memory); an end raised gives a quarter of that there.
/// </summary>
public sealed class RaisedRestsTests
{
    [Fact]
    public void Stiffness_IsWhatARaisedRestTakes()
    {
        RaisedRests rests = Of([Support.Pin(0), Pushes(1), Pushes(2)])!;

        Assert.Equal([1, 2], rests.Supports.AsEnumerable());
        Assert.Equal([6, -3, -3, 1.5], rests.Stiffness.Cast<double>(), Near);
        Assert.Equal(2, rests.Rows.Length);
        Assert.Equal([0, -3, 0, 0, 6, 0, 0, -3, 0], rests.Rows[0][..9], Near);
        Assert.Equal([0, 1.5, 0, 0, -3, 0, 0, 1.5, 0], rests.Rows[1][..9], Near);

        // The piece up to the middle, cut at the force: M at its end, -3 times 1 m, and the rise x(3·2² - 4x²)/2³, down positive.
        Assert.Equal(-3, rests.Table.Bounds(rests.Rows[0], 1, 2)[^1], 1e-13);
        Assert.Equal(1.5, rests.Table.Bounds(rests.Rows[1], 1, 2)[^1], 1e-13);
        Assert.Equal(-1, rests.Table.Bounds(rests.Rows[0], 1, 3)[^1], 1e-13);
        Assert.Equal(-0.75 * 9.75 / 8, rests.Table.Inner(rests.Rows[0], 1, 3)[1], 1e-13);
    }

    /// <summary>One that holds nothing across cannot be raised; a settlement or a turn imposed is none of it.</summary>
    [Fact]
    public void OnlySupportsThatHoldAcross_AreRaised()
    {
        Support guide = Support.Pin(2) with { Across = new Restraint.None(), Along = new Restraint.None() };

        RaisedRests rests = Of(
            [Support.Fixed(0) with { ImposedRotation = 0.1, Settlement = 0.2 }, Pushes(1) with { Settlement = 0.3 }, guide])!;

        Assert.Equal([1], rests.Supports.AsEnumerable());
        Assert.Equal([3], rests.Stiffness.Cast<double>(), Near);
    }

    /// <summary>A support that lets go takes along more than its push where it also holds along what is pulled along.</summary>
    [Fact]
    public void SupportsThatTakeMoreWithThem_HaveNone()
    {
        Support along = Support.Pin(2) with { Action = SupportAction.PushesOnly };
        Load pull = new Load.Point(0.5, 1, 1);

        Assert.NotNull(Of([Support.Pin(0), Pushes(1), along]));
        Assert.Null(Of([Support.Pin(0), Pushes(1), along], pull));
        Assert.NotNull(Of([Support.Pin(0), Pushes(1), Pushes(2)], pull));
        Assert.NotNull(Of([Support.Fixed(0), Pushes(1), Pushes(2)], pull));
        Assert.Null(Of([Support.Pin(0), Pushes(1), Support.Roller(2, 0.1)]));
    }

    private static RaisedRests? Of(ImmutableArray<Support> supports, Load? load = null)
    {
        BeamModel model = new(
            [new Span(1, 1, 1), new Span(1, 1, 1)],
            supports,
            [],
            [new LoadCase("all", [load ?? new Load.Point(0.5, 1)])],
            [new Combination("all", CombinationBasis.Service, [1])]);
        return RaisedRests.Of(Superposition.Of(new EnvelopeProblem(model, [], []), new BeamSolver())!, new BeamSolver());
    }

    private static bool Near(double one, double other) => Math.Abs(one - other) < 1e-13;

    private static Support Pushes(double position) => Support.Roller(position) with { Action = SupportAction.PushesOnly };
}
