using System.Collections.Immutable;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tables;

/// <summary>What comes of stated figures, for a view of its own.</summary>
public static class StatedPanel
{
    /// <summary>
    /// Every figure with its verdict first, whether they balance, why they may differ, and what matters most for how well
    /// the reactions are known; nothing where nothing is stated.
    /// </summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="width">The widest line [columns].</param>
    public static ImmutableArray<string> Lines(Calculation calculation, int width)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation is { Beam: BuiltBeam beam, Stated.IsEmpty: false }
            ?
            [
                .. StatedTable.Lines(calculation, beam, width),
                .. Indented(MessageLines.Of(calculation, IsDoubt), width),
                .. Section("WHY THEY MAY DIFFER", [.. ExplanationLines.Of(calculation, beam)], width),
                .. Section("WHAT MATTERS MOST", BandWords.MattersMost(calculation), width),
            ]
            : [];
    }

    private static bool IsDoubt(Message message) => message.Code is MessageCodes.StatedRough or MessageCodes.StatedNotWorst;

    private static IEnumerable<string> Section(string heading, ImmutableArray<string> lines, int width) => lines.IsEmpty
        ? []
        : [heading, .. Indented(lines, width)];

    private static IEnumerable<string> Indented(IEnumerable<string> lines, int width) =>
        lines.SelectMany(line => TextFlow.Wrap(line, width - 2, indent: 4)).Select(line => "  " + line);

    /// <summary>The verdicts in few words, gravest first, as "LOW at B, HIGH at A"; null where nothing is stated.</summary>
    /// <param name="calculation">What came of the beam.</param>
    public static string? InShort(Calculation calculation)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation.Stated.IsEmpty ? null
            : StatedWords.InShort(calculation.Stated, calculation.Unstated) + (calculation.Messages.Any(IsDoubt) ? ", in doubt" : "");
    }
}
