using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of factors on strengths that change no figure.</summary>
internal static class FactorFindings
{
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
