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

    /// <summary>Neither what stands nor the least of it holds, but a range between them or beyond does.</summary>
    [Theory]
    [InlineData(0.3, 0.62)]
    [InlineData(1.8, 2.6)]
    [InlineData(3.85, 9)]
    public void RangeThatHolds_IsFoundBetweenAndBeyond(double from, double to)
    {
        Headroom found = HeadroomSearch.Of(size => new Judgement(size >= from && size <= to ? 0.5 : 1.5, null), 1, 0.02, 49);

        Assert.Equal((to, from), (Math.Round(found.Most!.Value, 9), Math.Round(found.Least!.Value, 9)));
        Assert.Equal(HeadroomEnd.CheckFails, found.End);
    }

    /// <summary>Tried are 1, 0.902, 0.804 … 0.02 and 1.3, 1.6 … 4: of those 0.51 comes nearest to 0.5.</summary>
    [Fact]
    public void NoneThatHolds_IsToldByTheNearest()
    {
        SectionCheck over = NeededFiguresTests.Check(CheckKind.Bearing, CheckUnit.Stress, 3, 2);

        Headroom found = HeadroomSearch.Of(size => new Judgement(1.2 + (size - 0.5) * (size - 0.5), over), 1, 0.02, 10);

        Assert.Equal((null, HeadroomEnd.OverWithout, over), (found.Most, found.End, found.First));
        Assert.Equal(0.51, found.Nearest!.Value, 1e-12);
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

    /// <summary>
    /// The same overhang, on supports that are taken to act both ways: A is pulled from 400 N on. Where it is said to hold the beam down,
    /// the load grows to 2 m·F = 3333 N·m.
    /// </summary>
    [Theory]
    [InlineData(false, 400, HeadroomEnd.Pulled, 0)]
    [InlineData(true, Held / 2, HeadroomEnd.CheckFails, null)]
    public void PointLoadOnAnOverhang_GrowsUntilASupportWouldHaveToHoldDown(bool isSaid, double most, HeadroomEnd end, int? support)
    {
        BeamModel model = Checked.Model([4, 2], [Support.Pin(0), Support.Roller(4)], Checked.Uniform(0, 4, 100));
        StrengthProblem problem = Checked.Problem(model, Stick) with { Untied = isSaid ? [] : [0, 1] };

        Headroom found = HeadroomSearch.OfPointLoad(problem, 6, 0, new BeamSolver());

        Assert.Equal(most, found.Most!.Value, 1e-5);
        Assert.Equal((end, support), (found.End, found.Support));
    }

    /// <summary>A support that is pulled however small the load is: 100 N/m on the overhang alone.</summary>
    [Fact]
    public void PulledWithoutAny_IsSaid()
    {
        BeamModel model = Checked.Model([4, 2], [Support.Pin(0), Support.Roller(4)], Checked.Uniform(4, 6, 100));

        Headroom found = HeadroomSearch.OfPointLoad(Checked.Problem(model, Stick) with { Untied = [0] }, 6, 0, new BeamSolver());

        Assert.Equal((null, HeadroomEnd.Pulled, 0), (found.Most, found.End, found.Support));
    }

    /// <summary>
    /// Two bays of 4 m, 10 N/m on the first, 20 N/m that grow on the second: A = (7·10 − 20·f)·4/16, nothing from f = 3.5 on
    /// (three-moment equation). Beyond that the first bay hangs over, 80 N·m at B, and M² of the second is
    /// (w·l/2 − 80/l)²/2w = 3333 N·m.
    /// </summary>
    [Fact]
    public void SupportThatLetsGoOnTheWay_IsTold()
    {
        BeamModel model = Checked.Model(
            [4, 4], [Support.Pin(0) with { Action = SupportAction.PushesOnly }, Support.Roller(4), Support.Roller(8)]) with
        {
            Cases = [new LoadCase("dead", [Checked.Uniform(0, 4, 10)]), new LoadCase("live", [Checked.Uniform(4, 8, 20)])],
            Combinations = [new Combination("both", CombinationBasis.Service, [1, 1])],
        };

        Headroom found = HeadroomSearch.OfCases(Checked.Problem(model, Stick), [false, true], new BeamSolver());

        double load = 20 * found.Most!.Value;
        Assert.Equal(Held, (2 * load - 20) * (2 * load - 20) / (2 * load), 1e-6 * Held);
        SupportLetGo letGo = Assert.Single(found.LetGo);
        Assert.Equal(0, letGo.Support);
        Assert.InRange(letGo.From, 3.5 * (1 - 2e-6), 3.5);
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
