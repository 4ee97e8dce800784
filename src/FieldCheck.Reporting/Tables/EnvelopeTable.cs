using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Findings;

namespace FieldCheck.Reporting.Tables;

/// <summary>Envelopes in words: over what they are, reactions and peaks with what governs.</summary>
/// <param name="words">The words of the beam.</param>
internal sealed class EnvelopeTable(BeamWords words)
{
    /// <summary>Blanks before a name, and between it and the two that follow.</summary>
    private const int Margins = 8;

    /// <summary>So many supports are told in full; of more only those that stand out.</summary>
    private const int MostSupports = 12;

    private BuiltBeam Beam => words.Beam;

    /// <summary>The envelopes that say more than an answer above them does.</summary>
    internal static ImmutableArray<Envelope> Telling(Calculation calculation, BuiltBeam beam) =>
    [
        .. calculation.Envelopes.Where(envelope => CombinationsOf(beam, envelope).Length > 1
            || beam.PatternCases.Concat(beam.Rolling.Select(rolling => rolling.Case))
                .Any(index => Counts(beam, envelope, index))),
    ];

    /// <summary>Whether a combination gives a greatest or least reaction or peak.</summary>
    internal static bool Governs(Envelope envelope, BuiltBeam beam, int combination) =>
        envelope.Reactions.SelectMany(reaction => new[] { reaction.Vertical.Max, reaction.Vertical.Min })
            .Select(governed => governed.Situation)
            .Concat(PeakTable.Curves(beam).Select(envelope.ExtremesOf)
                .SelectMany(extremes => new[] { extremes.Max.Situation, extremes.Min.Situation }))
            .Any(situation => situation.Combination == combination);

    /// <summary>Over what the greatest and least were taken.</summary>
    internal ImmutableArray<string> Over(Envelope envelope)
    {
        ImmutableArray<Combination> all = CombinationsOf(Beam, envelope);
        string[] what =
        [
            all.Length == 1 ? all[0].Name : $"{all.Length.ToString(CultureInfo.InvariantCulture)} combinations",
            .. Beam.PatternCases.Where(index => Counts(Beam, envelope, index))
                .Select(index => $"{Beam.Model.Cases[index].Name} on any bays or none"),
            .. Beam.Rolling.Where(rolling => Counts(Beam, envelope, rolling.Case))
                .Select(rolling => $"{rolling.Label} anywhere, either way round, or nowhere"),
            .. VariedWords.RollOneAtATime(Beam, envelope.Basis) ? new[] { "one of what rolls at a time" } : [],
        ];
        bool hasPattern = Beam.PatternCases.Any(index => Counts(Beam, envelope, index));
        return
        [
            TypedLetters.Sentence(Beam, $"over {string.Join("; ", what)}"),
            .. hasPattern ? BayNames() : [],
            .. envelope.WithoutAnswer.Take(1).Select(situation => words.Sentence(
                $"without {SituationWords.Within(Beam, situation)}: there the beam tips, or has no answer")),
            .. IsEstimate(envelope)
                ? new[]
                {
                    $"{(new EnvelopeRows(words, envelope).AreAllEstimates ? "all of it an " : "")}{EnvelopeRows.Estimate}: "
                        + "found among what was tried, something else may give more",
                }
                : [],
        ];
    }

    /// <summary>The reactions, and the peaks along the beam.</summary>
    internal (ImmutableArray<string> Reactions, ImmutableArray<string> Peaks) Lines(Envelope envelope, int width)
    {
        EnvelopeRows rows = new(words, envelope);
        ImmutableArray<int> told = Told(envelope);
        EnvelopeRow[] reactions = [.. told.SelectMany(rows.Reactions)];
        string[] others = told.Length == Beam.Supports.Length ? [] : [Others(envelope, told)];
        return (
            [
                .. Aligned(reactions, width),
                .. others.SelectMany(line => TextFlow.Wrap(line, width - 2, indent: 4)).Select(line => "  " + line),
            ],
            Aligned([.. rows.Peaks()], width));
    }

    /// <summary>One fact after the other, with what it is of before it.</summary>
    internal IEnumerable<(string Label, string Fact)> Facts(Envelope envelope)
    {
        string basis = BasisWords.Of(envelope.Basis);
        EnvelopeRows rows = new(words, envelope);
        foreach (string line in Over(envelope))
        {
            yield return ($"Envelope of {basis} figures", line);
        }

        foreach (EnvelopeRow row in Enumerable.Range(0, Beam.Supports.Length).SelectMany(rows.Reactions).Concat(rows.Peaks()))
        {
            yield return ($"Envelope of {basis} figures, {row.Name}", $"{row.End} {string.Join(", ", row.Items)}");
        }
    }

    private static ImmutableArray<Combination> CombinationsOf(BuiltBeam beam, Envelope envelope) =>
        [.. beam.Model.Combinations.Where(combination => combination.Basis == envelope.Basis)];

    /// <summary>Whether a case has a factor in some combination.</summary>
    private static bool Counts(BuiltBeam beam, Envelope envelope, int index) =>
        CombinationsOf(beam, envelope).Any(combination => combination.Factors[index] != 0);

    private static ImmutableArray<string> Aligned(EnvelopeRow[] rows, int width)
    {
        int name = rows.Select(row => row.Name.Length).DefaultIfEmpty().Max();
        int end = rows.Select(row => row.End.Length).DefaultIfEmpty().Max();
        int value = rows.Select(row => row.Items[0].Length).DefaultIfEmpty().Max();
        return
        [
            .. rows.SelectMany((row, index) => TextFlow.Join(
                [
                    "  " + (index > 0 && rows[index - 1].Name == row.Name ? "" : row.Name).PadRight(name),
                    row.End.PadRight(end),
                    row.Items[0].PadRight(value),
                    .. row.Items.Skip(1),
                ],
                "   ",
                width,
                Math.Min(name + end + Margins, width / 3))),
        ];
    }

    /// <summary>The supports told in full: all, or of many those that are pulled and those that get most and least.</summary>
    private ImmutableArray<int> Told(Envelope envelope)
    {
        int[] all = [.. Enumerable.Range(0, Beam.Supports.Length)];
        return all.Length <= MostSupports
            ? [.. all]
            :
            [
                .. all.OrderBy(Least).Take(MostSupports / 2)
                    .Concat(all.OrderByDescending(Most).Take(MostSupports / 2))
                    .Distinct()
                    .Order(),
            ];

        double Least(int support) => envelope.Reactions[support].Vertical.Min.Value;

        double Most(int support) => envelope.Reactions[support].Vertical.Max.Value;
    }

    private string Others(Envelope envelope, ImmutableArray<int> told)
    {
        int[] rest = [.. Enumerable.Range(0, Beam.Supports.Length).Except(told)];
        double most = rest.Max(support => envelope.Reactions[support].Vertical.Max.Value);
        double least = rest.Min(support => envelope.Reactions[support].Vertical.Min.Value);
        return $"the other {rest.Length.ToString(CultureInfo.InvariantCulture)} supports: between {words.Vertical(least)} "
            + $"and {words.Vertical(most)}; all of them stand in the JSON";
    }

    private bool IsEstimate(Envelope envelope) => envelope.ReactionCertainty == EnvelopeCertainty.Estimate
        || PeakTable.Curves(Beam).Any(curve => envelope.CertaintyOf(curve) == EnvelopeCertainty.Estimate);

    /// <summary>Which bay is which, where they are few enough to be counted over.</summary>
    private IEnumerable<string> BayNames()
    {
        Bays bays = Bays.Of(Beam.Model);
        if (bays.Between.Length > MostSupports)
        {
            return ["bays are counted from the left"];
        }

        string[] names =
        [
            .. bays.Between.Select((bay, index) =>
                $"{(index + 1).ToString(CultureInfo.InvariantCulture)} from {words.Place(bay.From)} to {words.Place(bay.To)}"),
        ];
        return names.Length == 0 ? [] : [$"bays: {string.Join(", ", names)}"];
    }
}
