using System.Collections.Immutable;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tables;

/// <summary>What comes of stated figures, for a view of its own.</summary>
public static class StatedPanel
{
    /// <summary>Every figure with its verdict first, and whether they balance; nothing where nothing is stated.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="width">The widest line [columns].</param>
    public static ImmutableArray<string> Lines(Calculation calculation, int width)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation is { Beam: BuiltBeam beam, Stated.IsEmpty: false }
            ? StatedTable.Lines(calculation, beam, width)
            : [];
    }

    /// <summary>The verdicts in few words, gravest first, as "LOW at B, HIGH at A"; null where nothing is stated.</summary>
    /// <param name="calculation">What came of the beam.</param>
    public static string? InShort(Calculation calculation)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation.Stated.IsEmpty ? null : StatedWords.InShort(calculation.Stated, calculation.Unstated);
    }
}
