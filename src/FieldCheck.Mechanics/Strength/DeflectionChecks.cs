using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Deflections of bays and overhangs against their limits, under service combinations and under cases alone.</summary>
internal sealed class DeflectionChecks(StrengthProblem problem, DeflectionLimits limits, BeamDemands beam)
{
    private readonly BasisDemands _service = beam.Of(CombinationBasis.Service);
    private readonly Lazy<Superposition?> _sum = new(() => Superposition.Of(beam.Problem, beam.Solver));

    internal IEnumerable<SectionCheck> Find() => All().Select(WithModuli);

    private IEnumerable<SectionCheck> All() =>
    [
        .. AtOnce(isOverhang: false, CheckKind.Deflection, limits.BayRatio),
        .. AtOnce(isOverhang: true, CheckKind.OverhangDeflection, limits.OverhangRatio),
        .. limits.Absolute is double absolute ? [Anywhere(absolute)] : Array.Empty<SectionCheck>(),
        .. limits.Cases.SelectMany(UnderCase),
        .. new FinalDeflectionChecks(problem, limits, beam).Find(),
    ];

    /// <summary>The moduli of what a check speaks of, where they are not those of the grade.</summary>
    private SectionCheck WithModuli(SectionCheck check)
    {
        DeflectionStretch[] own =
        [
            .. DeflectionStretch.Of(beam.Bays)
                .Where(one => check.Bay is null || (one.Index >= check.Bay && one.Index <= (check.LastBay ?? check.Bay))),
        ];
        ImmutableArray<double> joints = problem.Beam.Model.JointPositions;
        IEnumerable<double> moduli =
            from span in Enumerable.Range(0, problem.Members.Length)
            where own.Any(one => joints[span] < one.To && joints[span + 1] > one.From)
            let material = problem.Members[span].Material
            where material is { ModulusFactor: not 1, ModulusInUse: not null }
            select material.ModulusInUse!.Value;
        return check.Demand is null ? check : check with
        {
            Terms = [.. check.Terms, .. moduli.Distinct().Select(one => new CheckTerm(CheckSymbol.ModulusInUse, one, CheckUnit.Stress))],
        };
    }

    /// <summary>A check of one stretch against a ratio, without a demand.</summary>
    internal static SectionCheck Blank(CheckKind kind, DeflectionStretch stretch, double ratio, double share = 1) => new()
    {
        Kind = kind,
        Basis = CombinationBasis.Service,
        Clause = share == 1 ? CheckClause.Given : CheckClause.OverhangAsTwiceItsLength,
        Bay = stretch.Index,
        LastBay = stretch.Last == stretch.Index ? null : stretch.Last,
        Unit = CheckUnit.Length,
        Limit = share * stretch.Length / ratio,
        LimitBy = share == 1 ? CheckFormula.LengthOverRatio : CheckFormula.TwiceLengthOverRatio,
        Terms =
        [
            new CheckTerm(CheckSymbol.BayLength, stretch.Length, CheckUnit.Length),
            new CheckTerm(CheckSymbol.Ratio, ratio, CheckUnit.Number),
        ],
    };

    /// <summary>A limit that has no stretch to speak of.</summary>
    internal static SectionCheck Nowhere(CheckKind kind) => new()
    {
        Kind = kind,
        Basis = CombinationBasis.Service,
        Clause = CheckClause.Given,
        Unit = CheckUnit.Length,
        Reason = NotJudgedReason.NothingToJudge,
    };

    /// <summary>Why no deflection of a basis can be told; null: it can.</summary>
    internal static NotJudgedReason? ObstacleTo(BasisDemands demands) =>
        demands.Problem.Model.HasAbsoluteStiffness ? demands.Obstacle : NotJudgedReason.NoStiffness;

    private IEnumerable<SectionCheck> AtOnce(bool isOverhang, CheckKind kind, double? ratio)
    {
        if (ratio is not double given)
        {
            return [];
        }

        DeflectionStretch[] own = [.. _service.Stretches.Where(one => one.IsOverhang == isOverhang)];
        return own.Length == 0 ? [Nowhere(kind)] : own.Select(one => Judge(Blank(kind, one, given), one, _service));
    }

    private static SectionCheck Judge(SectionCheck check, DeflectionStretch stretch, BasisDemands demands) =>
        ObstacleTo(demands) is NotJudgedReason obstacle
            ? check with { Reason = obstacle }
            : StretchDemand.Of(stretch, demands).Judge(check, check.Limit!.Value);

    private SectionCheck Anywhere(double limit)
    {
        SectionCheck check = Nowhere(CheckKind.AbsoluteDeflection) with { Limit = limit, Reason = ObstacleTo(_service) };
        if (check.Reason is not null)
        {
            return check;
        }

        GovernedExtremes both = _service.Envelope.ExtremesOf(Curve.Deflection);
        Demand demand = Demand.Greater(Demand.Of(both.Max, 1), Demand.Of(both.Min, -1));
        return (demand with { Certainty = _service.Envelope.CertaintyOf(Curve.Deflection) }).Judge(check, limit);
    }

    /// <summary>
    /// One case with the factor 1, without movements imposed on the beam (but for gaps that it must close, where a support may
    /// let go), its patterns and rolling loads as in any combination.
    /// </summary>
    private IEnumerable<SectionCheck> UnderCase(CaseDeflectionLimit limit)
    {
        BasisDemands demands = beam.Of(CombinationBasis.Service, Alone(limit.Case));
        foreach (DeflectionStretch stretch in demands.Stretches)
        {
            SectionCheck check = stretch.IsOverhang
                ? Blank(CheckKind.OverhangDeflection, stretch, limit.Ratio, share: 2)
                : Blank(CheckKind.Deflection, stretch, limit.Ratio);
            yield return Judge(check, stretch, demands) with { Case = limit.Case, Situation = null };
        }
    }

    private EnvelopeProblem Alone(int loadCase)
    {
        BeamModel model = beam.Problem.Model;
        BeamModel still = StaysDownUnder(loadCase) ? BeamDemands.HeldDown(model) : BeamDemands.Still(model);
        BeamModel alone = still with
        {
            Combinations =
            [
                new Combination(
                    model.Cases[loadCase].Name,
                    CombinationBasis.Service,
                    [.. Enumerable.Range(0, model.Cases.Length).Select(i => i == loadCase ? 1.0 : 0)]),
            ],
        };
        return new EnvelopeProblem(alone, beam.Problem.PatternCases, beam.Problem.Rolling);
    }

    /// <summary>Whether other loads keep the beam on all its supports wherever a case counts: what the case adds, adds up.</summary>
    private bool StaysDownUnder(int loadCase)
    {
        if (beam.Problem.Model.Supports.All(one => one.Action == SupportAction.Both))
        {
            return true;
        }

        ImmutableArray<Combination> combinations = beam.Problem.Model.Combinations;
        int[] own =
        [
            .. Enumerable.Range(0, combinations.Length)
                .Where(i => combinations[i].Basis == CombinationBasis.Service && combinations[i].Factors[loadCase] != 0),
        ];
        return own.Length > 0 && _sum.Value is Superposition sum && !own.Any(i => LiftOff.IsPossible(sum, i));
    }
}
