using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen.FormGrid;

namespace FieldCheck.Screen.Combining;

/// <summary>What comes of the combinations, patterns and rolling loads, line by line.</summary>
internal static class EnvelopeLines
{
    private const int Narrowest = 30;
    private const int MostLines = 100_000;

    /// <summary>The envelopes; why there are none of a beam that cannot be worked out or cannot stand.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static ImmutableArray<string> Of(ScreenState state, int width) => state.Shown.Outcome is BeamOutcome.Stands
        ? [InShort(state, width), .. EnvelopeSummary.Lines(state.Shown, Math.Max(width, Narrowest))]
        : ResultsPicture.All(state, width, MostLines);

    /// <summary>How old they are, in one line; the results of a beam that has none.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static string InShort(ScreenState state, int width) => state.Shown.Outcome is BeamOutcome.Stands
        ? $"ENVELOPE  {(state.Age == ResultsAge.UpToDate ? "up to date" : "before this cell")}"
        : ResultsPicture.Header(state, width);
}
