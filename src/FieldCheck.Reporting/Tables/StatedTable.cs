using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Stated;

namespace FieldCheck.Reporting.Tables;

/// <summary>Stated figures beside the computed ones, verdict first, and whether they balance.</summary>
internal static class StatedTable
{
    private const string NotStated = "not stated";

    /// <summary>The rows, the balances below them; nothing where nothing is stated.</summary>
    internal static ImmutableArray<string> Lines(Calculation calculation, BuiltBeam beam, int width)
    {
        string[] heading = StatedWords.OneSource(calculation.Stated) is string source ? [$"stated by {source}"] : [];
        return
        [
            .. heading.SelectMany(line => Sentence(line, width)),
            .. Rows(calculation, beam).SelectMany(row => TextFlow.Join(row, "   ", width, indent: 6)),
            .. Balances(calculation, beam).SelectMany(line => Sentence(line, width)),
        ];
    }

    /// <summary>Each figure in two or three sentences, with its name before it.</summary>
    internal static IEnumerable<(string Label, string Fact)> Facts(Calculation calculation, BuiltBeam beam)
    {
        StatedWords words = new(new BeamWords(beam, IsSpoken: true));
        foreach (StatedFigure figure in calculation.Stated)
        {
            string label = $"Stated figure, {StatedWords.Name(figure)}";
            yield return (label, $"{VerdictWords.WithSide(figure)}{Because(figure)}");
            yield return (label, $"stated {words.Stated(figure)}{Source(figure)}");
            if (figure.Comparison is ReactionComparison compared)
            {
                yield return (label, string.Join(", ", words.Beside(figure, compared)));
            }
        }

        foreach (UnstatedReaction unstated in calculation.Unstated)
        {
            yield return (
                $"Not stated, {unstated.Label} {unstated.Component.Name}",
                string.Join(", ", words.Beside(unstated)));
        }

        foreach (string line in Balances(calculation, beam, isSpoken: true))
        {
            yield return ("Balance of what is stated", line);
        }
    }

    private static IEnumerable<ImmutableArray<string>> Rows(Calculation calculation, BuiltBeam beam)
    {
        StatedWords words = new(new BeamWords(beam));
        bool hasOneSource = StatedWords.OneSource(calculation.Stated) is not null;
        (string Verdict, string Name, ImmutableArray<string> Items)[] rows =
        [
            .. calculation.Stated.Select(figure =>
                (VerdictWords.WithSide(figure), StatedWords.Name(figure), Items(words, figure, hasOneSource))),
            .. calculation.Unstated.Select(one =>
                (NotStated, $"{one.Label} {one.Component.Name}", words.Beside(one))),
        ];
        int verdict = rows.Select(row => row.Verdict.Length).DefaultIfEmpty().Max();
        int name = rows.Select(row => row.Name.Length).DefaultIfEmpty().Max();
        return rows.Select(row => (ImmutableArray<string>)
            [$"  {row.Verdict.PadRight(verdict)}", row.Name.PadRight(name), .. row.Items]);
    }

    private static ImmutableArray<string> Items(StatedWords words, StatedFigure figure, bool hasOneSource) =>
    [
        $"stated {words.Stated(figure)}",
        .. figure.Comparison is ReactionComparison compared
            ? words.Beside(figure, compared)
            : [PlainAscii.Of(figure.Reason)],
        .. hasOneSource ? [] : new[] { Source(figure).TrimStart(',', ' ') }.Where(text => text.Length > 0),
    ];

    private static IEnumerable<string> Balances(Calculation calculation, BuiltBeam beam, bool isSpoken = false)
    {
        BeamWords words = new(beam, isSpoken);
        return calculation.StatedBalances.SelectMany(balance => BalanceWords.Of(words, balance));
    }

    private static string Because(StatedFigure figure) =>
        figure.Reason.Length == 0 ? "" : $", because {PlainAscii.Of(figure.Reason)}";

    private static string Source(StatedFigure figure) =>
        figure.Entry.Source is string source ? $", by {PlainAscii.Of(source)}" : "";

    private static IEnumerable<string> Sentence(string line, int width) =>
        TextFlow.Wrap(line, width - 2, indent: 4).Select(part => "  " + part);
}
