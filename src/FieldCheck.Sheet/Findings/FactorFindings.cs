using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of factors on strengths of timber: that they change no figure, or more than their rules let them.</summary>
internal static class FactorFindings
{
    /// <summary>Pieces thicker than this are no dimension lumber, 4 in and what wood swells by [m].</summary>
    private const double ThickestLumber = 0.1026;

    /// <summary>One caution for each material whose factors go beyond the tables of the rules, or that its sticks may not have.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="document">The beam as typed.</param>
    internal static IEnumerable<Message> Beyond(BuiltBeam beam, BeamDocument document)
    {
        ImmutableArray<FactorKind> taken = FactorNames.TakenBy(StrengthRows.Rules(document.Limits?.Rules));
        foreach (IGrouping<string?, Stick> sticks in beam.Sticks.Distinct().GroupBy(stick => stick.MaterialName))
        {
            string[] told =
            [
                .. sticks.First().Material?.Factors.Where(factor => taken.Contains(factor.Kind))
                    .Select(factor => Doubt(factor, sticks)).OfType<string>() ?? [],
            ];
            if (told.Length > 0)
            {
                yield return new Message(
                    Severity.Caution,
                    MessageCodes.FactorBeyondTable,
                    $"Factors of {TextSafety.ForTerminal(sticks.Key!)} that let more than the rules do: {string.Join("; ", told)}. "
                        + "Each is taken as given.");
            }
        }
    }

    private static string? Doubt(StrengthFactor factor, IEnumerable<Stick> sticks)
    {
        string symbol = FactorWords.Of(factor.Kind).Symbol;
        bool isGlulam = sticks.First().Material!.Timber?.IsGlulam == true;
        return FactorBounds.Of(factor.Kind, isGlulam) is { } bounds && bounds.IsBeyond(factor.Value)
                ? $"{symbol} {Number(factor.Value)}, and {bounds.Source} has {Number(bounds.Limit)} at {(bounds.IsLeast ? "least" : "most")}"
            : !(factor.Value > 1) ? null
            : factor.Kind == FactorKind.Repetitive && sticks.Any(IsThick)
                ? $"{symbol} {Number(factor.Value)}, and NDS 4.3.9 has it for pieces 2 to 4 in thick"
            : factor.Kind == FactorKind.FlatUse && sticks.Any(IsOnEdge)
                ? $"{symbol} {Number(factor.Value)}, and NDS 4.3.7 has it for loads on the wide face"
            : null;
    }

    private static bool IsThick(Stick stick) => PieceSizes.PieceOf(stick.Section)?.Thickness > ThickestLumber;

    private static bool IsOnEdge(Stick stick) => stick.Section switch
    {
        { Shape: SectionShape.Rectangle piece, IsFlat: bool isFlat } => isFlat ? piece.Width > piece.Depth : piece.Width < piece.Depth,
        _ => false,
    };

    private static string Number(double value) => value.ToString("0.0##", CultureInfo.InvariantCulture);

    /// <summary>One note for each material with factors that the rules chosen do not take.</summary>
    /// <param name="document">The beam as typed.</param>
    internal static IEnumerable<Message> NotTaken(BeamDocument document)
    {
        string? rules = document.Limits?.Rules;
        ImmutableArray<FactorKind> taken = FactorNames.TakenBy(StrengthRows.Rules(rules));
        foreach (MaterialEntry material in document.Materials)
        {
            string[] left =
            [
                .. material.Factors
                    .Where(figure => FactorNames.Find(figure.Name) is FactorKind kind && !taken.Contains(kind))
                    .Select(figure => TextSafety.ForTerminal(figure.Name)),
            ];
            if (left.Length > 0)
            {
                string who = rules is null ? "no rules are chosen" : $"{rules} takes none of these";
                yield return new Message(
                    Severity.Note,
                    MessageCodes.FactorNotTaken,
                    $"Factors of {TextSafety.ForTerminal(material.Name)} that change no figure: "
                        + $"{string.Join(", ", left)} ({who}).");
            }
        }
    }
}
