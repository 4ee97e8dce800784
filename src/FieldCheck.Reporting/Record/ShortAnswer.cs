using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Record;

/// <summary>
/// The reactions of a beam that stands in one sentence, and what is grave behind them; a check that is over stands in the
/// verdict of the checks.
/// </summary>
internal static class ShortAnswer
{
    internal static string Of(Calculation calculation, BuiltBeam beam, BeamOutcome.Stands stands, int combination)
    {
        if (calculation.Messages.Any(message => message.Code == MessageCodes.NoLoads))
        {
            return "It stands, and carries no load yet";
        }

        CombinationResponse answer = stands.Combinations[combination];
        BeamWords words = new(beam, IsSpoken: true);
        string supports = string.Join(", ", beam.Supports.Select((support, i) =>
            $"{support.Label} {Said(words, support, answer.Response.Reactions[i])}"));
        string under = stands.Combinations.Length == 1
            ? ""
            : $" under {PlainAscii.Of(answer.Combination.Name)}, combination {combination + 1} of "
                + $"{stands.Combinations.Length}";
        string leftOut = VariedWords.LeftOut(beam, answer.Combination) is string what ? $", not the worst, {what}" : "";
        IEnumerable<string> grave = MessageLines.InOrder(calculation)
            .Where(message => message is { Severity: Severity.Fault, Code: not MessageCodes.Over }
                or { Code: MessageCodes.Uplift or MessageCodes.LiftsOff }
                || MessageLines.IsWithin(message))
            .Select(message => $". {words.Sentence(message.Text).TrimEnd('.')}");
        return $"Reactions{under}{leftOut}: {supports}{string.Concat(grave)}";
    }

    private static string Said(BeamWords words, NamedSupport support, Reaction reaction)
    {
        string parts = string.Join(" and ", words.Parts(support.Support, reaction));
        return string.Join(' ', [parts, .. ReactionTable.Remarks(words, support, reaction)]);
    }
}
