using System.Collections.Immutable;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen.FormGrid;

namespace FieldCheck.Screen.StatedFigures;

/// <summary>What comes of the stated figures, line by line.</summary>
internal static class StatedLines
{
    private const int Narrowest = 30;
    private const int MostLines = 100_000;

    /// <summary>
    /// The verdicts in short, then each figure; the results where nothing is stated; why there are none of a beam that cannot
    /// be worked out.
    /// </summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static ImmutableArray<string> Of(ScreenState state, int width)
    {
        string age = state.Age == ResultsAge.UpToDate ? "up to date" : "before this cell";
        return StatedPanel.InShort(state.Shown) is string verdicts
            ? [$"STATED  {age}   {verdicts}", .. StatedPanel.Lines(state.Shown, Math.Max(width, Narrowest))]
            : ResultsPicture.All(state, width, MostLines);
    }

    /// <summary>All of it in one line, for where there is no room for more.</summary>
    /// <param name="state">The state.</param>
    internal static string InShort(ScreenState state) =>
        state.Age == ResultsAge.UpToDate && StatedPanel.InShort(state.Shown) is string verdicts
            ? verdicts
            : ResultsPicture.Header(state, Narrowest);
}
