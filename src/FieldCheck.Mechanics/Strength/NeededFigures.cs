using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>What a section of the same kind would need for the checks of one beam to hold.</summary>
/// <param name="SectionModulus">
/// Section modulus of the kind that bending is judged by, elastic or plastic [m³]; null: bending is not judged.
/// </param>
/// <param name="IsPlastic">True: that is the plastic one.</param>
/// <param name="Inertia">Second moment of area [m⁴]; null: no deflection is judged.</param>
/// <param name="IsInertiaExact">
/// True: reactions and deflections do not hang on how much stiffer the beam becomes; false: a support gives way or
/// settles, or spans differ, and the inertia is an estimate.
/// </param>
public sealed record NeededFigures(double? SectionModulus, bool IsPlastic, double? Inertia, bool IsInertiaExact)
{
    /// <summary>The figures needed, from the checks of a beam.</summary>
    /// <param name="problem">The beam with all that it is held against.</param>
    /// <param name="checks">Its checks.</param>
    public static NeededFigures Of(StrengthProblem problem, ImmutableArray<SectionCheck> checks)
    {
        ArgumentNullException.ThrowIfNull(problem);
        SectionCheck[] judged = [.. checks.Where(check => check.Reason is null && check.Utilisation is not null)];
        (double Modulus, bool IsPlastic)? bending = judged
            .Where(check => check.Kind == CheckKind.Bending)
            .Select(check => ModulusOf(problem, check))
            .OfType<(double Modulus, bool IsPlastic)>()
            .Cast<(double Modulus, bool IsPlastic)?>()
            .MaxBy(one => one!.Value.Modulus);
        SectionCheck? sag = judged.Where(IsDeflection).MaxBy(check => check.Utilisation);
        double? inertia = sag is null ? null : problem.Members.Max(member => member.Section?.Inertia) * sag.Utilisation;
        return new NeededFigures(bending?.Modulus, bending?.IsPlastic ?? false, inertia, IsExact(problem.Beam.Model));
    }

    private static (double Modulus, bool IsPlastic)? ModulusOf(StrengthProblem problem, SectionCheck check)
    {
        Section? section = problem.Members[check.Span ?? 0].Section;
        bool isPlastic = check.Unit == CheckUnit.Moment && check.Terms.Any(term => term.Symbol == CheckSymbol.PlasticModulus);
        return (isPlastic ? section?.PlasticModulus : section?.SectionModulus) * check.Utilisation is double needed
            ? (needed, isPlastic)
            : null;
    }

    private static bool IsDeflection(SectionCheck check) => check.Unit == CheckUnit.Length;

    private static bool IsExact(BeamModel model) =>
        model.Spans.All(span => span.FlexuralRigidity == model.Spans[0].FlexuralRigidity && span.ShearRigidity is null)
        && model.Supports.All(support => support is { Settlement: 0, ImposedRotation: 0 }
            && support.Across is not Restraint.Spring
            && support.Rotation is not Restraint.Spring);
}
