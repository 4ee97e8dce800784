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
        .. Of(isOverhang: false, CheckKind.FinalDeflection, limits.FinalBayRatio),
        .. Of(isOverhang: true, CheckKind.FinalOverhangDeflection, limits.FinalOverhangRatio),
    ];

    /// <summary>Only by a limit of its own: that on the deflection at once says nothing of what comes in time.</summary>
    private IEnumerable<SectionCheck> Of(bool isOverhang, CheckKind kind, double? final)
    {
        if (final is not double ratio)
        {
            return [];
        }

        DeflectionStretch[] own = [.. beam.Of(CombinationBasis.Service).Stretches.Where(one => one.IsOverhang == isOverhang)];
        return own.Length == 0
            ? [DeflectionChecks.Nowhere(kind)]
            : own.Select(stretch => Judge(DeflectionChecks.Blank(kind, stretch, ratio), stretch));
    }

    private SectionCheck Judge(SectionCheck check, DeflectionStretch stretch)
    {
        double?[] creeps = [.. CreepsOn(stretch)];
        if (DeflectionChecks.ObstacleTo(beam.Of(CombinationBasis.Service)) is NotJudgedReason obstacle)
        {
            return check with { Reason = obstacle };
        }

        if (creeps.Max() is not double creep)
        {
            return check with { Reason = NotJudgedReason.NoModulus };
        }

        if (!_found.TryGetValue(creep, out FinalDeflection? final))
        {
            final = new FinalDeflection(beam, limits.Lasting, creep);
            _found.Add(creep, final);
        }

        if (final.Of(stretch) is not (Demand demand, ImmutableArray<CheckTerm> parts))
        {
            return check with { Reason = NotJudgedReason.NoAnswer };
        }

        bool isOneCreep = creeps.All(one => one == creep);
        return (demand with { IsBound = demand.IsBound || !isOneCreep }).Judge(check, check.Limit!.Value) with
        {
            Terms = [.. check.Terms, .. parts],
            DemandBy = parts.Any(part => part.Symbol == CheckSymbol.CreepDeflection) ? CheckFormula.DeflectionInTime : null,
        };
    }

    private IEnumerable<double?> CreepsOn(DeflectionStretch stretch)
    {
        ImmutableArray<double> joints = beam.Problem.Model.JointPositions;
        return Enumerable.Range(0, problem.Members.Length)
            .Where(span => joints[span] < stretch.To && joints[span + 1] > stretch.From)
            .Select(span => problem.Members[span].Material?.Creep);
    }
}
