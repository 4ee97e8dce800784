using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tables;

/// <summary>The results beside the form: few words, narrow lines.</summary>
public static class ResultsPanel
{
    /// <summary>The panel for one beam.</summary>
    /// <param name="calculation">What came of it.</param>
    /// <param name="width">Columns of a line; 30 or more.</param>
    /// <param name="height">How many lines at most; 3 or more, or 1 for the header alone, which then says all that must not be missed.</param>
    /// <param name="age">Which beam the results belong to.</param>
    /// <param name="combination">Which combination is shown, counted from 0.</param>
    /// <returns>The header line, then the results; when they do not all fit the last line says how many more.</returns>
    public static ImmutableArray<string> Lines(
        Calculation calculation,
        int width,
        int height,
        ResultsAge age = ResultsAge.UpToDate,
        int combination = 0)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        string state = age is ResultsAge.UpToDate ? "up to date" : "before this cell";
        return calculation switch
        {
            { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands stands } => Panel(
                state,
                StandingBlocks.Of(
                    calculation, beam, combination, stands.Combinations[combination].Response, width, height),
                width,
                height,
                stands.Combinations.Length == 1 ? "" : PlainAscii.Of(stands.Combinations[combination].Combination.Name)),
            { Beam: BuiltBeam beam, Outcome: BeamOutcome outcome } => Panel(
                $"{MotionWords.Verdict(outcome)}  {(age is ResultsAge.UpToDate ? "" : state)}",
                [
                    .. MotionWords.Of(beam, outcome).Select(motion => PanelBlock.Wrapped(motion, width, 0)),
                    .. StandingBlocks.Remarks(calculation, width),
                ],
                width,
                height),
            _ => Panel(
                $"{Cells(calculation.Problems.Length)} to mend",
                UnreadBlocks(calculation, width),
                width,
                height),
        };
    }

    private static string Cells(int count) => count == 1 ? "1 cell" : $"{count} cells";

    /// <summary>No old figure may pass for a new one: every figure is two dashes.</summary>
    private static ImmutableArray<PanelBlock> UnreadBlocks(Calculation calculation, int width) =>
    [
        .. calculation.Document.Supports
            .Select(row => new PanelBlock([$"{PlainAscii.Of(row.Label ?? "support")}  --"], 1)),
        new PanelBlock(["V  --", "M  --", "d  --"], 2),
        .. ProblemLines.Of(calculation).Select(problem => PanelBlock.Wrapped(problem, width, 0)),
    ];

    /// <summary>As many blocks as there is room for, the most telling ones first, in the order of the panel.</summary>
    private static ImmutableArray<string> Panel(
        string state, ImmutableArray<PanelBlock> blocks, int width, int height, string name = "")
    {
        int all = blocks.Sum(block => block.Lines.Length);
        int room = all <= height - 1 ? all : height - 2;
        HashSet<int> chosen = [];
        foreach (int index in Enumerable.Range(0, blocks.Length).OrderBy(index => blocks[index].Rank))
        {
            if (blocks[index].Lines.Length <= room)
            {
                chosen.Add(index);
                room -= blocks[index].Lines.Length;
            }
        }

        int left = blocks.Length - chosen.Count;
        string[] more = left == 0 ? [] : [$"..{left} more"];
        IEnumerable<string> shown = blocks.Where((_, index) => chosen.Contains(index)).SelectMany(block => block.Lines);
        IEnumerable<string> brief = blocks.Where((_, index) => !chosen.Contains(index)).Select(block => block.Brief).OfType<string>();
        IEnumerable<string> parts = ["RESULTS", state.TrimEnd(), .. brief, name];
        string header = string.Join("  ", parts.Where(part => part.Length > 0));
        IEnumerable<string> lines = [header, .. shown, .. more];
        return [.. lines.Select(line => line.Length <= width ? line : line[..width])];
    }
}
