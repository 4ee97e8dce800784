using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Stated figures against the loads, by hand and over random beams.</summary>
public sealed class ReactionBalanceTests
{
    /// <summary>6 m on its ends, 12 kN at 2 m: 8 and 4 kN.</summary>
    private static readonly EquilibriumProof Loads = new(12000, 12000, 0, 0, -24000, 24000, 0);

    [Fact]
    public void RightFigures_Close()
    {
        ReactionBalance balance = Of(8000, 4000);

        Assert.True(balance.Closes);
        Assert.Equal(new BalanceSide(12000, 12000, 240), balance.Forces);
        Assert.Equal(new BalanceSide(24000, 24000, 480), balance.Moments!.Value);
        Assert.Null(balance.Lacking);
    }

    /// <summary>3 kN at 4 m gives 1 and 2 kN; figures without it are short of just that load.</summary>
    [Theory]
    [InlineData(7000, 2000, 3000, 4)]
    [InlineData(9000, 6000, -3000, 4)]
    [InlineData(8500, 2500, 1000, 9)] // 0.5 up at A and 1.5 down at B: only a load beyond B does that
    [InlineData(8000, 3000, 1000, 6)] // all of it is missing at B
    public void OneLoadThatLacks_IsFoundWithItsPlace(double a, double b, double down, double position)
    {
        BalancingLoad lacking = Of(a, b).Lacking!.Value;

        Assert.Equal(down, lacking.Down, 1e-9);
        Assert.Equal(position, lacking.Position, 1e-9);
    }

    [Fact]
    public void EndsSwapped_CloseInForcesOnly_AndNoLoadDoesThat()
    {
        ReactionBalance balance = Of(4000, 8000);

        Assert.True(balance.Forces.Closes);
        Assert.False(balance.Moments!.Value.Closes);
        Assert.False(balance.Closes);
        Assert.Null(balance.Lacking);
    }

    [Fact]
    public void WhatMayBeOff_IsWhatTheFiguresMayBeOffTogether()
    {
        Assert.True(Of(7840, 3920).Closes);
        Assert.False(Of(7839, 3920).Closes);
    }

    /// <summary>
    /// A 7.0 and B 2.0 kN are 6.95 to 7.05 and 1.95 to 2.05. About A the lack is 3 kN x 4 m; with B alone off by h it
    /// is (12 - 6 h) / (3 - h), with A alone 12 / (3 - h): A up and B down is farthest right, the other way farthest left.
    /// </summary>
    [Fact]
    public void RoundingOfTheFigures_LeavesARange()
    {
        BalancingLoad lacking = Of(7000, 2000, half: 50).Lacking!.Value;

        Assert.Equal((12 - (6 * 0.05)) / 3, lacking.From, 1e-9);
        Assert.Equal((12 + (6 * 0.05)) / 3, lacking.To, 1e-9);
    }

    /// <summary>The beam above put 1 m farther right, and moments taken about its left support there, or about B.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(0)]
    public void RangeOfThePlace_IsTheSameAboutAnyPoint(double about)
    {
        BalancingLoad lacking = ReactionBalance.Of(
            [new StatedForce(1, 7000, 50, 160), new StatedForce(7, 2000, 50, 80)],
            [],
            new EquilibriumProof(12000, 12000, 0, 0, -36000, 36000, 0),
            about).Lacking!.Value;

        Assert.Equal((4.9, 5, 5.1), (Math.Round(lacking.From, 9), Math.Round(lacking.Position, 9), Math.Round(lacking.To, 9)));
    }

    /// <summary>12 kN at 2 m of a cantilever; 10 kN and 19.5 to 20.5 kN m leave 2 kN at (24 - 19.5) / 2 m at most.</summary>
    [Fact]
    public void RoundingOfAStatedMoment_WidensTheRange()
    {
        BalancingLoad lacking = ReactionBalance.Of(
            [new StatedForce(0, 10000, 0, 200)], [new StatedForce(0, 20000, 500, 900)], Loads, 0).Lacking!.Value;

        Assert.Equal((1.75, 2, 2.25), (lacking.From, lacking.Position, lacking.To));
    }

    /// <summary>
    /// A propped cantilever about its fixed end: 3 kN and 12 kN m lack; A off by a, B at 6 m by b, the moment by c leave
    /// (12 - 6 b - c) / (3 - a - b), at most 12.4 / 3 with a up and b and c down, at least 11.6 / 3 the other way.
    /// A load left of A is farthest out with all up: 1 kN and -1 kN m there, (-1 - 0.3 - 0.1) / (1 - 0.1).
    /// </summary>
    [Theory]
    [InlineData(7000, 2000, 0, 11.6 / 3, 12.4 / 3)]
    [InlineData(9000, 2000, 13000, -1.4 / 0.9, -0.6 / 1.1)]
    public void RoundingOfAllFigures_IsTakenAtItsWorst(double a, double b, double couple, double from, double to)
    {
        BalancingLoad lacking = ReactionBalance.Of(
            [new StatedForce(0, a, 50, 160), new StatedForce(6, b, 50, 80)],
            [new StatedForce(0, couple, 100, 100)],
            Loads, 0).Lacking!.Value;

        Assert.Equal((from, to), (lacking.From, lacking.To), (x, y) =>
            Math.Abs(x.Item1 - y.Item1) < 1e-12 && Math.Abs(x.Item2 - y.Item2) < 1e-12);
    }

    [Fact]
    public void WhatMomentsMayBeOff_IsCountedFromThePlaceTheyAreTakenAbout()
    {
        ReactionBalance balance = ReactionBalance.Of(
            [new StatedForce(1, 8000, 0, 160), new StatedForce(7, 4000, 0, 80)],
            [new StatedForce(1, 0, 0, 30), new StatedForce(7, 0, 0, 40)], Loads, 3);

        Assert.Equal((160 * 2) + (80 * 4) + 70, balance.Moments!.Value.Allowed, 1e-9);
        Assert.Equal((8000 * -2) + (4000 * 4), balance.Moments!.Value.Stated, 1e-9);
        Assert.Equal(24000 - (3 * 12000), balance.Moments!.Value.Loads, 1e-9);
    }

    [Fact]
    public void NoProof_OrNoFigure_IsNoBalance()
    {
        Assert.Throws<ArgumentNullException>(() => ReactionBalance.Of([new StatedForce(0, 1, 0, 0)], null, null!, 0));
        Assert.Throws<ArgumentException>(() => ReactionBalance.Of([], null, Loads, 0));
    }

    [Fact]
    public void MomentsThatAreNotStated_AreNotJudged()
    {
        ReactionBalance balance = ReactionBalance.Of([new StatedForce(0, 5000, 0, 100)], null, Loads, 0);

        Assert.Null(balance.Moments);
        Assert.Null(balance.Lacking);
        Assert.False(balance.Closes);
        Assert.True(ReactionBalance.Of([new StatedForce(0, 12000, 0, 0)], null, Loads, 0).Closes);
    }

    /// <summary>A cantilever of 2 m with 12 kN at 2 m: 12 kN and 24 kNm counter-clockwise.</summary>
    [Theory]
    [InlineData(24000, true)]
    [InlineData(-24000, false)]
    public void StatedMoments_Count(double couple, bool closes) => Assert.Equal(
        closes,
        ReactionBalance.Of(
            [new StatedForce(0, 12000, 0, 240)], [new StatedForce(0, couple, 0, 480)], Loads, 0).Closes);

    [Fact]
    public void ComputedReactions_CloseAboutAnySupport() => Law.Holds(RandomBeam.Stable, Gen.Int[0, 99], (model, drawn) =>
    {
        BeamResponse response = Answer.To(model);
        Scale scale = new(model, response);
        double about = model.Supports[drawn % model.Supports.Length].Position;

        ReactionBalance balance = Of(model, response.Reactions, response.Proof, about, 1e-12 * scale.Force);

        Assert.True(balance.Forces.Closes);
        Law.Equal(balance.Moments!.Value.Loads, balance.Moments.Value.Stated, 1e-12 * scale.Moment, "Moments");
    });

    /// <summary>Whatever the beam, figures worked without one load lack just that load, at its place.</summary>
    [Fact]
    public void FiguresWithoutOneLoad_LackThatLoadAtItsPlace() => Law.Holds(
        RandomBeam.Stable.Where(model => model.Length > 1),
        Gen.Select(Gen.Int[0, 32], Gen.Int[1, 160]),
        (model, drawn) =>
        {
            (int place, int size) = drawn;
            Load.Point left = new(model.Length * place / 32, size * 125.0);
            BeamModel more = model with { Cases = model.Cases.SetItem(0, With(model.Cases[0], left)) };
            BeamResponse without = Answer.To(model);
            BeamResponse with = Answer.To(more);
            Scale scale = new(more, with, without);

            ReactionBalance balance = Of(more, without.Reactions, with.Proof, 0, 1e-12 * scale.Force);

            BalancingLoad lacking = balance.Lacking!.Value;
            Law.Equal(left.Down, lacking.Down, 1e-12 * scale.Force, "Size");
            Law.Equal(left.Position, lacking.Position, 1e-12 * scale.Moment / left.Down, "Place");
            Assert.True(lacking.From <= lacking.Position && lacking.Position <= lacking.To);
        });

    /// <summary>However the figures were rounded, the load that is really missing lies in the range.</summary>
    [Fact]
    public void RangeOfThePlace_HoldsThePlaceOfTheFiguresBeforeRounding() => Gen.Select(
        Gen.Double[0, 6], Gen.Double[500, 5000], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[1, 200]).Sample(
        (place, size, offA, offB, half) =>
        {
            double a = 8000 - (size * (6 - place) / 6);
            double b = 4000 - (size * place / 6);
            ReactionBalance balance = ReactionBalance.Of(
                [new StatedForce(0, a + (offA * half), half, half), new StatedForce(6, b + (offB * half), half, half)],
                [],
                Loads,
                0);

            return balance.Lacking is not BalancingLoad lacking
                || (lacking.From <= place + 1e-9 && place - 1e-9 <= lacking.To);
        });

    private static ReactionBalance Of(double a, double b, double half = 0) => ReactionBalance.Of(
        [new StatedForce(0, a, half, 160), new StatedForce(6, b, half, 80)], [], Loads, 0);

    private static ReactionBalance Of(
        BeamModel model, ImmutableArray<Reaction> reactions, EquilibriumProof proof, double about, double allowed) =>
        ReactionBalance.Of(
            [.. model.Supports.Zip(reactions, (one, found) => new StatedForce(one.Position, found.Vertical, 0, allowed))],
            [.. model.Supports.Zip(reactions, (one, found) => new StatedForce(one.Position, found.Moment, 0, allowed))],
            proof,
            about);

    private static LoadCase With(LoadCase one, Load load) => one with { Loads = one.Loads.Add(load) };
}
