using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.FormGrid;

/// <summary>Draws the results beside or below the form.</summary>
internal static partial class ResultsPicture
{
    private const int NarrowestPanel = 30;
    private const int LowestPanel = 3;
    private const int HeaderAlone = 1;
    private const string Nothing = "--";

    /// <summary>The results in so many lines.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 0 or more.</param>
    internal static ImmutableArray<PictureLine> Of(ScreenState state, int width, int height)
    {
        bool isOld = state.Age == ResultsAge.BeforeThisCell;
        ImmutableArray<string> lines = All(state, width, height);
        return
        [
            .. lines.Take(height).Select((line, index) =>
                Coloured(index == 0 ? WithWayOn(state, line, width) : WithWayToAll(state, line), width, isFaint: isOld && index > 0)),
            .. Enumerable.Repeat(LineWriter.Line("", width), Math.Max(height - lines.Length, 0)),
        ];
    }

    /// <summary>The results as text, as much of them as there is room for.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 0 or more.</param>
    internal static ImmutableArray<string> All(ScreenState state, int width, int height) => state.Shown.Beam is null
        ? Unread(state, width)
        : ResultsPanel.Lines(
            state.Shown,
            Math.Max(width, NarrowestPanel),
            Math.Max(height, LowestPanel),
            state.Age,
            state.CombinationShown);

    // Of several combinations, which this is and the key that leads to the next, where that leaves the name whole.
    private static string WithWayOn(ScreenState state, string header, int width)
    {
        string way = WayOn(state);
        return way.Length > 0 && TextColumns.Of(header) + way.Length + 2 <= width ? $"{header}  {way}" : header;
    }

    private static string WayOn(ScreenState state) => state.CombinationCount < 2 ? "" : string.Create(
        CultureInfo.InvariantCulture,
        $"{state.CombinationShown + 1} of {state.CombinationCount} {state.Table.KeyOf(CommandName.NextCombination)} next");

    private static string WithWayToAll(ScreenState state, string line) =>
        line.StartsWith("..", StringComparison.Ordinal) && line.EndsWith(" more", StringComparison.Ordinal)
            ? $"{line}   {state.Table.KeyOf(CommandName.AllResults)} all"
            : line;

    /// <summary>The header: which beam the results are of, or what they wait for.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static string Header(ScreenState state, int width)
    {
        if (state.Shown.Beam is null)
        {
            return $"RESULTS  {ProblemWords.InShort(state.Shown)}";
        }

        string header =
            ResultsPanel.Lines(state.Shown, Math.Max(width, NarrowestPanel), HeaderAlone, state.Age, state.CombinationShown)[0];
        return WithWayOn(state, header, width);
    }

    // No old figure may pass for a new one: every figure is two dashes.
    internal static ImmutableArray<string> Unread(ScreenState state, int width)
    {
        Calculation calculation = state.Shown;
        FormSheet sheet = new(calculation.Document);
        return
        [
            $"RESULTS  {ProblemWords.InShort(calculation)}",
            .. Enumerable.Range(0, sheet.RowsOf(FormBlock.Supports))
                .Select(row => $"{FormWords.Head(sheet, FormBlock.Supports, row)}  {Nothing}"),
            $"V  {Nothing}   M  {Nothing}   d  {Nothing}",
            .. ProblemWords.Of(calculation, CellHints.OfMissing).SelectMany(told => Wrapped(told, width)),
        ];
    }

    private static IEnumerable<string> Wrapped(string text, int width)
    {
        string line = " ";
        foreach (string word in text.Split(' '))
        {
            if (line.Length > 1 && TextColumns.Of(line) + 1 + TextColumns.Of(word) > width)
            {
                yield return line;
                line = "  ";
            }

            line += " " + word;
        }

        yield return line;
    }

    /// <summary>A line of results, the words in it that matter standing out.</summary>
    /// <param name="text">The line.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="isFaint">True: its figures are of the beam before what is being typed.</param>
    internal static PictureLine Coloured(string text, int width, bool isFaint)
    {
        LineWriter line = new(width);
        int from = 0;
        foreach (Match word in Verdicts().Matches(text))
        {
            line.Add(text[from..word.Index], isFaint ? Role.Faint : Role.Text).Add(word.Value, RoleOf(word.Value));
            from = word.Index + word.Length;
        }

        return line.Add(text[from..], isFaint ? Role.Faint : Role.Text).End();
    }

    private static Role RoleOf(string word) => word switch
    {
        "up to date" or "AGREES" or "WITHIN BAND" or "HELD" or "OK" => Role.Good,
        "CAN MOVE" or "MAY TIP" or "LIFTS" or "LOW" or "OVER" => Role.Bad,
        _ => Role.Warn,
    };

    [GeneratedRegex(
        @"\b(up to date|before this cell|cells? to mend|waiting for|CAN MOVE|MAY TIP|LIFTS|HELD|estimate|AGREES|WITHIN BAND|LOW|HIGH|NOT JUDGED|NOT THE WORST|"
            + @"DOES NOT CLOSE|not stated|OVER|OK)\b",
        RegexOptions.CultureInvariant)]
    private static partial Regex Verdicts();
}
