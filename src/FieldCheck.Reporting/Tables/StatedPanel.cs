using System.Collections.Immutable;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tables;

/// <summary>What comes of stated figures, for a view of its own.</summary>
public static class StatedPanel
{
    private const string Heading = "WHY THEY MAY DIFFER";

    /// <summary>
    /// Every figure with its verdict first, whether they balance, and why they may differ; nothing where nothing is stated.
    /// </summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="width">The widest line [columns].</param>
    public static ImmutableArray<string> Lines(Calculation calculation, int width)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation is { Beam: BuiltBeam beam, Stated.IsEmpty: false }
            ? [.. StatedTable.Lines(calculation, beam, width), .. Why(calculation, beam, width)]
            : [];
    }

    private static IEnumerable<string> Why(Calculation calculation, BuiltBeam beam, int width)
    {
        string[] lines = [.. ExplanationLines.Of(calculation, beam)];
        return lines.Length == 0
            ? []
            : [Heading, .. lines.SelectMany(line => TextFlow.Wrap(line, width - 2, indent: 4)).Select(line => "  " + line)];
    }

    /// <summary>The verdicts in few words, gravest first, as "LOW at B, HIGH at A"; null where nothing is stated.</summary>
    /// <param name="calculation">What came of the beam.</param>
    public static string? InShort(Calculation calculation)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation.Stated.IsEmpty ? null : StatedWords.InShort(calculation.Stated, calculation.Unstated);
    }
}
