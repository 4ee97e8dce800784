using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tables;

/// <summary>
/// What the answer to one combination leaves out of all that may happen: what rolls is not on the beam, and pattern loads all
/// stand. Whoever reads that answer must know that it is not the worst.
/// </summary>
internal static class VariedWords
{
    /// <summary>What stands before or beside every figure of an answer that leaves something out.</summary>
    internal const string NotTheWorst = "NOT THE WORST";

    /// <summary>"without Hand truck, with live on every bay"; null where nothing of a combination varies.</summary>
    internal static string? LeftOut(BuiltBeam beam, Combination combination)
    {
        string[] rolling = [.. beam.Rolling.Where(one => combination.Factors[one.Case] != 0).Select(one => one.Label)];
        string[] patterns =
            [.. beam.PatternCases.Where(index => combination.Factors[index] != 0).Select(index => beam.Model.Cases[index].Name)];
        string[] parts =
        [
            .. rolling.Length == 0 ? [] : new[] { $"without {Listed(rolling)}" },
            .. patterns.Length == 0 ? [] : new[] { $"with {Listed(patterns)} on every bay" },
        ];
        return parts.Length == 0 ? null : TypedLetters.Sentence(beam, string.Join(", ", parts));
    }

    /// <summary>A sentence that sends from the answer to one combination to the envelope; none where nothing varies.</summary>
    internal static ImmutableArray<string> Warning(BuiltBeam beam, Combination combination) =>
        LeftOut(beam, combination) is string leftOut
            ? [$"{NotTheWorst}: {leftOut}. The worst of all that may happen stands in the envelope."]
            : [];

    /// <summary>What stands at the head of a working by hand; none where nothing varies.</summary>
    internal static ImmutableArray<string> OfWorking(BuiltBeam beam, Combination combination) =>
        LeftOut(beam, combination) is string leftOut
            ?
            [
                $"{NotTheWorst}: this works {TypedLetters.Name(beam, combination.Name)} {leftOut}. What rolls or may be away is not "
                    + "worked here; the worst of all that may happen stands in the envelope of the check.",
            ]
            : [];

    /// <summary>The greatest and least reactions of an envelope in one sentence.</summary>
    internal static string Worst(BeamWords words, Envelope envelope)
    {
        EnvelopeRows rows = new(words, envelope);
        string certainty = envelope.ReactionCertainty == EnvelopeCertainty.Estimate ? $" ({EnvelopeRows.Estimate})" : "";
        IEnumerable<string> reactions = Enumerable.Range(0, words.Beam.Supports.Length)
            .SelectMany(rows.Reactions)
            .GroupBy(row => row.Name)
            .Select(rowsOfOne => $"{rowsOfOne.Key} {string.Join(", ", rowsOfOne.Select(row => $"{row.End} {row.Items[0]}"))}");
        return $"Reactions over all that may happen, {BasisWords.Of(envelope.Basis)}{certainty}: {string.Join("; ", reactions)}.";
    }

    /// <summary>The greatest push of every support in short; nothing where the answer to the combination is all there is.</summary>
    internal static ImmutableArray<string> InShort(Calculation calculation, BeamWords words, Combination combination) =>
        LeftOut(words.Beam, combination) is string leftOut
            && calculation.Envelopes.FirstOrDefault(one => one.Basis == combination.Basis) is Envelope envelope
            ?
            [
                $"{NotTheWorst}: {leftOut}; over all",
                .. words.Beam.Supports.Select((support, i) => $"{support.Label} {words.Vertical(envelope.Reactions[i].Vertical.Max.Value)}"),
            ]
            : [];

    /// <summary>Whether some combination of a basis holds several rolling loads, of which one at most is on the beam at a time.</summary>
    internal static bool RollOneAtATime(BuiltBeam beam, CombinationBasis basis) => beam.Model.Combinations
        .Any(one => one.Basis == basis && beam.Rolling.Count(rolling => one.Factors[rolling.Case] != 0) > 1);

    /// <summary>"one, two and three".</summary>
    internal static string Listed(string[] names) =>
        names.Length == 1 ? names[0] : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";
}
