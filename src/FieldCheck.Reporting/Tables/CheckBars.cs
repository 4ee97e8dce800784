using System.Collections.Immutable;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Reporting.Record;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Reporting.Tables;

/// <summary>The checks of a beam, a line each with a bar of how much is used, and the work of one of them.</summary>
internal static class CheckBars
{
    /// <summary>What stands before the check whose work is shown.</summary>
    internal const string Chosen = "> ";

    private const string Others = "  ";
    private const string Between = "  ";
    private const int Wide = 100;
    private const int LongestName = 34;
    private const int LongestNameWhenWide = 56;
    private const int Indent = 6;
    private const int LongestBar = 20;
    private const int ShortestBar = 8;
    private const int Edges = 2;

    private static readonly ImmutableArray<string> Headings = ["what", "have", "allow", "used"];

    internal static ImmutableArray<string> Lines(Calculation calculation, BuiltBeam beam, int? chosen, int width)
    {
        ImmutableArray<BeamCheck> checks = calculation.Checks.All;
        if (checks.IsEmpty)
        {
            return [];
        }

        ImmutableArray<ImmutableArray<string>> rows = [Headings, .. checks.Select(check => Cells(check, beam))];
        int longest = width >= Wide ? LongestNameWhenWide : LongestName;
        int[] widths =
        [
            .. Enumerable.Range(0, Headings.Length).Select(column => rows
                .Select(row => row[column].Length).Where(length => column > 0 || length <= longest).Max()),
        ];
        int verdict = checks.Max(check => check.Figures.Reason is null ? check.Verdict.Length : 0);
        int left = width - Others.Length - widths.Sum() - (Headings.Length + 1) * Between.Length - Edges - verdict;
        int bar = left >= ShortestBar ? Math.Min(left, LongestBar) : 0;
        return
        [
            Row(rows[0], widths, Others) + (bar == 0 ? "" : $"{Between} 0{new string(' ', bar - 2)}1"),
            .. checks.SelectMany((check, index) => (IEnumerable<string>)
            [
                .. Check(check, rows[index + 1], widths, bar, index == chosen, width),
                .. Below(check, beam, index == chosen).SelectMany(line => TextFlow.Wrap(line, width - Indent, indent: 2))
                    .Select(line => new string(' ', Indent) + line),
            ]),
            .. CheckTable.Below(calculation.Checks)
                .Take(calculation.Checks.Governing is null ? 0 : 1)
                .Concat(Unsafe(calculation))
                .Concat(WhatIfOf(calculation, beam))
                .Concat(CheckTable.Below(calculation.Checks).Skip(calculation.Checks.Governing is null ? 0 : 1))
                .Concat(Said(calculation).Except(Unsafe(calculation)))
                .SelectMany(line => TextFlow.Wrap(line, width - Others.Length, indent: 4))
                .Select(line => Others + line),
        ];
    }

    /// <summary>What is to be said of the checks of a beam wherever they are shown: remarks on them, then the cautions.</summary>
    internal static IEnumerable<string> Said(Calculation calculation) =>
    [
        .. calculation.Messages.Where(IsToBeSaid).Select(message => PlainAscii.Of(message.Text)),
        .. Cautions.OfStrength,
    ];

    // What may make a verdict wrong on the unsafe side stands next to it.
    private static IEnumerable<string> Unsafe(Calculation calculation) => calculation.Messages
        .Where(message => MakesUnsafe(message.Code)).Select(message => PlainAscii.Of(message.Text));

    private static bool MakesUnsafe(string code) =>
        code is MessageCodes.YieldThickness or MessageCodes.StressNearYield or MessageCodes.GradeSize;

    private static IEnumerable<string> WhatIfOf(Calculation calculation, BuiltBeam beam)
    {
        WhatIfWords words = new(beam, calculation.Document);
        return calculation.WhatIf is not WhatIf whatIf
            ? []
            : new[]
                {
                    words.Live(whatIf.Live, whatIf.LiveNames), words.Needed(whatIf.Needed), JudgedByWords.Caveat(calculation.Checks),
                }
                .Where(answer => answer.Length > 0)
                .Select(PlainAscii.Of);
    }

    private static bool IsToBeSaid(Message message) => MakesUnsafe(message.Code) || message.Code is MessageCodes.OneDurationFactor
        or MessageCodes.BottomNotHeld or MessageCodes.NotLasting or MessageCodes.MeasureAgain
        or MessageCodes.FromMemory or MessageCodes.WeakAxis
        or MessageCodes.FactorNotTaken or MessageCodes.StrengthNotJudged or MessageCodes.OwnCatalogue;

    // Why one is not judged is told of each; where the others stand and how they came about, of the chosen one.
    private static IEnumerable<string> Below(BeamCheck check, BuiltBeam beam, bool isChosen) =>
    [
        .. isChosen || check.Why is not null ? new[] { CheckTable.Detail(check) } : [],
        .. isChosen ? CheckWork.Work(check, beam.Display).Where(line => check.Why is null || !line.Contains(check.Why, StringComparison.Ordinal))
            .Select(PlainAscii.Of) : [],
    ];

    private static ImmutableArray<string> Cells(BeamCheck check, BuiltBeam beam) =>
    [
        PlainAscii.Of(check.What),
        PlainAscii.Of(check.Have(beam.Display)),
        PlainAscii.Of(check.Allow(beam.Display)),
        check.Used.Length == 0 ? "--" : check.Used,
    ];

    private static IEnumerable<string> Check(
        BeamCheck check, ImmutableArray<string> cells, int[] widths, int bar, bool isChosen, int width)
    {
        string mark = isChosen ? Chosen : Others;
        string verdict = bar == 0 || check.Figures.Utilisation is not double used || check.Figures.Reason is not null
            ? check.Verdict
            : $"{Bar(used, check.Figures.Verdict, bar)}{Between}{check.Verdict}";
        if (cells[0].Length > widths[0])
        {
            yield return mark + cells[0];
            cells = cells.SetItem(0, "");
            mark = new string(' ', Indent);
        }

        string line = Row(cells, widths, mark) + Between + verdict;
        if (line.Length <= width)
        {
            yield return line;
            yield break;
        }

        string[] parts = [.. cells.Where(cell => cell.Length > 0), check.Verdict];
        foreach (string part in TextFlow.Join([mark + parts[0], .. parts.Skip(1)], Between, width, Indent))
        {
            yield return part;
        }
    }

    private static string Row(ImmutableArray<string> cells, int[] widths, string mark) => mark + string.Join(
        Between,
        cells.Select((cell, column) => column == 0 ? cell.PadRight(widths[0]) : cell.PadLeft(widths[column])));

    // Full is the limit; what is over, in however small a way, goes beyond.
    private static string Bar(double used, CheckVerdict verdict, int length)
    {
        bool isOver = verdict == CheckVerdict.Over;
        int full = isOver ? length : Math.Clamp((int)Math.Round(used * length), 0, length);
        return $"|{new string('#', full).PadRight(length)}{(isOver ? ">" : "|")}";
    }
}
