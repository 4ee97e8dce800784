using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tables;

/// <summary>The envelopes in few lines, one for each greatest or least value: what stands below the cases on the screen.</summary>
public static class EnvelopeSummary
{
    private const int WideFrom = 60;
    private const int Gap = 2;
    private const int MostBeside = 2;
    private const int MostNamed = 3;

    /// <summary>For each basis the worst of every support and curve, and what governs it; then what must be said.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="width">Columns of a line; 30 or more.</param>
    /// <returns>The lines; none for a beam that does not stand.</returns>
    public static ImmutableArray<string> Lines(Calculation calculation, int width)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation.Beam is BuiltBeam beam
            ?
            [
                .. calculation.Envelopes.SelectMany(envelope => Of(beam, envelope, width)),
                .. Said(calculation).SelectMany(line => TextFlow.Wrap(line, width, indent: 4)),
            ]
            : [];
    }

    /// <summary>What an envelope is over: combinations, patterns, rolling loads.</summary>
    internal static string Over(BuiltBeam beam, Envelope envelope)
    {
        Combination[] combinations = [.. beam.Model.Combinations.Where(one => one.Basis == envelope.Basis)];
        string[] parts =
        [
            combinations.Length == 1 ? combinations[0].Name : $"{combinations.Length} combinations",
            BayByBay([.. beam.PatternCases.Where(Counts).Select(index => beam.Model.Cases[index].Name)]),
            .. beam.Rolling.Where(rolling => Counts(rolling.Case)).Select(rolling => rolling.Label),
            VariedWords.RollOneAtATime(beam, envelope.Basis) ? "one at a time" : "",
        ];
        return PlainAscii.Of(string.Join(", ", parts.Where(part => part.Length > 0)));

        bool Counts(int index) => combinations.Any(one => one.Factors[index] != 0);
    }

    // Said once; of many cases only how many, for each stands in the row above that it counts so.
    private static string BayByBay(string[] cases) => cases.Length switch
    {
        0 => "",
        > MostNamed => $"{cases.Length} cases bay by bay",
        _ => $"{VariedWords.Listed(cases)} bay by bay",
    };

    // Notes and what is said of stated figures stand elsewhere.
    private static IEnumerable<string> Said(Calculation calculation) => MessageLines.InOrder(calculation)
        .Where(message => message.Severity > Severity.Note
            && message.Code is not (MessageCodes.StatedLow or MessageCodes.StatedHigh or MessageCodes.NotStated))
        .Select(message => PlainAscii.Of(message.Text));

    private static IEnumerable<string> Of(BuiltBeam beam, Envelope envelope, int width)
    {
        EnvelopeRows rows = new(new BeamWords(beam), envelope);
        ImmutableArray<SummaryRow> all =
        [
            .. Aligned([.. Enumerable.Range(0, beam.Supports.Length).SelectMany(rows.Reactions).Select(SummaryRow.Of)]),
            .. Aligned([.. rows.Peaks().Select(SummaryRow.Of)]),
        ];
        int names = all.Max(row => row.Name.Length);
        int ends = all.Max(row => row.End.Length);
        int values = all.Max(row => row.Value.Length);
        return
        [
            .. TextFlow.Join([BasisWords.Of(envelope.Basis).ToUpperInvariant(), Over(beam, envelope)], "  ", width, indent: 4),
            .. all.SelectMany((row, index) => Line(
                row, index > 0 && all[index - 1].Name == row.Name ? "" : row.Name)),
        ];

        IEnumerable<string> Line(SummaryRow row, string name)
        {
            string value = $"{name.PadRight(names)}  {row.End.PadRight(ends)} {row.Value}";
            int indent = names + ends + values + Gap + 3;
            ImmutableArray<string> beside = TextFlow.Wrap(row.Governs, Math.Max(width - indent, 1));
            return row.Governs.Length == 0 ? TextFlow.Join([value], " ", width, indent: 4)
                : width >= WideFrom && beside.Length <= MostBeside
                    ? beside.Select((line, index) => (index == 0 ? value.PadRight(indent) : new string(' ', indent)) + line)
                : [value, .. TextFlow.Wrap(row.Governs, width - 4).Select(line => "    " + line)];
        }
    }

    // Numbers stand with their units under each other.
    private static IEnumerable<SummaryRow> Aligned(ImmutableArray<SummaryRow> rows)
    {
        int widest = rows.Select(NumberWidth).DefaultIfEmpty().Max();
        return rows.Select(row => row with { Value = new string(' ', widest - NumberWidth(row)) + row.Value });
    }

    private static int NumberWidth(SummaryRow row) => Math.Max(row.Value.IndexOf(' ', StringComparison.Ordinal), 0);
}
