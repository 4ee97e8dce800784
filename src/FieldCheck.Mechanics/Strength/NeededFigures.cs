using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Strength;

/// <summary>What a section of the same kind would need for the checks of one beam to hold.</summary>
/// <param name="Modulus">
/// Section modulus of the kind that bending, alone or with a force along, is judged by; null: neither is judged.
/// </param>
/// <param name="Inertia">Second moment of area [m⁴]; null: no deflection is judged.</param>
/// <param name="IsInertiaExact">
/// True: reactions and deflections do not hang on how much stiffer the beam becomes; false: a support gives way or
/// settles, or spans differ, and the inertia is an estimate.
/// </param>
public sealed record NeededFigures(ModulusNeed? Modulus, double? Inertia, bool IsInertiaExact)
{
    /// <summary>What lateral stability comes to, which no modulus alone tells; null: it is not asked for.</summary>
    public CheckVerdict? Lateral { get; init; }

    /// <summary>The check that the modulus is of; null: of all that bends, which is one section throughout and judged throughout.</summary>
    public SectionCheck? ModulusOf { get; init; }

    /// <summary>The check that the inertia is of; null: of all deflections, which are all judged.</summary>
    public SectionCheck? InertiaOf { get; init; }

    /// <summary>The figures needed, from the checks of a beam.</summary>
    /// <param name="problem">The beam with all that it is held against.</param>
    /// <param name="checks">Its checks.</param>
    /// <param name="solver">The solver to work with.</param>
    public static NeededFigures Of(StrengthProblem problem, ImmutableArray<SectionCheck> checks, BeamSolver solver)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(solver);
        SectionCheck[] judged = [.. checks.Where(check => check.Reason is null && check.Utilisation is not null)];
        Lazy<BeamDemands> demands = new(() => new BeamDemands(problem.Beam, EnvelopeSearch.Find(problem.Beam, solver), solver));
        (SectionCheck Of, ModulusNeed Need)? most = judged
            .Where(IsBending)
            .Select(check => (Of: check, Need: check.Kind == CheckKind.Bending
                ? NeededModulus.OfBending(problem, check)
                : NeededModulus.OfSum(problem, check, demands.Value)))
            .Where(one => one.Need is not null)
            .Select(one => ((SectionCheck Of, ModulusNeed Need)?)(one.Of, one.Need!))
            .MaxBy(one => one!.Value.Need.Modulus);
        SectionCheck? sag = judged.Where(IsDeflection).MaxBy(check => check.Utilisation);
        double? inertia = sag is null ? null : problem.Members.Max(member => member.Section?.Inertia) * sag.Utilisation;
        bool isOneStick = problem.Members.Select(member => (member.Section, member.Material)).Distinct().Count() == 1;
        bool IsOpen(Func<SectionCheck, bool> isOf) => checks.Any(check => isOf(check) && check.Verdict == CheckVerdict.NotJudged);
        return new NeededFigures(most?.Need, inertia, IsExact(problem.Beam.Model))
        {
            Lateral = LateralOf(checks),
            ModulusOf = isOneStick && !IsOpen(IsBending) ? null : most?.Of,
            InertiaOf = IsOpen(IsDeflection) ? sag : null,
        };
    }

    private static CheckVerdict? LateralOf(ImmutableArray<SectionCheck> checks)
    {
        CheckVerdict[] verdicts =
            [.. checks.Where(check => check.Kind == CheckKind.LateralStability).Select(check => check.Verdict)];
        return verdicts.Length == 0 ? null
            : verdicts.Contains(CheckVerdict.Over) ? CheckVerdict.Over
            : verdicts.Contains(CheckVerdict.NotJudged) ? CheckVerdict.NotJudged
            : CheckVerdict.Ok;
    }

    private static bool IsBending(SectionCheck check) => check.Kind is CheckKind.Bending or CheckKind.BendingAndAxial;

    private static bool IsDeflection(SectionCheck check) => check.Unit == CheckUnit.Length;

    private static bool IsExact(BeamModel model) =>
        model.Spans.All(span => span.FlexuralRigidity == model.Spans[0].FlexuralRigidity && span.ShearRigidity is null)
        && model.Supports.All(support => support is { Settlement: 0, ImposedRotation: 0 }
            && support.Across is not Restraint.Spring
            && support.Rotation is not Restraint.Spring);
}
