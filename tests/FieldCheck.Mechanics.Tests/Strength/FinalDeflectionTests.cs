using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>What lasting loads add to a deflection in time; EI = 1e6 throughout.</summary>
public sealed class FinalDeflectionTests
{
    private static readonly Member Creeps = Checked.Stick(creep: 0.6);

    /// <summary>The deflection of 1 kN/m on 4 m.</summary>
    private const double Sag = 5 * 1000 * 256 / 384e6;

    /// <summary>Dead 1 kN/m and live 2 kN/m on 4 m, of the live load 0.3 lasting.</summary>
    private static BeamModel Span => Checked.Simple(4) with
    {
        Cases = [new LoadCase("dead", [Checked.Uniform(0, 4, 1000)]), new LoadCase("live", [Checked.Uniform(0, 4, 2000)])],
        Combinations = [new Combination("all", CombinationBasis.Service, [1, 1])],
    };

    private static DeflectionLimits Limits => new() { BayRatio = 300, FinalBayRatio = 300, Lasting = [1, 0.3] };

    /// <summary>EN 1995-1-1, 2.2.3 (form from memory): G·(1 + kdef) + Q·(1 + ψ2·kdef).</summary>
    [Fact]
    public void SimpleSpan_AddsTheCreepOfLastingShares()
    {
        ImmutableArray<SectionCheck> all = Checked.Problem(Span, Creeps).With(Limits).Find();

        Assert.Equal([CheckKind.Deflection, CheckKind.FinalDeflection], all.Select(one => one.Kind));
        Assert.Equal(3 * Sag, all[0].Demand!.Value, 1e-15);
        Assert.Equal((1.6 + 2 * (1 + 0.3 * 0.6)) * Sag, all[1].Demand!.Value, 1e-15);
        Assert.Equal(3 * Sag, all[1].Term(CheckSymbol.InstantDeflection), 1e-15);
        Assert.Equal(0.6 * 1.6 * Sag, all[1].Term(CheckSymbol.CreepDeflection), 1e-15);
        Assert.Equal(0.6, all[1].Term(CheckSymbol.CreepFactor));
        Assert.Equal(4.0 / 300, all[1].Limit);
        Assert.False(all[1].IsBound);
    }

    [Fact]
    public void ItsOwnLimit_IsTheOnlyOne()
    {
        Assert.Equal(
            [CheckKind.Deflection],
            Checked.Problem(Span, Creeps).With(Limits with { FinalBayRatio = null }).Find().Select(one => one.Kind));

        SectionCheck check = Checked.Problem(Span, Creeps).With(Limits with { FinalBayRatio = 200 }).Only(CheckKind.FinalDeflection);

        Assert.Equal(4.0 / 200, check.Limit);
    }

    [Fact]
    public void WithoutCreep_TheFinalDeflectionIsJudgedWhereItCanBe()
    {
        DeflectionLimits asked = new() { FinalBayRatio = 200 };

        Assert.Equal(NotJudgedReason.NoModulus, Assert.Single(Checked.Problem(Span, Checked.Stick()).With(asked).Find()).Reason);
        Assert.Equal(3 * Sag, Assert.Single(Checked.Problem(Span, Checked.Stick(creep: 0)).With(asked).Find()).Demand!.Value, 1e-15);
        Assert.Equal(
            NotJudgedReason.NothingToJudge,
            Assert.Single(Checked.Problem(Span, Creeps).With(new DeflectionLimits { FinalOverhangRatio = 100 }).Find()).Reason);
        Assert.Equal(
            NotJudgedReason.NoCombination,
            Assert.Single(Checked.Problem(Span.Factored(), Creeps).With(asked).Find()).Reason);
    }

    [Fact]
    public void NothingLasting_AddsNothing() => Assert.Equal(
        3 * Sag,
        Checked.Problem(Span, Creeps).With(Limits with { Lasting = [] }).Only(CheckKind.FinalDeflection).Demand!.Value,
        1e-15);

    /// <summary>An overhang of 2 m under its own load, the bay beside it under none: F·a²·(l + a)/3EI·1.6.</summary>
    [Fact]
    public void Overhang_CreepsToo()
    {
        BeamModel model = Checked.Model([4, 2], [Support.Pin(0), Support.Roller(4)], new Load.Point(6, 1000));

        SectionCheck check = Checked
            .Problem(model, Creeps)
            .With(new DeflectionLimits { FinalOverhangRatio = 180, Lasting = [1] })
            .Only(CheckKind.FinalOverhangDeflection);

        Assert.Equal(1.6 * 1000 * 4 * 6 / 3e6, check.Demand!.Value, 1e-12);
    }

    /// <summary>Settlement is there at once and does not creep.</summary>
    [Fact]
    public void Settlement_DoesNotCreep()
    {
        BeamModel model = Checked.Model(
            [1, 1], [Support.Pin(0), Support.Roller(1) with { Settlement = 0.01 }, Support.Roller(2)]);

        SectionCheck check = Checked.Problem(model, Creeps).With(new DeflectionLimits { FinalBayRatio = 300, Lasting = [1] }).Find()[0];

        Assert.Equal(0.01 / (3 * Math.Sqrt(3)), check.Demand!.Value, 1e-12);
    }

    /// <summary>Where patterns count, factor·(1 + creep·lasting) is exact, and the bays that govern are named.</summary>
    [Fact]
    public void Patterns_AreExactWhereNothingLetsGo()
    {
        StrengthProblem problem = Checked.Problem(Span, Creeps).WithPattern(1).With(Limits);

        SectionCheck check = problem.Only(CheckKind.FinalDeflection);

        Assert.Equal((1.6 + 2 * (1 + 0.3 * 0.6)) * Sag, check.Demand!.Value, 1e-15);
        Assert.Equal([0], check.Situation!.Patterns[1]!.Bays.AsEnumerable());
        Assert.False(check.IsBound);
    }

    [Fact]
    public void DifferentCreepInOneBay_TakesTheGreatestAsABound()
    {
        BeamModel model = Checked.Model([2, 2], [Support.Pin(0), Support.Roller(4)], Checked.Uniform(0, 4, 1000));

        SectionCheck check = Checked
            .Problem(model, Checked.Stick(creep: 0.6), Checked.Stick(creep: 0.8))
            .With(new DeflectionLimits { BayRatio = 300, FinalBayRatio = 300, Lasting = [1] })
            .Only(CheckKind.FinalDeflection);

        Assert.Equal(1.8 * Sag, check.Demand!.Value, 1e-12);
        Assert.True(check.IsBound);
    }

    private static BeamModel LetsGo(double live) => Checked.Model(
        [1, 1],
        [Support.Pin(0), Support.Roller(1), Support.Roller(2) with { Action = SupportAction.PushesOnly }]) with
    {
        Cases = [new LoadCase("dead", [Checked.Uniform(0, 2, 1e5)]), new LoadCase("live", [Checked.Uniform(0, 1, live)])],
        Combinations = [new Combination("all", CombinationBasis.Service, [1, 1])],
    };

    /// <summary>
    /// The far end lifts at once under the live load on the first span, but not under the dead load, which lasts: each is
    /// solved for by itself. At 0.4215·l the two spans under dead load sag by w·l⁴/185EI, which creeps.
    /// </summary>
    [Fact]
    public void SupportThatLetsGo_LeavesTheLastingLoadsToThemselves()
    {
        StrengthProblem problem = Checked.Problem(LetsGo(live: 1e6), Creeps).With(new DeflectionLimits { BayRatio = 300, FinalBayRatio = 300, Lasting = [1, 0] });

        SectionCheck instant = problem.Find().First(one => one.Kind == CheckKind.Deflection);
        SectionCheck final = problem.Find().First(one => one.Kind == CheckKind.FinalDeflection);
        SectionCheck varied = problem.WithPattern(1).Find().First(one => one.Kind == CheckKind.FinalDeflection);

        Assert.False(final.IsBound);
        Assert.Equal(final.Demand!.Value, final.Term(CheckSymbol.InstantDeflection) + final.Term(CheckSymbol.CreepDeflection), 1e-15);
        Assert.InRange(final.Term(CheckSymbol.InstantDeflection), 0.99 * instant.Demand!.Value, instant.Demand.Value);
        Assert.InRange(final.Term(CheckSymbol.CreepDeflection), 0.95 * 0.6 * 0.1 / 185, 0.6 * 0.1 / 184.5);
        Assert.True(varied.IsBound);
        Assert.InRange(varied.Demand!.Value, final.Demand!.Value, 1.01 * final.Demand.Value);
    }

    /// <summary>The dead load alone would tip the beam; the live load on the bay holds it.</summary>
    [Fact]
    public void LastingLoadsThatTip_AreNotJudged()
    {
        BeamModel model = Checked.Model(
            [4, 2],
            [
                Support.Pin(0) with { Action = SupportAction.PushesOnly },
                Support.Roller(4) with { Action = SupportAction.PushesOnly },
            ]) with
        {
            Cases = [new LoadCase("dead", [new Load.Point(6, 1000)]), new LoadCase("live", [Checked.Uniform(0, 4, 2000)])],
            Combinations = [new Combination("all", CombinationBasis.Service, [1, 1])],
        };

        ImmutableArray<SectionCheck> all = Checked.Problem(model, Creeps).With(new DeflectionLimits { BayRatio = 300, FinalBayRatio = 300, Lasting = [1, 0] }).Find();

        Assert.Null(all[0].Reason);
        Assert.Equal((CheckKind.FinalDeflection, NotJudgedReason.NoAnswer), (all[1].Kind, all[1].Reason!.Value));
    }

    /// <summary>Rolling loads are in the worst of a final deflection as in that at once.</summary>
    [Fact]
    public void RollingLoad_CountsWithItsLastingShare()
    {
        StrengthProblem problem = Checked
            .Problem(Checked.Simple(4), Creeps)
            .WithRolling(new RollingLoad("cart", 0, [new Axle(0, 1000)], 0))
            .With(new DeflectionLimits { BayRatio = 300, FinalBayRatio = 300, Lasting = [0.5] });

        SectionCheck check = problem.Only(CheckKind.FinalDeflection);

        Assert.Equal(1.3 * 1000 * 64 / 48e6, check.Demand!.Value, 1e-9);
        Assert.Equal(EnvelopeCertainty.Exact, check.Certainty);
    }

    /// <summary>On springs both parts are measured from the chord: what the springs give is in neither.</summary>
    [Fact]
    public void PartsOnSprings_AreMeasuredFromTheChord()
    {
        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 1000)) with
        {
            Supports = [Support.Spring(0, 1e5) with { Along = Restraint.Held }, Support.Spring(4, 1e5)],
        };

        SectionCheck check = Checked.Problem(model, Creeps)
            .With(new DeflectionLimits { BayRatio = 300, FinalBayRatio = 300, Lasting = [1] })
            .Only(CheckKind.FinalDeflection);

        Assert.Equal(1.6 * Sag, check.Demand!.Value, 1e-12);
        Assert.Equal(Sag, check.Term(CheckSymbol.InstantDeflection), 1e-12);
        Assert.Equal(0.6 * Sag, check.Term(CheckSymbol.CreepDeflection), 1e-12);
    }

    /// <summary>
    /// Supports that only push, and keep pushing: what creeps may be more than what bends at once, and both go down. Under a
    /// pattern the two are put together from the worst of each.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void PartsOverSupportsThatPush_AddUp(bool isPattern)
    {
        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 1000));
        model = model with { Supports = [.. model.Supports.Select(one => one with { Action = SupportAction.PushesOnly })] };
        StrengthProblem problem = Checked.Problem(model, Checked.Stick(creep: 2)).With(new DeflectionLimits { BayRatio = 300, FinalBayRatio = 300, Lasting = [1] });

        SectionCheck check = (isPattern ? problem.WithPattern(0) : problem).Only(CheckKind.FinalDeflection);

        Assert.Equal(3 * Sag, check.Demand!.Value, 1e-12);
        Assert.Equal(Sag, check.Term(CheckSymbol.InstantDeflection), 1e-12);
        Assert.Equal(2 * Sag, check.Term(CheckSymbol.CreepDeflection), 1e-12);
        Assert.Equal(isPattern, check.IsBound);
    }

    /// <summary>A bay creeps as its own sticks do.</summary>
    [Fact]
    public void CreepOfAnotherBay_DoesNotCount()
    {
        BeamModel model = Checked.Model([2, 2], [Support.Pin(0), Support.Roller(2), Support.Roller(4)], Checked.Uniform(0, 4, 1000));

        SectionCheck[] all =
        [
            .. Checked.Problem(model, Checked.Stick(creep: 0.6), Checked.Stick(creep: 0.8))
                .With(new DeflectionLimits { FinalBayRatio = 300, Lasting = [1] })
                .Find(),
        ];

        Assert.Equal([0.6, 0.8], all.Select(one => one.Term(CheckSymbol.CreepFactor)));
        Assert.All(all, one => Assert.False(one.IsBound));
    }
}
