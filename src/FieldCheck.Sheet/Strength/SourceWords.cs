using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Strength;

/// <summary>Where a limit comes from: the cell of the sheet, or the clause of the rules.</summary>
/// <param name="beam">The beam.</param>
/// <param name="document">Its sheet.</param>
internal sealed class SourceWords(BuiltBeam beam, BeamDocument document)
{
    private const string AsGiven = ", as given";

    internal string Of(SectionCheck check) => (check.Clause, check.Kind) switch
    {
        (_, CheckKind.BendingAndAxial) => "sum of the shares of bending and axial force, common practice, no source"
            + (check.Clause == CheckClause.Given ? "" : $"; {ClauseWords.Of(check.Clause)}"),
        (_, CheckKind.Deflection or CheckKind.OverhangDeflection) when check.Case is int index => OfCase(check, index),
        (not CheckClause.Given, _) => ClauseWords.Of(check.Clause),
        (_, CheckKind.Deflection) => document.Limits?.Deflection + AsGiven,
        (_, CheckKind.OverhangDeflection) => document.Limits?.DeflectionOverhang + AsGiven,
        (_, CheckKind.FinalDeflection) => document.Limits?.DeflectionFinal + AsGiven,
        (_, CheckKind.FinalOverhangDeflection) => document.Limits?.DeflectionFinalOverhang + AsGiven,
        (_, CheckKind.AbsoluteDeflection) => document.Limits?.DeflectionAbsolute + AsGiven,
        (_, CheckKind.PadPressure) => $"allowable pressure{At(check, " under ")}{AsGiven}",
        (_, CheckKind.Bearing) => OfBearing(check),
        (_, CheckKind.Shear) => OfMaterial(check, "shear"),
        _ => OfMaterial(check, "bending"),
    };

    private string OfCase(SectionCheck check, int index)
    {
        string name = beam.Model.Cases[index].Name;
        string? ratio = document.Limits?.DeflectionCases.FirstOrDefault(figure => figure.Name == name)?.Text;
        string how = check.Clause == CheckClause.Given ? "" : $"; {ClauseWords.Of(check.Clause)}";
        return $"{ratio} under {TextSafety.ForTerminal(name)} alone{AsGiven}{how}";
    }

    /// <summary>What the beam bears on where no span is named; else what the material takes across.</summary>
    private string OfBearing(SectionCheck check) => check.Span is null
        ? $"allowable bearing{At(check, " at ")}{AsGiven}"
        : OfMaterial(check, "bearing");

    private string OfMaterial(SectionCheck check, string stress)
    {
        string side = check.Basis == CombinationBasis.Service ? "allowable" : "design";
        string? name = check.Span is int span ? beam.Sticks[span].MaterialName : null;
        return $"{side} {stress} stress{(name is null ? "" : $" of {TextSafety.ForTerminal(name)}")}{AsGiven}";
    }

    private string At(SectionCheck check, string joins) =>
        check.Support is int support ? joins + beam.Supports[support].Label : "";
}
