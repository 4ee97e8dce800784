using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>What a superposition is made of.</summary>
public sealed class SuperpositionTests
{
    private static readonly BeamModel Beam = new(
        [new Span(3, 1, 1), new Span(5, 1, 1)],
        [
            Support.Pin(0) with { Settlement = 0.1 }, Support.Roller(3) with { Settlement = 0.2 },
            new Support(8, new Restraint.Rigid(), new Restraint.Rigid(), new Restraint.Rigid()) { ImposedRotation = 0.01 },
        ],
        [],
        [new LoadCase("dead", [new Load.Point(1, 1)]), new LoadCase("cart", []), new LoadCase("hoist", [])],
        [
            new Combination("dead", CombinationBasis.Service, [1, 0, 0]), new Combination("both", CombinationBasis.Service, [1, 1, 0]),
        ]);

    private static readonly RollingLoad Cart = new("cart", 1, [new Axle(0, 1)]);
    private static readonly RollingLoad Hoist = new("hoist", 2, [new Axle(0, 1)]);

    /// <summary>Something rolls where any combination takes any rolling load.</summary>
    [Fact]
    public void Traffic_IsThereWhereSomethingThatCountsRolls()
    {
        Assert.NotNull(Of(Cart, Hoist).Traffic);
        Assert.NotNull(Of(Cart).Traffic);
        Assert.Null(Of(Hoist).Traffic);
        Assert.Null(Of().Traffic);
    }

    /// <summary>One support stands higher by one, downward being positive; nothing else is imposed.</summary>
    [Theory]
    [InlineData(0, new double[] { -1, 0, 0 })]
    [InlineData(2, new double[] { 0, 0, -1 })]
    public void RaisedAt_MovesThatSupportAlone(int support, double[] settlements)
    {
        BeamModel raised = Of().RaisedAt(support);

        Assert.Equal(settlements, raised.Supports.Select(one => one.Settlement));
        Assert.All(raised.Supports, one => Assert.Equal(0, one.ImposedRotation));
    }

    [Fact]
    public void Situations_CompareByWhatTheyHold()
    {
        Situation one = new(1, [null, new LoadedBays([0], false, false)], new RollingPlace(0, 2, false));

        Assert.True(one.Equals(new Situation(1, [null, new LoadedBays([0], false, false)], new RollingPlace(0, 2, false))));
        Assert.False(one.Equals(one with { Combination = 0 }));
        Assert.False(one.Equals(one with { Patterns = [null, new LoadedBays([1], false, false)] }));
        Assert.False(one.Equals(one with { Rolling = new RollingPlace(0, 2, true) }));
        Assert.False(one.Equals(null));
    }

    private static Superposition Of(params RollingLoad[] rolling) => LiftedBeams.Sum(new EnvelopeProblem(Beam, [], [.. rolling]));
}
