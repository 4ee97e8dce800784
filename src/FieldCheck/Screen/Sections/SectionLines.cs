using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Screen.Sections;

/// <summary>What comes of the checks, line by line.</summary>
internal static class SectionLines
{
    private const int Narrowest = 30;
    private const int MostLines = 100_000;

    /// <summary>What can be typed for the beam to be held to.</summary>
    internal static ImmutableArray<string> NothingAsked { get; } =
    [
        "Type what the beam is to be held to:",
        "- a section and stresses, allow or design: bending and shear;",
        "- a section, a grade and rules: the same by a standard, and lateral stability;",
        "- limits of deflection: L/360, overhang L/180, or a length;",
        "- the length of a bearing or a pad, and what it may carry.",
        "A limit that is not given is never taken for kept.",
    ];

    /// <summary>The checks; why there are none of a beam that cannot be worked out or cannot stand.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static ImmutableArray<string> Of(ScreenState state, int width) => state.Shown.Outcome is not BeamOutcome.Stands
        ? ResultsPicture.All(state, width, MostLines)
        : state.Shown.Checks.All.IsEmpty ? [InShort(state, width), .. NothingAsked.SelectMany(line => TextColumns.Wrap(line, Math.Max(width, Narrowest)))]
        :
        [
            InShort(state, width),
            .. CheckPanel.WithBars(state.Shown, ChosenIn(state), Math.Max(width, Narrowest)),
        ];

    /// <summary>The verdicts in short, and how old they are; the results of a beam that has none.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static string InShort(ScreenState state, int width)
    {
        if (state.Shown.Outcome is not BeamOutcome.Stands)
        {
            return ResultsPicture.Header(state, width);
        }

        string age = state.Age == ResultsAge.UpToDate ? "up to date" : "before this cell";
        string verdict = CheckPanel.InShort(state.Shown) ?? "nothing to hold it against yet";
        string all = $"CHECKS  {age}   {verdict}";
        string some = state.Age == ResultsAge.UpToDate ? verdict : $"{age}  {verdict}";
        return all.Length <= width ? all : TextColumns.CutWithMark(some, width);
    }

    /// <summary>What is not checked, in as much of a line as there is; null where there are no checks.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static string? NotChecked(ScreenState state, int width) =>
        state.Shown is not { Outcome: BeamOutcome.Stands, Checks: { All.IsEmpty: false } checks }
            ? null
            : "  " + TextColumns.CutWithMark(PlainAscii.Of(JudgedByWords.NotChecked(checks)), Math.Max(width - 2, 1));

    /// <summary>The check whose work is shown, counted from 0: as chosen, else the one that is used up most.</summary>
    /// <param name="state">The state.</param>
    internal static int? ChosenIn(ScreenState state)
    {
        BeamChecks checks = state.Shown.Checks;
        return checks.All.IsEmpty ? null
            : state.CheckChosen is int chosen ? Math.Min(chosen, checks.All.Length - 1)
            : checks.Governing is BeamCheck most ? checks.All.IndexOf(most)
            : 0;
    }

    /// <summary>The first and the last line of the check whose work is shown, counted from 0 in all lines.</summary>
    /// <param name="state">The state; it has checks.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static (int First, int Last) RowsOf(ScreenState state, int width)
    {
        ImmutableArray<string> lines = Of(state, width);
        int first = lines.ToList().FindIndex(1, line => line.StartsWith(CheckPanel.Chosen, StringComparison.Ordinal));
        int last = first;
        while (last + 1 < lines.Length && lines[last + 1].StartsWith("    ", StringComparison.Ordinal))
        {
            last++;
        }

        return (Math.Max(first, 1), Math.Max(last, 1));
    }
}
