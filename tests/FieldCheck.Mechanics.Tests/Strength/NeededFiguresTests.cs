using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>
/// What a section would need: M/σ from w·l²/8, the second moment of area from 5·w·l⁴/384EI (statics). The plank is
/// 50 × 200 mm, S = 333,333 mm³.
/// </summary>
public sealed class NeededFiguresTests
{
    private static readonly Strengths Ten = new(10e6, null, null);

    /// <summary>2 kN/m on 4 m: M = 4 kN·m.</summary>
    private static readonly BeamModel Span = Checked.Simple(4, Checked.Uniform(0, 4, 2000));

    [Fact]
    public void Bending_NeedsTheMomentOverTheStress()
    {
        NeededFigures needed = Of(Checked.Problem(Span, Checked.Stick(Ten)));

        Assert.Equal(new ModulusNeed(CheckKind.Bending, 4000 / 10e6, false), Rounded(needed.Modulus));
        Assert.Null(needed.Inertia);
        Assert.Null(needed.ModulusOf);
        Assert.Null(needed.Lateral);
        Assert.True(needed.IsInertiaExact);
    }

    /// <summary>Two simple spans under 2 kN/m, joined by a hinge: 4 m need 4 kN·m, 6 m need 9 kN·m.</summary>
    [Fact]
    public void OfSeveralMembers_TheOneThatNeedsMostCounts()
    {
        BeamModel model = Hinged(4, 6);
        Section wide = Section.Of(new SectionShape.Rectangle(0.1, 0.2));

        Assert.Equal(9000 / 10e6, Of(Checked.Problem(model, Checked.Stick(Ten), Checked.Stick(Ten, section: wide))).Modulus!.Modulus, 1e-15);
        Assert.Equal(1, Of(Checked.Problem(model, Checked.Stick(Ten), Checked.Stick(Ten, section: wide))).ModulusOf!.Span);
        Assert.Equal(9000 / 10e6, Of(Checked.Problem(Hinged(6, 4), Checked.Stick(Ten), Checked.Stick(Ten, section: wide))).Modulus!.Modulus, 1e-15);
    }

    /// <summary>
    /// I = 5·w·l³·360/384E from 5·w·l⁴/384EI = l/360, with E = EI/I of what stands; a limit that asks for less does not count.
    /// </summary>
    [Fact]
    public void Inertia_IsThatOfTheSagThatIsUsedUpMost()
    {
        double modulus = 1e6 / Checked.Plank.Inertia!.Value;
        StrengthProblem problem = Checked.Problem(Span, Checked.Stick(Ten)).With(new DeflectionLimits { BayRatio = 360, Absolute = 1 });

        NeededFigures needed = Of(problem);

        Assert.Equal(5 * 2000 * 64 * 360 / (384 * modulus), needed.Inertia!.Value, 1e-15);
        Assert.Equal(4000 / 10e6, needed.Modulus!.Modulus, 1e-15);
    }

    [Fact]
    public void InertiaOfUnlikeSpans_StartsFromTheStiffest()
    {
        Section deep = Section.Of(new SectionShape.Rectangle(0.05, 0.3));
        StrengthProblem problem = Checked.Problem(Hinged(4, 4), Checked.Stick(section: deep), Checked.Stick())
            .With(new DeflectionLimits { BayRatio = 360 });

        // Each bay sags 5·2000·4⁴/384e6 = 6.667 mm of 11.111 mm: 0.6 times 50·300³/12.
        Assert.Equal(0.6 * 0.05 * 0.027 / 12, Of(problem).Inertia!.Value, 1e-15);
    }

    [Fact]
    public void CheckThatIsNotJudged_AsksForNothing()
    {
        StrengthProblem problem = Checked.Problem(Span, Checked.Stick(Ten)).With(new DeflectionLimits { BayRatio = 360 });
        ImmutableArray<SectionCheck> open = [.. problem.Find().Select(one => one with { Reason = NotJudgedReason.NoFactor })];

        Assert.Equal(new NeededFigures(null, null, true), NeededFigures.Of(problem, open, new BeamSolver()));
    }

    public static TheoryData<CheckVerdict[], CheckVerdict?> Verdicts() => new()
    {
        { [], null },
        { [CheckVerdict.Ok, CheckVerdict.Ok], CheckVerdict.Ok },
        { [CheckVerdict.Ok, CheckVerdict.NotJudged], CheckVerdict.NotJudged },
        { [CheckVerdict.NotJudged, CheckVerdict.Over, CheckVerdict.Ok], CheckVerdict.Over },
    };

    /// <summary>Beside them stands a check of shear that is over: it says nothing of lateral stability.</summary>
    [Theory]
    [MemberData(nameof(Verdicts))]
    public void LateralStability_ComesToTheWorstOfItsChecks(CheckVerdict[] each, CheckVerdict? all)
    {
        SectionCheck over = Check(CheckKind.Shear, CheckUnit.Stress, 3, 2);
        ImmutableArray<SectionCheck> checks =
        [
            over,
            .. each.Select(verdict => over with
            {
                Kind = CheckKind.LateralStability,
                Demand = verdict == CheckVerdict.Ok ? 1 : 3,
                Reason = verdict == CheckVerdict.NotJudged ? NotJudgedReason.NoLateralSupport : null,
            }),
        ];

        Assert.Equal(all, NeededFigures.Of(Checked.Problem(Span), checks, new BeamSolver()).Lateral);
    }

    public static TheoryData<string, bool> Beams() => new()
    {
        { "alike", true },
        { "unlike spans", false },
        { "sheared span", false },
        { "settled", false },
        { "turned", false },
        { "spring", false },
        { "turning spring", false },
    };

    /// <summary>Only then does every deflection go down as the inertia goes up.</summary>
    [Theory]
    [MemberData(nameof(Beams))]
    public void Inertia_IsExactWhereTheBeamIsAlikeAndItsSupportsStay(string name, bool isExact)
    {
        BeamModel alike = Checked.Model([2, 2], [Support.Pin(0), Support.Roller(2), Support.Roller(4)], Checked.Uniform(0, 4, 2000));
        BeamModel model = name switch
        {
            "unlike spans" => Spans(alike, new Span(2, 2e6, 1e8)),
            "sheared span" => Spans(alike, new Span(2, 1e6, 1e8, 1e7)),
            "settled" => Middle(alike, Support.Roller(2) with { Settlement = 0.001 }),
            "turned" => Middle(alike, new Support(2, Restraint.Free, Restraint.Held, Restraint.Held) with { ImposedRotation = 0.001 }),
            "spring" => Middle(alike, Support.Spring(2, 1e6)),
            "turning spring" => Middle(alike, new Support(2, Restraint.Free, Restraint.Held, new Restraint.Spring(1e5))),
            _ => alike,
        };

        Assert.Equal(isExact, Of(Checked.Problem(model, Checked.Stick(Ten))).IsInertiaExact);
    }

    [Fact]
    public void NothingGiven_IsAnError()
    {
        StrengthProblem problem = Checked.Problem(Span);

        Assert.Throws<ArgumentNullException>("problem", () => NeededFigures.Of(null!, [], new BeamSolver()));
        Assert.Throws<ArgumentNullException>("solver", () => NeededFigures.Of(problem, [], null!));
    }

    internal static SectionCheck Check(CheckKind kind, CheckUnit unit, double demand, double limit, params ImmutableArray<CheckTerm> terms) =>
        new()
        {
            Kind = kind,
            Basis = CombinationBasis.Service,
            Clause = CheckClause.Given,
            Unit = unit,
            Demand = demand,
            Limit = limit,
            Terms = terms,
        };

    internal static NeededFigures Of(StrengthProblem problem) => NeededFigures.Of(problem, problem.Find(), new BeamSolver());

    /// <summary>Two simple spans under 2 kN/m, a hinge over the support where they meet.</summary>
    internal static BeamModel Hinged(double left, double right)
    {
        BeamModel model = Checked.Model(
            [left, right], [Support.Pin(0), Support.Roller(left), Support.Roller(left + right)], Checked.Uniform(0, left + right, 2000));
        return new BeamModel(model.Spans, model.Supports, [left], model.Cases, model.Combinations);
    }

    private static ModulusNeed? Rounded(ModulusNeed? need) => need is null ? null : need with { Modulus = Math.Round(need.Modulus, 15) };

    private static BeamModel Spans(BeamModel model, Span second) =>
        new(model.Spans.SetItem(1, second), model.Supports, model.Hinges, model.Cases, model.Combinations);

    private static BeamModel Middle(BeamModel model, Support support) => model with { Supports = model.Supports.SetItem(1, support) };
}
