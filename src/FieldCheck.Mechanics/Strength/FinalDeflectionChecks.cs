using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Final deflections against their limits, where a material creeps.</summary>
internal sealed class FinalDeflectionChecks(
    StrengthProblem problem, DeflectionLimits limits, BeamDemands beam)
{
    private readonly Dictionary<double, FinalDeflection> _found = [];

    internal IEnumerable<SectionCheck> Find() =>
    [
        .. Of(isOverhang: false, CheckKind.FinalDeflection, limits.FinalBayRatio, limits.BayRatio),
        .. Of(isOverhang: true, CheckKind.FinalOverhangDeflection, limits.FinalOverhangRatio, limits.OverhangRatio),
    ];

    /// <summary>
    /// A limit on the final deflection is judged everywhere; that on the deflection at once counts for the final one where
    /// something creeps.
    /// </summary>
    private IEnumerable<SectionCheck> Of(bool isOverhang, CheckKind kind, double? final, double? atOnce)
    {
        if ((final ?? atOnce) is not double ratio)
        {
            return [];
        }

        DeflectionStretch[] own = [.. beam.Of(CombinationBasis.Service).Stretches.Where(one => one.IsOverhang == isOverhang)];
        return own.Length == 0
            ? final is null ? [] : [DeflectionChecks.Nowhere(kind)]
            : own.SelectMany(stretch => Judge(DeflectionChecks.Blank(kind, stretch, ratio), stretch, final is not null));
    }

    private IEnumerable<SectionCheck> Judge(SectionCheck check, DeflectionStretch stretch, bool isAskedFor)
    {
        double?[] creeps = [.. CreepsOn(stretch)];
        double? greatest = creeps.Max();
        if (!isAskedFor && greatest is not > 0)
        {
            return [];
        }

        if (DeflectionChecks.ObstacleTo(beam.Of(CombinationBasis.Service)) is NotJudgedReason obstacle)
        {
            return [check with { Reason = obstacle }];
        }

        if (greatest is not double creep)
        {
            return [check with { Reason = NotJudgedReason.NoModulus }];
        }

        if (!_found.TryGetValue(creep, out FinalDeflection? final))
        {
            final = new FinalDeflection(beam, limits.Lasting, creep);
            _found.Add(creep, final);
        }

        if (final.Of(stretch) is not (Demand demand, ImmutableArray<CheckTerm> parts))
        {
            return [check with { Reason = NotJudgedReason.NoAnswer }];
        }

        bool isOneCreep = creeps.All(one => one == creep);
        return
        [
            (demand with { IsBound = demand.IsBound || !isOneCreep }).Judge(check, check.Limit!.Value) with
            {
                Terms = [.. check.Terms, .. parts],
            },
        ];
    }

    private IEnumerable<double?> CreepsOn(DeflectionStretch stretch)
    {
        ImmutableArray<double> joints = beam.Problem.Model.JointPositions;
        return Enumerable.Range(0, problem.Members.Length)
            .Where(span => joints[span] < stretch.To && joints[span + 1] > stretch.From)
            .Select(span => problem.Members[span].Material?.Creep);
    }
}
