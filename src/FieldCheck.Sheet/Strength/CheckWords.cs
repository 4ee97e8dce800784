using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Findings;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Strength;

/// <summary>The checks of one beam in words. Names are those of the sheet, harmless to a terminal.</summary>
/// <param name="beam">The beam.</param>
/// <param name="document">Its sheet.</param>
internal sealed class CheckWords(BuiltBeam beam, BeamDocument document)
{
    private readonly Bays _bays = Bays.Of(beam.Model);
    private readonly ReasonWords _reasons = new(beam, document);
    private readonly SourceWords _sources = new(beam, document);

    internal BeamCheck Of(SectionCheck check) => new(
        check, What(check), Where(check), Governs(check), _sources.Of(check), _reasons.Of(check))
    {
        FactorsGiven = Factors(check),
    };

    private string What(SectionCheck check)
    {
        string alone = check.Case is int index ? $" under {CaseName(index)} alone" : "";
        return check.Kind switch
        {
            CheckKind.Bending => $"bending{OfSpan(check)}",
            CheckKind.Shear => $"shear{OfSpan(check)}",
            CheckKind.BendingAndAxial => $"bending and axial force{OfSpan(check)}",
            CheckKind.LateralStability => $"lateral stability{OfSpan(check)}",
            CheckKind.Bearing when check.Span is null => $"what carries{At(check, " ")}",
            CheckKind.Bearing => $"bearing{OfSpanAt(check)}{At(check, " at ")}",
            CheckKind.PadPressure => $"pressure{At(check, " under ")}",
            CheckKind.WebYielding or CheckKind.WebCrippling => $"web{OfSpanAt(check)}{At(check, " over ")}",
            CheckKind.Deflection => $"deflection{OfBay(check)}{alone}",
            CheckKind.OverhangDeflection => $"deflection{OfOverhang(check)}{alone}",
            CheckKind.FinalDeflection => $"final deflection{OfBay(check)}",
            CheckKind.FinalOverhangDeflection => $"final deflection{OfOverhang(check)}",
            CheckKind.AbsoluteDeflection => "deflection anywhere",
            _ => throw new ArgumentOutOfRangeException(nameof(check), check.Kind, "No words for it."),
        };
    }

    private string Where(SectionCheck check) =>
        check.Position is double place ? $"x = {beam.Display.Say(place, QuantityKind.Length)}" : "";

    private string Governs(SectionCheck check) =>
        check.Case is int index ? $"{CaseName(index)} alone"
        : check.Situation is Situation situation ? SituationWords.Of(beam, situation)
        : "";

    private string OfSpan(SectionCheck check) =>
        check.Span is int span && beam.Model.Spans.Length > 1 ? $" of span {span + 1}" : "";

    /// <summary>The span where two of them bear on one support.</summary>
    private string OfSpanAt(SectionCheck check) =>
        check.Support is int support && beam.Supports[support].Joint is int joint
            && joint > 0 && joint < beam.Model.Spans.Length
                ? OfSpan(check)
                : "";

    private string OfBay(SectionCheck check) =>
        check.Bay is not int bay ? " of each bay"
        : check.LastBay is int last ? $" of bays {bay + 1} to {last + 1} as one{Past(bay + 1, last)}"
        : _bays.Between.Length > 1 ? $" of bay {bay + 1}"
        : " of the bay";

    private string OfOverhang(SectionCheck check) =>
        check is { Bay: int first, LastBay: int last }
            ? first < 0
                ? $" of the left end to bay {last + 1} as one{Past(0, last)}"
                : $" of bay {first + 1} to the right end as one{Past(first + 1, last)}"
        : check.Bay is not int bay || _bays.LeftOverhang is null || _bays.RightOverhang is null ? " of the overhang"
        : bay < 0 ? " of the left overhang"
        : " of the right overhang";

    /// <summary>The supports between bays that are looked at as one, of those that hold across.</summary>
    private string Past(int first, int last)
    {
        string[] held = [.. beam.Supports.Where(one => one.Support.Across is not Restraint.None).Select(one => one.Label)];
        return $", past {string.Join(", ", held[first..(last + 1)])}";
    }

    private string At(SectionCheck check, string joins) =>
        check.Support is int support ? joins + beam.Supports[support].Label : "";

    private string CaseName(int index) => TextSafety.ForTerminal(beam.Model.Cases[index].Name);

    /// <summary>The factors that the sheet gives the material, by which others are told from those looked up.</summary>
    private ImmutableArray<FactorKind> Factors(SectionCheck check) =>
        check.Span is int span && beam.Sticks[span].Material is Material material
            ? [.. material.Factors.Select(factor => factor.Kind)]
            : [.. beam.Sticks.SelectMany(stick => stick.Material?.Factors ?? []).Select(factor => factor.Kind).Distinct()];
}
