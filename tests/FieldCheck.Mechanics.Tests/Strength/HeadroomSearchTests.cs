using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>
/// The search for the greatest load, on utilisations written down as formulas and on a plank that holds 10 N/mm²: 3333.3 N·m.
/// </summary>
public sealed class HeadroomSearchTests
{
    private const double Held = 10e6 * 0.05 * 0.04 / 6;

    private static readonly Member Stick = Checked.Stick(new Strengths(10e6, null, null));

    [Fact]
    public void LoadThatHolds_GrowsUntilTheUtilisationIsOne()
    {
        Headroom found = HeadroomSearch.Of(load => new Judgement(0.2 + 0.3 * load, null), 1);

        Assert.Equal(0.8 / 0.3, found.Most!.Value, 1e-11);
        Assert.Equal(HeadroomEnd.CheckFails, found.End);
    }

    [Fact]
    public void LoadThatDoesNotHold_IsLessened()
    {
        Headroom found = HeadroomSearch.Of(load => new Judgement(0.2 + 1.6 * load, null), 1);

        Assert.Equal(0.5, found.Most!.Value, 1e-12);
    }

    [Fact]
    public void NothingFails_IsWithoutEnd()
    {
        Headroom found = HeadroomSearch.Of(_ => new Judgement(0.9, null), 1);

        Assert.Equal(new Headroom(null, HeadroomEnd.None, null), found);
    }

    [Fact]
    public void OverWithoutAny_IsSaid()
    {
        Headroom found = HeadroomSearch.Of(load => new Judgement(1.1 + load, null), 1);

        Assert.Equal(new Headroom(null, HeadroomEnd.OverWithout, null), found);
    }

    [Theory]
    [InlineData(0.4)]
    [InlineData(1.7)]
    [InlineData(812.5)]
    public void Tipping_IsFoundThoughItIsAJump(double tips)
    {
        Headroom found = HeadroomSearch.Of(
            load => new Judgement(load <= tips ? 0.3 : double.PositiveInfinity, null), 1);

        Assert.Equal(HeadroomEnd.Tips, found.End);
        Assert.Equal(tips, found.Most!.Value, tips * 1e-9);
    }

    [Fact]
    public void TippingWithoutAny_IsSaid()
    {
        Headroom found = HeadroomSearch.Of(_ => new Judgement(double.PositiveInfinity, null), 1);

        Assert.Equal(new Headroom(null, HeadroomEnd.Tips, null), found);
    }

    /// <summary>The greatest of several straight lines is what the utilisation of a beam without lift-off is.</summary>
    [Fact]
    public void GreatestOfStraightLines_MeetsOneAtTheGreatestLoad() => Gen
        .Select(Gen.Double[0, 0.95], Gen.Double[-2, 3])
        .Array[1, 8]
        .Where(lines => lines.All(line => Math.Abs(line.Item2) > 1e-3))
        .Sample(lines =>
        {
            double At(double load) => lines.Max(line => Math.Abs(line.Item1 + line.Item2 * load));
            double expected = lines.Min(line => ((line.Item2 > 0 ? 1 : -1) - line.Item1) / line.Item2);
            Headroom found = HeadroomSearch.Of(load => new Judgement(At(load), null), 1);

            Assert.Equal(expected, found.Most!.Value, 1e-9 * expected);
        });

    /// <summary>Steps of an eighth at first see what lies between a third and a half more, though more holds again.</summary>
    [Fact]
    public void WhatHoldsAgainFartherOn_DoesNotCount()
    {
        Headroom found = HeadroomSearch.Of(load => new Judgement(load is > 1.3 and < 1.45 ? 1.2 : 0.5, null), 1);

        Assert.Equal((1.3, HeadroomEnd.CheckFails), (Math.Round(found.Most!.Value, 10), found.End));
    }

    /// <summary>Where the utilisation leaps past one there is no root: the last that holds is given, never what is beyond.</summary>
    [Theory]
    [InlineData(0.4, 1)]
    [InlineData(2.6, 1)]
    [InlineData(4e-4, 1e-3)]
    public void Leap_IsComeUpToFromTheSideThatHolds(double leap, double start)
    {
        SectionCheck beyond = NeededFiguresTests.Check(CheckKind.Bearing, CheckUnit.Stress, 3, 2);

        Headroom found = HeadroomSearch.Of(
            load => load <= leap ? new Judgement(0.1, null) : new Judgement(1.5, beyond), start);

        Assert.InRange(found.Most!.Value, leap * (1 - 1e-11), leap);
        Assert.Equal((HeadroomEnd.CheckFails, beyond), (found.End, found.First));
    }

    /// <summary>Nothing but none at all holds, by a leap to a tip or to a check: both are found, and the search ends.</summary>
    [Theory]
    [InlineData(double.PositiveInfinity, HeadroomEnd.Tips)]
    [InlineData(1.5, HeadroomEnd.CheckFails)]
    public void NoneButNothing_IsNone(double beyond, HeadroomEnd end)
    {
        Headroom found = HeadroomSearch.Of(load => new Judgement(load <= 0 ? 0.1 : beyond, null), 1);

        Assert.Equal((0, end), (found.Most!.Value, found.End));
    }

    [Fact]
    public void CheckThatCanBeJudgedNoLonger_IsNotSaidToFail()
    {
        SectionCheck open = NeededFiguresTests.Check(CheckKind.Bearing, CheckUnit.Stress, 3, 2) with { Reason = NotJudgedReason.TooSlender };

        Headroom found = HeadroomSearch.Of(
            load => load <= 2 ? new Judgement(0.1, null) : new Judgement(double.PositiveInfinity, open), 1);

        Assert.Equal((2, HeadroomEnd.NotJudged, open), (Math.Round(found.Most!.Value, 9), found.End, found.First));
    }

    /// <summary>P·l/4 of 4 m beside w·l²/8 of 500 N/m or of nothing.</summary>
    [Theory]
    [InlineData(500)]
    [InlineData(0)]
    public void PointLoad_TakesWhatTheMomentLeaves(double load)
    {
        BeamModel model = Checked.Simple(4, load == 0 ? [] : [Checked.Uniform(0, 4, load)]);

        Headroom found = HeadroomSearch.OfPointLoad(Checked.Problem(model, Stick), 2, 0, new BeamSolver());

        Assert.Equal(Held - 2 * load, found.Most!.Value, 1e-7);
        Assert.Equal((HeadroomEnd.CheckFails, CheckKind.Bending), (found.End, found.First!.Kind));
    }

    /// <summary>An overhang of 2 m on supports that only push: 100 N/m on the bay of 4 m balance 400 N, nothing none.</summary>
    [Theory]
    [InlineData(100, 400)]
    [InlineData(0, 0)]
    public void PointLoadOnAnOverhang_GrowsUntilTheBeamTips(double dead, double most)
    {
        BeamModel model = Checked.Model(
            [4, 2],
            [.. new[] { Support.Pin(0), Support.Roller(4) }.Select(one => one with { Action = SupportAction.PushesOnly })],
            dead == 0 ? [] : [Checked.Uniform(0, 4, dead)]);

        Headroom found = HeadroomSearch.OfPointLoad(Checked.Problem(model, Stick), 6, 0, new BeamSolver());

        Assert.Equal(most, found.Most!.Value, 1e-6);
        Assert.Equal((HeadroomEnd.Tips, null), (found.End, found.First));
    }

    /// <summary>F·l/4 of a wheel of 1 kN on 4 m beside 250 N·m of 125 N/m that do not grow, and the other way round.</summary>
    [Theory]
    [InlineData(true, (Held - 250) / 1000)]
    [InlineData(false, (Held - 1000) / 250)]
    public void CasesThatGrow_TakeTheirRollingLoadsAlong(bool wheelGrows, double factor)
    {
        BeamModel model = Checked.Simple(4) with
        {
            Cases = [new LoadCase("spread", [Checked.Uniform(0, 4, 125)]), new LoadCase("wheel", [])],
            Combinations = [new Combination("both", CombinationBasis.Service, [1, 1])],
        };
        StrengthProblem problem = Checked.Problem(model, Stick).WithRolling(new RollingLoad("wheel", 1, [new Axle(0, 1000)], 0));

        Headroom found = HeadroomSearch.OfCases(problem, [!wheelGrows, wheelGrows], new BeamSolver());

        Assert.Equal(factor, found.Most!.Value, 1e-8 * factor);
    }

    [Fact]
    public void NothingGiven_IsAnError()
    {
        StrengthProblem problem = Checked.Problem(Checked.Simple(4));

        Assert.Throws<ArgumentNullException>("problem", () => HeadroomSearch.OfCases(null!, [], new BeamSolver()));
        Assert.Throws<ArgumentNullException>("solver", () => HeadroomSearch.OfCases(problem, [true], null!));
        Assert.Throws<ArgumentNullException>("problem", () => HeadroomSearch.OfPointLoad(null!, 2, 0, new BeamSolver()));
        Assert.Throws<ArgumentNullException>("solver", () => HeadroomSearch.OfPointLoad(problem, 2, 0, null!));
        Assert.Throws<ArgumentNullException>("judge", () => HeadroomSearch.Of(null!, 1));
    }
}
