using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Deflections of bays, overhangs and cases alone; EI = 1e6 throughout.</summary>
public sealed class DeflectionCheckTests
{
    private static readonly DeflectionLimits Bay360 = new() { BayRatio = 360 };

    /// <summary>5·w·l⁴/384EI: 2 kN/m on 4 m gives 6.667 mm, held against 4 m/360 = 11.111 mm.</summary>
    [Fact]
    public void SimpleSpan_SagsByTheTextbookFormula()
    {
        SectionCheck check = Assert.Single(
            Checked.Problem(Checked.Simple(4, Checked.Uniform(0, 4, 2000))).With(Bay360).Find());

        Assert.Equal(CheckKind.Deflection, check.Kind);
        Assert.Equal(5 * 2000 * 256 / 384e6, check.Demand!.Value, 1e-15);
        Assert.Equal(4.0 / 360, check.Limit);
        Assert.Equal(0, check.Bay);
        Assert.Null(check.Span);
        Assert.Equal(2, check.Position!.Value, 1e-9);
        Assert.Equal(4, check.Term(CheckSymbol.BayLength));
        Assert.Equal(360, check.Term(CheckSymbol.Ratio));
        Assert.Equal(CheckUnit.Length, check.Unit);
        Assert.Equal(CheckVerdict.Ok, check.Verdict);
        Assert.False(check.IsBound);
    }

    /// <summary>
    /// A force F at the end of an overhang a beyond a bay l: F·a²·(l + a)/3EI down at the end, F·a·l²/(9√3·EI) up in the bay.
    /// </summary>
    [Fact]
    public void Overhang_MovesFromTheLevelOfItsSupport()
    {
        DeflectionLimits limits = new() { BayRatio = 360, OverhangRatio = 180 };
        ImmutableArray<SectionCheck> all = Checked
            .Problem(Checked.Model([4, 2], [Support.Pin(0), Support.Roller(4)], new Load.Point(6, 1000)))
            .With(limits)
            .Find();

        Assert.Equal([CheckKind.Deflection, CheckKind.OverhangDeflection], all.Select(one => one.Kind));
        Assert.Equal(1000 * 2 * 16 / (9 * Math.Sqrt(3) * 1e6), all[0].Demand!.Value, 1e-12);
        Assert.Equal(4 / Math.Sqrt(3), all[0].Position!.Value, 1e-9);
        Assert.Equal(1000 * 4 * 6 / 3e6, all[1].Demand!.Value, 1e-12);
        Assert.Equal(2.0 / 180, all[1].Limit);
        Assert.Equal(1, all[1].Bay);
        Assert.Equal(6, all[1].Position);
    }

    [Fact]
    public void LeftOverhang_IsBayMinusOne()
    {
        SectionCheck check = Assert.Single(Checked
            .Problem(Checked.Model([2, 4], [Support.Pin(2), Support.Roller(6)], new Load.Point(0, 1000)))
            .With(new DeflectionLimits { OverhangRatio = 180 })
            .Find());

        Assert.Equal(-1, check.Bay);
        Assert.Equal(1000 * 4 * 6 / 3e6, check.Demand!.Value, 1e-12);
        Assert.Equal(0, check.Position);
    }

    /// <summary>A cantilever is an overhang: F·l³/3EI.</summary>
    [Fact]
    public void Cantilever_IsAnOverhang()
    {
        SectionCheck check = Assert.Single(Checked
            .Problem(Checked.Model([3], [Support.Fixed(0)], new Load.Point(3, 1000)))
            .With(new DeflectionLimits { OverhangRatio = 180 })
            .Find());

        Assert.Equal(1000 * 27 / 3e6, check.Demand!.Value, 1e-12);
        Assert.Equal(0, check.Bay);
    }

    /// <summary>w·l⁴/185EI at 0.4215·l from the prop; Hicks, Civil Engineering Formulas, figure 2.2, case 10.</summary>
    [Fact]
    public void ProppedCantilever_SagsByTheHandbook()
    {
        SectionCheck check = Assert.Single(Checked
            .Problem(Checked.Model([1], [Support.Roller(0), Support.Fixed(1)], Checked.Uniform(0, 1, 1e6)))
            .With(Bay360)
            .Find());

        Assert.Equal(1.0 / 185, check.Demand!.Value, 2e-5);
        Assert.Equal(0.4215, check.Position!.Value, 5e-5);
    }

    /// <summary>
    /// A beam on two springs sinks as a whole; from the chord it sags as on rigid supports, and from the unloaded line by
    /// both: R/k = 4000/1e5 = 40 mm, and at mid-span 6.667 mm more.
    /// </summary>
    [Fact]
    public void SpringsAndSettlement_DoNotCountInABay()
    {
        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 2000)) with
        {
            Supports =
            [
                Support.Spring(0, 1e5) with { Along = Restraint.Held, Settlement = 0.003 }, Support.Spring(4, 1e5),
            ],
        };
        ImmutableArray<SectionCheck> all =
            Checked.Problem(model).With(Bay360 with { Absolute = 0.05 }).Find();

        double sag = 5 * 2000 * 256 / 384e6;
        Assert.Equal(sag, all[0].Demand!.Value, 1e-12);
        Assert.False(all[0].IsBound);
        Assert.Equal(CheckKind.AbsoluteDeflection, all[1].Kind);
        Assert.InRange(all[1].Demand!.Value, 0.04 + sag + 0.0015, 0.04 + sag + 0.0016);
        Assert.Null(all[1].Bay);
        Assert.Equal(0.05, all[1].Limit);
    }

    /// <summary>With patterns each situation has its own chord: what the springs give is not in it.</summary>
    [Fact]
    public void SpringsUnderPatterns_AreMeasuredFromTheChordOfEachSituation()
    {
        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 2000)) with
        {
            Supports = [Support.Spring(0, 1e5) with { Along = Restraint.Held }, Support.Spring(4, 1e5)],
        };

        SectionCheck check = Assert.Single(Checked.Problem(model).WithPattern(0).With(Bay360).Find());

        Assert.False(check.IsBound);
        Assert.Equal(EnvelopeCertainty.Exact, check.Certainty);
        Assert.Equal(5 * 2000 * 256 / 384e6, check.Demand!.Value, 1e-12);
    }

    /// <summary>
    /// A wheel on a beam on springs: what governs is what the place named gives, and no place tried one after the other gives more.
    /// </summary>
    [Fact]
    public void RollingLoadOnSprings_IsAsGreatAsTheWorstPlace()
    {
        BeamModel model = Checked.Model(
            [3, 3],
            [Support.Spring(0, 2e5) with { Along = Restraint.Held }, Support.Spring(3, 1e5), Support.Spring(6, 2e5)]);
        StrengthProblem problem = Checked.Problem(model)
            .WithRolling(new RollingLoad("wheel", 0, [new Axle(0, 1000)], 0))
            .With(Bay360);

        SectionCheck check = problem.Find()[0];

        Assert.False(check.IsBound);
        Assert.Equal(EnvelopeCertainty.Estimate, check.Certainty);
        double worst = Enumerable.Range(0, 301).Max(i => FromChord(model, new Load.Point(i * 0.02, 1000), 0, 3));
        Assert.InRange(check.Demand!.Value, worst * (1 - 1e-6), worst * (1 + 1e-3));
        double there = check.Situation!.Rolling!.Position;
        Assert.Equal(check.Demand!.Value, FromChord(model, new Load.Point(there, 1000), 0, 3), 1e-6 * worst);
    }

    /// <summary>
    /// Two bays that dead load keeps on supports which only push. What the live load adds on one bay is that of a beam held down,
    /// 0.0092·w·l⁴/EI (two equal spans, one loaded: handbook coefficient, from memory), and not of one whose far end has lifted.
    /// </summary>
    [Fact]
    public void CaseAloneOnABeamThatOthersKeepDown_AddsUp()
    {
        LoadCase dead = new("dead", [Checked.Uniform(0, 2, 2e6)]);
        LoadCase live = new("live", [Checked.Uniform(0, 2, 3e6)]);
        BeamModel model = Checked.Model(
            [1, 1],
            [.. new[] { Support.Pin(0), Support.Roller(1), Support.Roller(2) }.Select(one => one with { Action = SupportAction.PushesOnly })]) with
        {
            Cases = [dead, live],
            Combinations = [new Combination("all", CombinationBasis.Service, [1, 1])],
        };
        DeflectionLimits limits = new() { Cases = [new CaseDeflectionLimit(1, 360)] };

        SectionCheck held = Checked.Problem(model).WithPattern(1).With(limits).Find()[0];
        SectionCheck loose = Checked.Problem(model with { Cases = [dead with { Loads = [] }, live] }).WithPattern(1).With(limits).Find()[0];

        Assert.Equal(3 * 0.0092, held.Demand!.Value, 3 * 5e-5);
        Assert.Equal((false, EnvelopeCertainty.Exact), (held.IsBound, held.Certainty));
        // The far end is off its support: a simple span, 5·w·l⁴/384EI.
        Assert.Equal(3 * 5.0 / 384, loose.Demand!.Value, 1e-12);
        Assert.Equal((false, EnvelopeCertainty.Exact), (loose.IsBound, loose.Certainty));
    }

    /// <summary>Rigid supports stay where they are: with patterns too it is exact.</summary>
    [Fact]
    public void PatternsOnRigidSupports_AreExact()
    {
        BeamModel model = Checked.Model(
            [1, 1, 1],
            [Support.Pin(0), Support.Roller(1), Support.Roller(2), Support.Roller(3)],
            Checked.Uniform(0, 3, 1e6));

        ImmutableArray<SectionCheck> all = Checked.Problem(model).WithPattern(0).With(Bay360).Find();

        // 0.0099·w·l⁴/EI in the outer bays, printed in the data files of the folder Published (pat-3span-13).
        Assert.Equal(0.0099, all[0].Demand!.Value, 1e-4);
        Assert.Equal(all[0].Demand!.Value, all[2].Demand!.Value, 1e-12);
        Assert.All(all, one => Assert.False(one.IsBound));
        Assert.Equal([1], all[1].Situation!.Patterns[0]!.Bays.AsEnumerable());
    }

    /// <summary>A force that rolls over a simple span: F·l³/48EI.</summary>
    [Fact]
    public void RollingLoad_IsExact()
    {
        StrengthProblem problem = Checked
            .Problem(Checked.Simple(4))
            .WithRolling(new RollingLoad("wheel", 0, [new Axle(0, 1000)], 0))
            .With(Bay360);

        SectionCheck check = Assert.Single(problem.Find());

        Assert.Equal(1000 * 64 / 48e6, check.Demand!.Value, 1e-9);
        Assert.Equal(EnvelopeCertainty.Exact, check.Certainty);
        Assert.False(check.IsBound);
    }

    /// <summary>The settled middle support draws the chords of both bays down; the beam bends up between.</summary>
    [Fact]
    public void SettledSupport_BendsTheBaysFromTheirChords()
    {
        BeamModel model = Checked.Model(
            [1, 1], [Support.Pin(0), Support.Roller(1) with { Settlement = 0.01 }, Support.Roller(2)]);

        SectionCheck check = Checked.Problem(model).With(Bay360).Find()[0];

        // v = δ·(3x - x³)/2 less the chord δ·x: δ·(x - x³)/2, greatest at 1/√3.
        Assert.Equal(0.01 / (3 * Math.Sqrt(3)), check.Demand!.Value, 1e-12);
        Assert.Equal(1 / Math.Sqrt(3), check.Position!.Value, 1e-9);
    }

    /// <summary>A case alone has neither factor nor settlement; its overhangs count with twice their length.</summary>
    [Fact]
    public void CaseAlone_HasItsOwnLimit()
    {
        BeamModel model = Checked.Model([4, 2], [Support.Pin(0), Support.Roller(4) with { Settlement = 0.02 }]) with
        {
            Cases =
            [
                new LoadCase("dead", [Checked.Uniform(0, 4, 2000)]), new LoadCase("live", [new Load.Point(6, 1000)]),
            ],
            Combinations = [new Combination("both", CombinationBasis.Factored, [1.2, 1.6])],
        };

        ImmutableArray<SectionCheck> all = Checked
            .Problem(model)
            .With(new DeflectionLimits { Cases = [new CaseDeflectionLimit(1, 240)] })
            .Find();

        Assert.Equal([CheckKind.Deflection, CheckKind.OverhangDeflection], all.Select(one => one.Kind));
        Assert.All(all, one => Assert.Equal(1, one.Case));
        Assert.All(all, one => Assert.Null(one.Situation));
        Assert.Equal(1000 * 2 * 16 / (9 * Math.Sqrt(3) * 1e6), all[0].Demand!.Value, 1e-12);
        Assert.Equal(4.0 / 240, all[0].Limit);
        Assert.Equal(CheckClause.Given, all[0].Clause);
        Assert.Equal(1000 * 4 * 6 / 3e6, all[1].Demand!.Value, 1e-12);
        Assert.Equal(2 * 2.0 / 240, all[1].Limit);
        Assert.Equal(CheckClause.OverhangAsTwiceItsLength, all[1].Clause);
    }

    [Fact]
    public void CaseThatTipsAlone_IsNotJudged()
    {
        BeamModel model = Checked.Model(
            [4, 2],
            [
                Support.Pin(0) with { Action = SupportAction.PushesOnly },
                Support.Roller(4) with { Action = SupportAction.PushesOnly },
            ]) with
        {
            Cases =
            [
                new LoadCase("dead", [Checked.Uniform(0, 4, 2000)]), new LoadCase("live", [new Load.Point(6, 1000)]),
            ],
            Combinations = [new Combination("dead", CombinationBasis.Service, [1, 0])],
        };

        ImmutableArray<SectionCheck> all = Checked
            .Problem(model)
            .With(Bay360 with { Cases = [new CaseDeflectionLimit(1, 240)] })
            .Find();

        Assert.Null(all.Single(one => one.Case is null).Reason);
        Assert.Equal(2, all.Count(one => one.Case == 1));
        Assert.All(all.Where(one => one.Case == 1), one => Assert.Equal(NotJudgedReason.NoAnswer, one.Reason));
    }

    /// <summary>A support that lets go moves with the beam: the chord runs through the beam where it was.</summary>
    [Fact]
    public void SupportThatLetsGo_LeavesTheChordThroughTheBeam()
    {
        BeamModel model = Checked.Model(
            [1, 1],
            [Support.Pin(0), Support.Roller(1), Support.Roller(2) with { Action = SupportAction.PushesOnly }],
            Checked.Uniform(0, 1, 1e6));

        ImmutableArray<SectionCheck> all = Checked.Problem(model).With(Bay360).Find();

        // A simple span in the first bay; the second is straight.
        Assert.Equal(5.0 / 384, all[0].Demand!.Value, 1e-12);
        Assert.Equal(0, all[1].Demand!.Value, 1e-12);
        Assert.False(all[1].IsBound);
    }

    [Fact]
    public void WhatCannotBeJudged_IsNamed()
    {
        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 2000));
        DeflectionLimits limits = new() { BayRatio = 360, OverhangRatio = 180, Absolute = 0.01 };

        Assert.Equal(
            NotJudgedReason.NothingToJudge, Checked.Problem(model).With(limits).Only(CheckKind.OverhangDeflection).Reason);
        Assert.Equal(
            NotJudgedReason.NothingToJudge,
            Checked.Problem(Checked.Model([3], [Support.Fixed(0)], new Load.Point(3, 1))).With(limits).Only(CheckKind.Deflection).Reason);
        Assert.Equal(
            [NotJudgedReason.NoCombination, NotJudgedReason.NothingToJudge, NotJudgedReason.NoCombination],
            Checked.Problem(model.Factored()).With(limits).Find().Select(one => one.Reason!.Value));
        BeamModel ratios = new(
            model.Spans, model.Supports, [], model.Cases, model.Combinations, HasAbsoluteStiffness: false);
        Assert.Equal(
            [NotJudgedReason.NoStiffness, NotJudgedReason.NothingToJudge, NotJudgedReason.NoStiffness],
            Checked.Problem(ratios).With(limits).Find().Select(one => one.Reason!.Value));
    }

    /// <summary>Uplift lifts the bay by what it would sag: 5·w·l⁴/384EI, up.</summary>
    [Fact]
    public void MovementUp_CountsAsDeflection() => Assert.Equal(
        5 * 2000 * 256 / 384e6,
        Checked.Problem(Checked.Simple(4, Checked.Uniform(0, 4, -2000))).With(new DeflectionLimits { Absolute = 0.05 }).Find()[0].Demand!.Value,
        1e-15);

    /// <summary>
    /// 1 kN lifts the end of an overhang a = 2 m beyond l = 4 m, both supports on springs of 100 kN/m: F·a²·(l + a)/3EI = 8 mm of
    /// bending, and of the supports +5 and -15 mm a slope of 5 mm/m, 10 mm more. Its own support's level does not count.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void OverhangOnSprings_MovesFromTheLevelOfItsSupport(bool isMirrored)
    {
        Support[] supports = [Support.Spring(isMirrored ? 2 : 0, 1e5), Support.Spring(isMirrored ? 6 : 4, 1e5)];
        BeamModel model = Checked.Model(
            isMirrored ? [2, 4] : [4, 2],
            [supports[0] with { Along = Restraint.Held }, supports[1]],
            new Load.Point(isMirrored ? 0 : 6, -1000));

        SectionCheck check = Assert.Single(Checked.Problem(model).With(new DeflectionLimits { OverhangRatio = 180 }).Find());

        Assert.Equal(0.018, check.Demand!.Value, 1e-12);
        Assert.Equal(isMirrored ? 0 : 6, check.Position!.Value);
    }

    /// <summary>One of two combinations lets the far end lift: then the case alone may, too.</summary>
    [Fact]
    public void CaseAloneOnABeamThatOneCombinationLetsLift_IsSolvedAsItStands()
    {
        BeamModel model = Checked.Model(
            [1, 1],
            [.. new[] { Support.Pin(0), Support.Roller(1), Support.Roller(2) }.Select(one => one with { Action = SupportAction.PushesOnly })]) with
        {
            Cases = [new LoadCase("dead", [Checked.Uniform(0, 2, 2e6)]), new LoadCase("live", [Checked.Uniform(0, 1, 3e6)])],
            Combinations =
            [
                new Combination("both", CombinationBasis.Service, [1, 1]), new Combination("live", CombinationBasis.Service, [0, 1]),
            ],
        };

        SectionCheck alone = Checked.Problem(model).With(new DeflectionLimits { Cases = [new CaseDeflectionLimit(1, 360)] }).Find()[0];

        Assert.Equal(3 * 5.0 / 384, alone.Demand!.Value, 1e-12);
    }

    /// <summary>A gap of 5 mm below the middle: the beam sags freely by that much, and closes it, before the support carries.</summary>
    [Theory]
    [InlineData(0.005, 0.005)]
    [InlineData(0.1, 5 * 2000 * 256 / 384e6)]
    public void CaseAlone_ClosesTheGapsThatStandOpen(double gap, double middle)
    {
        BeamModel model = Checked.Model(
            [4],
            [Support.Pin(0), Support.Roller(2) with { Settlement = gap, Action = SupportAction.PushesOnly }, Support.Roller(4)],
            Checked.Uniform(0, 4, 2000));

        SectionCheck[] all =
            [.. Checked.Problem(model).With(new DeflectionLimits { Absolute = 1, Cases = [new CaseDeflectionLimit(0, 360)] }).Find()];

        // With the middle that far down, both bays bend alike under the case alone as under the combination of it.
        SectionCheck whole = all.Single(one => one.Kind == CheckKind.AbsoluteDeflection);
        Assert.Equal(middle, Answer.To(model).At(2).Left.Deflection, 1e-12);
        Assert.InRange(whole.Demand!.Value, middle - 1e-12, middle * 1.1);
        Assert.All(all.Where(one => one is { Case: 0, LastBay: null }), one => Assert.Equal(BelowChord(model), one.Demand!.Value, 1e-9));
    }

    /// <summary>
    /// Eleven bays, each hinged to the next, make 2048 patterns: too many to try one by one, so it is an estimate, though a
    /// simple span bends the same whatever stands on the others, 5·w·l⁴/384EI from its own chord.
    /// </summary>
    [Fact]
    public void PatternsTooManyToTry_LeaveAnEstimate()
    {
        BeamModel held = Checked.Model(
            [.. Enumerable.Repeat(1.0, 11)], [.. Enumerable.Range(0, 12).Select(i => Support.Spring(i, 1e8))], Checked.Uniform(0, 11, 1e6));
        BeamModel model = new(
            held.Spans,
            held.Supports.SetItem(0, held.Supports[0] with { Along = Restraint.Held }),
            [.. Enumerable.Range(1, 10).Select(i => (double)i)],
            held.Cases,
            held.Combinations);

        SectionCheck[] all = [.. Checked.Problem(model).WithPattern(0).With(Bay360).Find().Where(one => one.LastBay is null)];

        Assert.Equal(11, all.Length);
        Assert.All(all, one => Assert.Equal(EnvelopeCertainty.Estimate, one.Certainty));
        Assert.All(all, one => Assert.Equal(5.0 / 384, one.Demand!.Value, 1e-10));
    }

    /// <summary>
    /// Four bays on soft springs bend most under two bays side by side, which is neither every other bay nor all, one, or all
    /// but one: of sixteen patterns, each solved whole, none bends a bay more than what is found.
    /// </summary>
    [Fact]
    public void PatternsOnSprings_AreTriedOneAndAll()
    {
        BeamModel model = Checked.Model(
            [1, 1, 1, 1],
            [.. Enumerable.Range(0, 5).Select(i => Support.Spring(i, 1e6) with { Along = i == 0 ? Restraint.Held : Restraint.Free })]);

        SectionCheck[] all =
        [
            .. Checked.Problem(model with { Cases = [new LoadCase("live", [Checked.Uniform(0, 4, 1e6)])] }).WithPattern(0).With(Bay360).Find(),
        ];

        Assert.Equal([[0, 1], [1, 2]], all[..2].Select(one => one.Situation!.Patterns[0]!.Bays.ToArray()));
        for (int bay = 0; bay < 4; bay++)
        {
            double worst = Enumerable.Range(1, 15).Max(pattern => Bend(pattern, bay));
            Assert.InRange(all[bay].Demand!.Value, worst * (1 - 1e-9), worst * (1 + 1e-3));
        }

        double Bend(int pattern, int bay)
        {
            Load[] loads = [.. Enumerable.Range(0, 4).Where(i => (pattern & (1 << i)) != 0).Select(i => Checked.Uniform(i, i + 1, 1e6))];
            BeamResponse response = Answer.To(model with { Cases = [new LoadCase("live", [.. loads])] });
            (double left, double right) = (response.At(bay).Left.Deflection, response.At(bay + 1).Left.Deflection);
            return Enumerable.Range(0, 101).Max(i => Math.Abs(response.At(bay + i / 100.0).Left.Deflection - left - (right - left) * i / 100));
        }
    }

    /// <summary>Of two combinations one has no wheel on the beam: together they are still stepped, an estimate.</summary>
    [Fact]
    public void WheelInOneCombinationOnly_LeavesAnEstimate()
    {
        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 2000)) with
        {
            Supports = [Support.Spring(0, 1e5) with { Along = Restraint.Held }, Support.Spring(4, 1e5)],
            Cases = [new LoadCase("spread", [Checked.Uniform(0, 4, 2000)]), new LoadCase("wheel", [])],
            Combinations =
            [
                new Combination("spread", CombinationBasis.Service, [1, 0]), new Combination("wheel", CombinationBasis.Service, [0, 1]),
            ],
        };

        SectionCheck check = Checked.Problem(model).WithRolling(new RollingLoad("wheel", 1, [new Axle(0, 1000)], 0)).With(Bay360).Find()[0];

        Assert.Equal(EnvelopeCertainty.Estimate, check.Certainty);
        Assert.Equal(5 * 2000 * 256 / 384e6, check.Demand!.Value, 1e-12);
        Assert.Equal(0, check.Situation!.Combination);
    }

    /// <summary>
    /// Bays of 4 and 3 m and an overhang of 2 m whose materials keep 0.9, 1 and 0.8 of 10 GPa: a check names the moduli of what it
    /// speaks of, and only where they are less than the grade's.
    /// </summary>
    [Fact]
    public void ModuliInUse_AreThoseOfTheStretch()
    {
        BeamModel model = Checked.Model(
            [4, 3, 2], [Support.Pin(0), Support.Roller(4), Support.Roller(7)], Checked.Uniform(0, 9, 100));
        Member[] members = [Kept(0.9), Kept(1), Kept(0.8)];
        DeflectionLimits limits = new() { BayRatio = 360, OverhangRatio = 180, Absolute = 0.05 };

        SectionCheck[] all = [.. Checked.Problem(model, members).With(limits).Find()];

        Assert.Equal(
            [(CheckKind.Deflection, 0), (CheckKind.Deflection, 1), (CheckKind.OverhangDeflection, 2), (CheckKind.AbsoluteDeflection, null)],
            all.Select(one => (one.Kind, one.Bay)));
        Assert.Equal([[9e9], [], [8e9], [9e9, 8e9]], all.Select(Moduli));
        Assert.All(Checked.Problem(model.Factored(), members).With(limits).Find(), one => Assert.Empty(Moduli(one)));

        static Member Kept(double factor) => new(null, new Material { Modulus = 10e9, ModulusFactor = factor }, null);

        static double[] Moduli(SectionCheck check) =>
            [.. check.Terms.Where(term => term.Symbol == CheckSymbol.ModulusInUse).Select(term => term.Value)];
    }

    // The greatest of the first bay of 2 m from the straight line between its ends.
    private static double BelowChord(BeamModel model)
    {
        BeamResponse response = Answer.To(model);
        double end = response.At(2).Left.Deflection;
        return Enumerable.Range(0, 4001).Max(i => Math.Abs(response.At(i * 5e-4).Left.Deflection - end * i / 4000));
    }

    // At many places of a stretch, from the straight line between its ends.
    private static double FromChord(BeamModel model, Load load, double from, double to)
    {
        BeamModel loaded = model with { Cases = [model.Cases[0] with { Loads = [load] }, .. model.Cases[1..]] };
        BeamResponse response = Assert.IsType<BeamOutcome.Stands>(new BeamSolver().Solve(loaded)).Combinations[0].Response;
        double left = response.At(from).Right.Deflection;
        double right = response.At(to).Left.Deflection;
        return Enumerable.Range(0, 1001).Max(i => Math.Abs(
            response.At(from + (to - from) * i / 1000).Left.Deflection - left - (right - left) * i / 1000));
    }
}
