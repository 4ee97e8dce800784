using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Reporting.Tables;

/// <summary>The checks of a beam in columns, what is used up most, and what is not checked.</summary>
internal static class CheckTable
{
    /// <summary>A longer name stands on a line of its own.</summary>
    private const int LongestName = 34;

    private const int Indent = 6;

    private static readonly ImmutableArray<string> Headings = ["what", "have", "allow", "used", "verdict"];

    /// <summary>The table and the lines below it; nothing where nothing is asked for.</summary>
    internal static ImmutableArray<string> Lines(Calculation calculation, BuiltBeam beam, int width)
    {
        ImmutableArray<BeamCheck> checks = calculation.Checks.All;
        if (checks.IsEmpty)
        {
            return [];
        }

        ImmutableArray<ImmutableArray<string>> rows = [Headings, .. checks.Select(check => Cells(check, beam))];
        int[] widths =
        [
            .. Enumerable.Range(0, Headings.Length)
                .Select(column => rows.Select(row => row[column].Length)
                    .Where(length => column > 0 || length <= LongestName).Max()),
        ];
        return
        [
            .. Row(rows[0], widths, width),
            .. checks.SelectMany((check, index) => (IEnumerable<string>)
            [
                .. Row(rows[index + 1], widths, width),
                .. TextFlow.Wrap(Detail(check), width - Indent).Select(line => new string(' ', Indent) + line),
            ]),
            .. Below(calculation.Checks).SelectMany(line => Sentence(line, width)),
        ];
    }

    /// <summary>What is used up most, and what is not checked.</summary>
    internal static ImmutableArray<string> Below(BeamChecks checks, BuiltBeam? beam = null) => checks.All.IsEmpty
        ? []
        :
        [
            .. checks.Governing is BeamCheck most
                ? new[] { $"Most used: {TypedLetters.Sentence(beam, most.What)}, {most.Used} of what it may have: {most.Verdict}." }
                : [],
            JudgedByWords.NotChecked(checks),
        ];

    /// <summary>Where the demand stands, under what, and where the limit comes from; or why it is not judged.</summary>
    internal static string Detail(BeamCheck check, BuiltBeam? beam = null) => TypedLetters.Sentence(
        beam,
        check.Why ?? string.Join("; ", new[] { Place(check, beam), check.Source }.Where(text => text.Length > 0)));

    /// <summary>Where the demand stands and under what, as "at x = 4.17 ft, under strength".</summary>
    internal static string Place(BeamCheck check, BuiltBeam? beam = null) => TypedLetters.Sentence(beam, string.Join(
        ", ",
        new[]
        {
            check.Where.Length == 0 ? "" : $"at {check.Where}",
            check.Governs.Length == 0 || check.Figures.Case is not null ? check.Governs : $"under {check.Governs}",
            check.Figures.Certainty == EnvelopeCertainty.Estimate ? "an estimate"
                : check.Figures.IsBound ? "at most so much"
                : "",
        }.Where(text => text.Length > 0)));

    /// <summary>What it is of, demand, limit, share used and verdict.</summary>
    internal static ImmutableArray<string> Cells(BeamCheck check, BuiltBeam beam) =>
    [
        TypedLetters.Sentence(beam, check.What),
        PlainAscii.Of(check.Have(beam.Display)),
        PlainAscii.Of(check.Allow(beam.Display)),
        check.Used.Length == 0 ? "--" : check.Used,
        check.Verdict,
    ];

    private static IEnumerable<string> Row(ImmutableArray<string> cells, int[] widths, int width)
    {
        bool isLong = cells[0].Length > widths[0];
        string[] padded =
        [
            isLong ? new string(' ', widths[0]) : cells[0].PadRight(widths[0]),
            .. cells.Skip(1).Select((cell, i) => i < Headings.Length - 2 ? cell.PadLeft(widths[i + 1]) : cell),
        ];
        string line = $"  {string.Join("  ", padded)}".TrimEnd();
        return
        [
            .. isLong ? Sentence(cells[0], width) : [],
            .. line.Length <= width ? [line] : TextFlow.Join(["  " + cells[0], .. cells.Skip(1)], "  ", width, Indent),
        ];
    }

    private static IEnumerable<string> Sentence(string line, int width) =>
        TextFlow.Wrap(line, width - 2, indent: 4).Select(part => "  " + part);
}
