using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Tables;

/// <summary>
/// What would explain stated figures that differ, a sentence each: nothing is claimed, only held beside them.
/// </summary>
internal sealed class ExplanationWords
{
    /// <summary>More explanations than this say that the figures are too few or too coarse to tell.</summary>
    private const int MostTold = 5;

    private const int FewTold = 3;

    private const string Untried = "The beam is so large that not every slip was tried.";

    private readonly BeamWords _words;
    private readonly SlipWords _slips;
    private readonly ImmutableArray<ReactionFigure> _figures;
    private readonly ImmutableArray<string?> _typed;

    /// <summary>The words for one set of figures.</summary>
    /// <param name="words">The beam's words.</param>
    /// <param name="figures">The figures, as the diagnosis has them.</param>
    /// <param name="typed">For each its number as typed; null: it is written as it was read.</param>
    internal ExplanationWords(
        BeamWords words, ImmutableArray<ReactionFigure> figures, ImmutableArray<string?> typed)
    {
        (_words, _figures, _typed) = (words, figures, typed);
        _slips = new SlipWords(words);
    }

    /// <summary>Sentences in the order in which they are told; none where there is nothing to explain.</summary>
    /// <param name="diagnosis">What was found.</param>
    /// <param name="isPlaceTold">True: size and place of what is lacking stand elsewhere.</param>
    internal ImmutableArray<string> Of(Diagnosis diagnosis, bool isPlaceTold)
    {
        if (diagnosis is not Diagnosis.Differs differs)
        {
            return [];
        }

        Explanation[] firm = [.. differs.Explanations.Where(explanation => !explanation.IsFitted)];
        bool saysPlace = firm.Length == 0;
        Explanation[] fitted =
        [
            .. differs.Explanations.Where(explanation =>
                explanation.IsFitted && !(saysPlace && IsTheDifference(explanation.Slip, differs.Difference))),
        ];
        string[] first = firm.Length switch
        {
            0 => [Nothing(differs.Difference, isPlaceTold)],
            1 => [$"They are consistent with {Sentence(firm[0])}", Claim(differs.FalseClaimRate, "this")],
            _ when AreAllTied(firm) =>
                [AllTied(firm.Length), .. firm.Select(Item), Claim(differs.FalseClaimRate, "one of these")],
            > MostTold => [TooMany(firm.Length), .. firm[..FewTold].Select(Item)],
            _ =>
            [
                Ranked(firm.Length),
                .. firm.Select((one, index) => $"{Item(one)}{Tie(firm, index)}"),
                Claim(differs.FalseClaimRate, "one of these"),
            ],
        };
        string[] also = fitted.Length == 0
            ? []
            : ["They could also be had by, with numbers fitted to them:", .. fitted.Select(Item)];
        return [.. first, .. also, .. differs.IsEverySlipTried ? (string[])[] : [Untried]];
    }

    /// <summary>An explanation with what it gives, as "own weight left out: it would give A 10.34 kN up (stated 10.3).".</summary>
    internal string Sentence(Explanation explanation)
    {
        IEnumerable<string> figures = explanation.Predicted.Select((predicted, index) => Figure(index, predicted));
        return $"{_slips.Of(explanation.Slip)}: it would give {string.Join(", ", figures)}.";
    }

    private string Item(Explanation explanation) => $"- {Sentence(explanation)}";

    private static bool AreAllTied(Explanation[] firm) => firm[0].TiedWith.Length == firm.Length - 1;

    private static string AllTied(int count) =>
        $"They are consistent with {count} explanations, and the figures cannot tell them apart:";

    private static string Ranked(int count) => $"They are consistent with {count} explanations, the likeliest first:";

    private static string TooMany(int count) =>
        $"{count} explanations would give them, too many to tell anything: more figures, or more digits, would leave "
        + $"fewer. The first {FewTold}:";

    /// <summary>Whether a fitted load says no more than size and place of the difference do.</summary>
    private bool IsTheDifference(Slip slip, StatedDifference difference) =>
        slip is Slip.LoadMissing missing
        && difference.Place is double place
        && Length(missing.Position) == Length(place);

    private string Length(double metres) => _words.Say(metres, QuantityKind.Length);

    /// <summary>That an explanation cannot be told from one before it; nothing where there is none.</summary>
    private string Tie(Explanation[] firm, int index)
    {
        int[] before = [.. firm[index].TiedWith.Where(other => other < index)];
        return before.Length == 0
            ? ""
            : $" The figures cannot tell this from {_slips.Of(firm[before[0]].Slip)}.";
    }

    private static string Claim(double? rate, string those) => rate is double share and >= 0.005
        ? $"Of 100 unrelated errors about {Whole(100 * share)} would look like {those}."
        : $"Of 100 unrelated errors fewer than 1 would look like {those}.";

    private static string Whole(double number) => number.ToString("0", CultureInfo.InvariantCulture);

    private string Nothing(StatedDifference difference, bool isPlaceTold)
    {
        const string None = "No slip that is known here gives these figures.";
        if (isPlaceTold || difference.Vertical is not double vertical)
        {
            return None;
        }

        string more = vertical > 0 ? "more" : "less";
        string carried = $"{_words.Say(Math.Abs(vertical), QuantityKind.Force)} {more} than acts";
        return difference switch
        {
            { IsSplitOnly: true } => $"{None} Together they carry what acts, shared out differently.",
            { Place: not double } => $"{None} Together they carry {carried}.",
            { Place: double place } when place >= 0 && place <= _words.Beam.Model.Length =>
                $"{None} Together they carry {carried}, acting at {Length(place)}.",
            _ => $"{None} Together they carry {carried}, which no one load on the beam makes up for.",
        };
    }

    private string Figure(int index, double predicted)
    {
        ReactionFigure figure = _figures[index];
        string given = Directed(figure.Part, predicted);
        string stated = Directed(figure.Part, figure.Value);
        bool isSameWay = predicted * figure.Value > 0;
        string number = _typed[index] ?? _words.Number(Math.Abs(figure.Value), KindOf(figure.Part));
        return $"{Label(figure)} {given} (stated {(isSameWay ? number : stated)})";
    }

    private string Label(ReactionFigure figure) => _words.Beam.Supports[figure.Support].Label;

    private string Directed(ReactionPart part, double value) => part switch
    {
        ReactionPart.Vertical => _words.Vertical(value),
        ReactionPart.Horizontal => _words.Horizontal(value),
        ReactionPart.Moment => _words.Turning(value),
        _ => throw new UnreachableException(),
    };

    private static QuantityKind KindOf(ReactionPart part) =>
        part == ReactionPart.Moment ? QuantityKind.Moment : QuantityKind.Force;
}
