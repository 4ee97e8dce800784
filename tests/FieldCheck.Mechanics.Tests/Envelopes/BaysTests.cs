using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>What a load may stand on or not: 10 m on supports at 2, 5 and 8 m, so two bays and two overhangs.</summary>
public sealed class BaysTests
{
    private static readonly Bays Both = Of(Support.Pin(2), Support.Roller(5), Support.Roller(8));

    [Fact]
    public void OverhangsStandApart()
    {
        Assert.Equal([new Bay(0, 2), new Bay(2, 5), new Bay(5, 8), new Bay(8, 10)], Both.All.AsEnumerable());
        Assert.Equal([new Bay(2, 5), new Bay(5, 8)], Both.Between.AsEnumerable());
        Assert.Equal((new Bay(0, 2), new Bay(8, 10)), (Both.LeftOverhang, Both.RightOverhang));
    }

    [Fact]
    public void EndsThatAreHeld_HaveNoOverhang()
    {
        Bays left = Of(Support.Fixed(0));
        Bays right = Of(Support.Fixed(10));
        Bays none = Of(Support.Pin(0), Support.Roller(10));

        Assert.Equal((null, new Bay(0, 10), 0), (left.LeftOverhang, left.RightOverhang, left.Between.Length));
        Assert.Equal((new Bay(0, 10), null, 0), (right.LeftOverhang, right.RightOverhang, right.Between.Length));
        Assert.Equal((null, null), (none.LeftOverhang, none.RightOverhang));
        Assert.Equal([new Bay(0, 10)], none.Between.AsEnumerable());
    }

    /// <summary>Guides hold nothing across: all of the beam is one left overhang.</summary>
    [Fact]
    public void BeamThatNothingHoldsAcross_IsOneOverhang()
    {
        Bays free = Of(Support.Guide(0), Support.Guide(10));

        Assert.Equal((new Bay(0, 10), null, 0), (free.LeftOverhang, free.RightOverhang, free.Between.Length));
    }

    /// <summary>At a support on none, at a free end on its overhang.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 0)]
    [InlineData(2, -1)]
    [InlineData(3, 1)]
    [InlineData(5, -1)]
    [InlineData(6, 2)]
    [InlineData(8, -1)]
    [InlineData(10, 3)]
    public void PointsAndCouples_AreOnTheBayTheyStandIn(double at, int stretch)
    {
        foreach (Load load in new Load[] { new Load.Point(at, 5), new Load.Couple(at, 5, Side.Left) })
        {
            Assert.Equal(stretch < 0, Both.IsOnNone(load));
            Assert.Equal(
                Enumerable.Range(0, 4).Select(one => one == stretch ? load : null),
                Enumerable.Range(0, 4).Select(one => Both.PartOn(load, one)));
        }
    }

    /// <summary>From 1 to 6 m, 10 rising to 60 N/m: cut at 2 and 5 m, where it is 20 and 50.</summary>
    [Fact]
    public void SpreadLoads_AreCutAtSupports()
    {
        Load.Distributed spread = new(1, 6, 10, 60, ActsAlong: true);

        Assert.False(Both.IsOnNone(spread));
        Assert.Equal(
            [
                new Load.Distributed(1, 2, 10, 20, true), new Load.Distributed(2, 5, 20, 50, true),
                new Load.Distributed(5, 6, 50, 60, true), null,
            ],
            Enumerable.Range(0, 4).Select(one => (Load.Distributed?)Both.PartOn(spread, one)));
        Load whole = new Load.Distributed(2, 5, 3, 4);
        Assert.Same(whole, Both.PartOn(whole, 1));
        Assert.Null(Both.PartOn(whole, 0));
        Assert.Null(Both.PartOn(whole, 2));
        Assert.Equal([new Load.Distributed(5, 6, 50, 60, true)], Both.PartsOn([spread, whole], 2).AsEnumerable());
    }

    [Fact]
    public void WhatIsLoaded_IsCountedFromTheFirstBay()
    {
        LoadedBays loaded = Both.Loaded([3, 2, 0]);

        Assert.Equal(new LoadedBays([1], true, true), loaded);
        Assert.Equal([true, false, true, true], Enumerable.Range(0, 4).Select(one => Both.IsLoaded(loaded, one)));
        Assert.Equal(new LoadedBays([0, 1], false, false), Both.Loaded([2, 1]));
        Bays held = Of(Support.Pin(0), Support.Roller(4), Support.Roller(10));
        Assert.Equal(new LoadedBays([0], false, false), held.Loaded([0]));
        Assert.Equal([true, false], Enumerable.Range(0, 2).Select(one => held.IsLoaded(held.Loaded([0]), one)));
        Assert.Equal(new LoadedBays([], false, false), held.Loaded([]));
    }

    /// <summary>Lists compare by what they hold.</summary>
    [Fact]
    public void SameSituations_AreEqual()
    {
        Situation one = new(1, [new LoadedBays([0, 2], true, false), null], new RollingPlace(0, 2, false));
        Situation same = new(1, [new LoadedBays([0, 2], true, false), null], new RollingPlace(0, 2, false));

        Assert.Equal(one, same);
        Assert.Equal(one.GetHashCode(), same.GetHashCode());
        Assert.False(one.Equals(null));
        Assert.False(one.Patterns[0]!.Equals(null));
        Assert.All(
            new[]
            {
                one with { Combination = 0 }, one with { Rolling = null }, one with { Patterns = [one.Patterns[0]] },
                one with { Patterns = [new LoadedBays([0, 1], true, false), null] },
                one with { Patterns = [new LoadedBays([0, 2], false, false), null] },
                one with { Patterns = [new LoadedBays([0, 2], true, true), null] },
            },
            other => Assert.NotEqual(one, other));
    }

    private static Bays Of(params Support[] supports) => Bays.Of(Beam(10, supports, []));
}
