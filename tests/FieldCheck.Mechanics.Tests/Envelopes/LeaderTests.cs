using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Who leads among values along the beam, and where a rolling value is greatest.</summary>
public sealed class LeaderTests
{
    /// <summary>Sizes of 100 on 10 m: values within 1e-10 tie, places within 1e-8 m are one.</summary>
    [Fact]
    public void OfTies_TheLeftmostLeads()
    {
        Leader<int> leader = new(100, 10);
        Assert.Equal((double.NegativeInfinity, double.PositiveInfinity), (leader.Value, leader.Position));

        leader.Take(5, 4, 1);
        leader.Take(5 + 0.9e-10, 6, 2);
        Assert.Equal((5 + 0.9e-10, 4, 1), (leader.Value, leader.Position, leader.Situation));
        leader.Take(5, 4 - 0.9e-8, 3);
        Assert.Equal((4, 1), (leader.Position, leader.Situation));
        leader.Take(5, 3, 4);
        Assert.Equal((5 + 0.9e-10, 3, 4), (leader.Value, leader.Position, leader.Situation));
        leader.Take(4.9, 1, 5);
        Assert.Equal((3, 4), (leader.Position, leader.Situation));
        leader.Take(5.1, 8, 6);
        Assert.Equal((5.1, 8, 6), (leader.Value, leader.Position, leader.Situation));
    }

    /// <summary>A value may lead from a tie below on; it is worth a proof from 1e-8 above on, a hundred ties.</summary>
    [Fact]
    public void WhatCouldLead_IsLookedAt()
    {
        Leader<int> leader = new(100, 10);
        leader.Take(5, 4, 1);

        Assert.Equal(5 - 1e-10, leader.Floor, 1e-15);
        Assert.True(leader.CouldBeat(5 - 0.9e-10));
        Assert.False(leader.CouldBeat(5 - 1.1e-10));
        Assert.True(leader.CouldRaise(5 + 1.1e-8));
        Assert.False(leader.CouldRaise(5 + 0.9e-8));

        leader.Widen(50);
        Assert.Equal(5 - 1e-10, leader.Floor, 1e-15);
        leader.Widen(1e4);
        Assert.Equal(5 - 1e-8, leader.Floor, 1e-12);
    }

    /// <summary>
    /// 1 + 4u - 4u² between 0 and 1: greatest 2 at a half; of a part the end that is nearer, on its inner side. A value that is not
    /// more changes nothing.
    /// </summary>
    [Theory]
    [InlineData(0, 1, 2, 0.5, 0)]
    [InlineData(0, 0.25, 1.75, 0.25, -1)]
    [InlineData(0.75, 1, 1.75, 0.75, 1)]
    [InlineData(0.4999999, 1, 2, 0.5, 1)]
    [InlineData(0, 0.5000001, 2, 0.5, -1)]
    public void Scan_FindsTheGreatestOfAPart(double from, double to, double value, double share, int lean)
    {
        RollingPeak peak = RollingPeak.None;

        RollingScan.Take([1, 4, -4], 7, from, to, ref peak);

        Assert.Equal(value, peak.Value, 1e-12);
        Assert.Equal(share, peak.Share, 1e-12);
        Assert.Equal((7, lean), (peak.Interval, peak.Lean));
        RollingPeak known = peak;
        RollingScan.Take([1, 4, -4], 8, from, to, ref peak);
        Assert.Equal(known, peak);
    }

    /// <summary>An end of the whole leans inward.</summary>
    [Fact]
    public void Scan_AtTheEnds()
    {
        RollingPeak rising = RollingPeak.None;
        RollingPeak falling = RollingPeak.None;

        RollingScan.Take([1, 1], 3, 0, 1, ref rising);
        RollingScan.Take([1, -1], 3, 0, 1, ref falling);

        Assert.Equal(new RollingPeak(2, 3, 1, -1), rising);
        Assert.Equal(new RollingPeak(1, 3, 0, 1), falling);
    }

    /// <summary>Nothing where the train stands elsewhere: before the first interval, else in the last.</summary>
    [Fact]
    public void OutsideOfWhatItDoes_ATrainGivesNothing()
    {
        Assert.Equal(new RollingPeak(0, 0, 0, 0), RollingPeak.Outside(1, 3, 5));
        Assert.Equal(new RollingPeak(0, 4, 0, 0), RollingPeak.Outside(0, 3, 5));
        Assert.Equal(RollingPeak.None, RollingPeak.Outside(0, 5, 5));
    }

    /// <summary>Spans of 4 and 6 m, a support at 7 and a hinge at 3 m: nodes at 0, 3, 4, 7 and 10 m.</summary>
    [Fact]
    public void Nodes_AreJointsSupportsAndHinges()
    {
        Span[] spans = [new(4, 1e5, 1e9), new(6, 2e5, 1e9)];
        BeamNodes nodes = new(Beam(spans, [Support.Fixed(0), Support.Roller(7)], [], [3]));

        Assert.Equal([0, 3, 4, 7, 10], nodes.Positions.ToArray());
        Assert.Equal((4, 7, 3), (nodes.ElementCount, nodes.At(3), nodes.LengthOf(2)));
        Assert.Equal([spans[0], spans[0], spans[1], spans[1]], Enumerable.Range(0, 4).Select(nodes.SpanOf));
        Assert.Equal([-1, 0, 0, 1, 2, 3, -1, -1], new[] { -0.1, 0, 2.9, 3, 4, 9.9, 10, 11 }.Select(nodes.ElementAt));
        Assert.Equal(15, nodes.UnitCases().Length);
        Assert.Equal(
            [new Load.Point(3, -1), new Load.Couple(3, 1, Side.Left), new Load.Couple(3, 1, Side.Right)],
            nodes.UnitCases()[3..6].Select(one => one.Loads.Single()));
    }

    [Fact]
    public void ProblemThatNamesNoCaseOfItsModel_IsRefused()
    {
        BeamModel model = Beam(4, [Support.Pin(0), Support.Roller(4)], []);
        RollingLoad rolling = new("wheel", 0, [new Axle(0, 5)]);

        Assert.Equal([0], new EnvelopeProblem(model, [0], [rolling]).PatternCases.AsEnumerable());
        Refused("A pattern must be of a case of the model.", "PatternCases", () => new EnvelopeProblem(model, [1], []));
        Refused("A pattern must be of a case of the model.", "PatternCases", () => new EnvelopeProblem(model, [-1], []));
        Refused("A case must be named once only.", "PatternCases", () => new EnvelopeProblem(model, [0, 0], []));
        Refused(
            "A rolling load must be of a case of the model.", "Rolling",
            () => new EnvelopeProblem(model, [], [new RollingLoad("wheel", 1, rolling.Axles)]));
        Assert.Throws<ArgumentException>(() => new RollingLoad("none", 0, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RollingLoad("less", 0, rolling.Axles, -0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Axle(-1, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Axle(0, double.NaN));
    }

    private static void Refused(string says, string what, Func<EnvelopeProblem> made) =>
        Assert.StartsWith(says, Assert.Throws<ArgumentException>(what, made).Message, StringComparison.Ordinal);
}
