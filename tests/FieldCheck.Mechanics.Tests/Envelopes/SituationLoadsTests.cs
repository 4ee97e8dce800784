using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>What stands on the beam in a situation, load by load.</summary>
public sealed class SituationLoadsTests
{
    /// <summary>Bays of 3 and 5 m and an overhang of 2 m; a couple over the middle support.</summary>
    private static readonly EnvelopeProblem Problem = new(
        new BeamModel(
            [new Span(3, 1, 1), new Span(5, 1, 1), new Span(2, 1, 1)],
            [Support.Pin(0), Support.Roller(3), Support.Roller(8)],
            [],
            [
                new LoadCase("dead", [new Load.Distributed(0, 10, 1, 1)]),
                new LoadCase("live", [new Load.Distributed(0, 10, 2, 2), new Load.Couple(3, 7), new Load.Point(9, 4)]),
                new LoadCase("cart", []),
                new LoadCase("away", [new Load.Point(1, 1)]),
            ],
            [
                new Combination("all", CombinationBasis.Service, [1, 1, 1, 0]),
                new Combination("some", CombinationBasis.Factored, [1.2, 1.6, 0, 0]),
            ]),
        [1],
        [new RollingLoad("cart", 2, [new Axle(0, 10), new Axle(4, 20), new Axle(6, 5)], 0.1)]);

    /// <summary>Heading right the axles stand at 4, 8 and 10 m, the last just on the end; heading left at 4 and 0 m, and one off it.</summary>
    [Theory]
    [InlineData(4, false, new double[] { 4, 8, 10 }, new double[] { 11, 22, 5.5 })]
    [InlineData(4.5, false, new double[] { 4.5, 8.5 }, new double[] { 11, 22 })]
    [InlineData(4, true, new double[] { 4, 0 }, new double[] { 11, 22 })]
    [InlineData(-4, false, new double[] { 0, 2 }, new double[] { 22, 5.5 })]
    public void WhatRolls_StandsInItsCase(double at, bool isReversed, double[] places, double[] forces)
    {
        BeamModel model = SituationLoads.Model(Problem, new Situation(0, [null, null, null, null], new RollingPlace(0, at, isReversed)));

        Assert.Equal(
            places.Zip(forces),
            model.Cases[2].Loads.Cast<Load.Point>().Select(point => (point.Position, Math.Round(point.Down, 9))));
        Assert.Equal(Problem.Model.Cases[0].Loads.AsEnumerable(), model.Cases[0].Loads);
        Assert.Equal(Problem.Model.Cases[1].Loads.AsEnumerable(), model.Cases[1].Loads);
        Assert.Equal("all", Assert.Single(model.Combinations).Name);
    }

    /// <summary>On the second bay and the overhang; what stands right over a support is on none and stays.</summary>
    [Fact]
    public void WhatMayBeAway_StandsOnItsBaysOnly()
    {
        BeamModel model = SituationLoads.Model(
            Problem, new Situation(1, [null, new LoadedBays([1], false, true), null, null], null));

        Assert.Equal(
            [new Load.Couple(3, 7), new Load.Distributed(3, 8, 2, 2), new Load.Distributed(8, 10, 2, 2), new Load.Point(9, 4)],
            model.Cases[1].Loads.AsEnumerable());
        Assert.Empty(model.Cases[2].Loads);
        Assert.Equal("some", Assert.Single(model.Combinations).Name);
    }

    /// <summary>Of the live loads the couple over the support stands always; a case that no combination takes has no part.</summary>
    [Fact]
    public void Parts_AreCutAtTheBaysWhereACaseMayBeAway()
    {
        LoadPart[] parts = [.. LoadPart.Of(Problem, Bays.Of(Problem.Model))];

        Assert.Equal([(0, -1, true), (1, -1, true), (1, 0, false), (1, 1, false), (1, 2, false)],
            parts.Select(part => (part.Case, part.Stretch, part.StandsAlways)));
        Assert.Equal([new Load.Couple(3, 7)], parts[1].Loads.AsEnumerable());
        Assert.Equal([new Load.Distributed(0, 3, 2, 2)], parts[2].Loads.AsEnumerable());
        Assert.Equal([new Load.Distributed(8, 10, 2, 2), new Load.Point(9, 4)], parts[4].Loads.AsEnumerable());
    }

    /// <summary>A bay without a load of the case is no part of it.</summary>
    [Fact]
    public void BayWithoutALoad_IsNoPart()
    {
        EnvelopeProblem problem = new(
            Problem.Model with { Cases = [.. Problem.Model.Cases.SetItem(1, new LoadCase("live", [new Load.Point(5, 4)]))] }, [1], []);

        Assert.Equal([(0, -1), (1, -1), (1, 1)], LoadPart.Of(problem, Bays.Of(problem.Model)).Select(part => (part.Case, part.Stretch)));
    }

    [Fact]
    public void LoadedBays_CompareByWhatTheyHold()
    {
        LoadedBays bays = new([0, 2], true, false);

        Assert.True(bays.Equals(new LoadedBays([0, 2], true, false)));
        Assert.Equal(bays.GetHashCode(), new LoadedBays([0, 2], true, false).GetHashCode());
        Assert.False(bays.Equals(new LoadedBays([0, 1], true, false)));
        Assert.False(bays.Equals(new LoadedBays([0, 2], false, false)));
        Assert.False(bays.Equals(new LoadedBays([0, 2], true, true)));
        Assert.False(bays.Equals(null));
    }
}
