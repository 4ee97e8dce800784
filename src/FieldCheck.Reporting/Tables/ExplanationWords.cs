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

    private readonly BeamWords _words;
    private readonly SlipWords _slips;
    private readonly ImmutableArray<ReactionFigure> _figures;

    /// <summary>The words for one set of figures.</summary>
    /// <param name="words">The beam's words.</param>
    /// <param name="figures">The figures, as the diagnosis has them.</param>
    internal ExplanationWords(BeamWords words, ImmutableArray<ReactionFigure> figures)
    {
        (_words, _figures) = (words, figures);
        _slips = new SlipWords(words);
    }

    /// <summary>Sentences in the order in which they are told; none where there is nothing to explain.</summary>
    internal ImmutableArray<string> Of(Diagnosis diagnosis)
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
            0 => [Nothing(differs.Difference)],
            1 => [$"They are consistent with {Sentence(firm[0])}", .. Claims(differs.FalseClaimRate)],
            _ when AreAllTied(firm) => [AllTied(firm.Length), .. firm.Select(one => $"- {Sentence(one)}")],
            > MostTold => [TooMany(firm.Length), .. firm[..FewTold].Select(one => $"- {Sentence(one)}")],
            _ => [Ranked(firm.Length), .. firm.Select((one, index) => $"- {Sentence(one)}{Tie(firm, index)}")],
        };
        string[] also = fitted.Length == 0
            ? []
            : ["They could also be had by, with numbers fitted to them:", .. fitted.Select(one => $"- {Sentence(one)}")];
        return [.. first, .. also];
    }

    /// <summary>An explanation with what it gives, as "own weight left out: A 10.34 kN up (stated 10.30).".</summary>
    internal string Sentence(Explanation explanation)
    {
        IEnumerable<string> figures = _figures.Select((figure, index) => Figure(figure, explanation.Predicted[index]));
        return $"{_slips.Of(explanation.Slip)}: it would give {string.Join(", ", figures)}.";
    }

    private static bool AreAllTied(Explanation[] firm) => firm[0].TiedWith.Length == firm.Length - 1;

    private static string AllTied(int count) =>
        $"They are consistent with {count} explanations that give the same figures; the figures cannot tell them apart:";

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
            : $" The same figures as for {_slips.Of(firm[before[0]].Slip)}: they cannot tell the two apart.";
    }

    private static string[] Claims(double? rate) => rate switch
    {
        null => [],
        < 0.005 => ["Of 100 unrelated errors fewer than 1 would look like this."],
        double share => [$"Of 100 unrelated errors about {Whole(100 * share)} would look like this."],
    };

    private static string Whole(double number) => number.ToString("0", CultureInfo.InvariantCulture);

    private string Nothing(StatedDifference difference)
    {
        string none = "No slip that is known here gives these figures.";
        if (difference.Place is not double place)
        {
            string each = string.Join(", ", _figures.Select((figure, i) => Off(figure, difference.Each[i])));
            return $"{none} Off by: {each}.";
        }

        string size = _words.Say(Math.Abs(difference.Vertical), QuantityKind.Force);
        string more = difference.Vertical > 0 ? "more" : "less";
        string where = place < 0 || place > _words.Beam.Model.Length
            ? "acting off the beam"
            : $"acting at {Length(place)}";
        return $"{none} Together they carry {size} {more} than acts, {where}.";
    }

    private string Figure(ReactionFigure figure, double predicted)
    {
        string given = Directed(figure.Part, predicted);
        string stated = Directed(figure.Part, figure.Value);
        bool isSameWay = predicted * figure.Value > 0;
        string beside = isSameWay ? _words.Number(Math.Abs(figure.Value), KindOf(figure.Part)) : stated;
        return $"{Label(figure)} {given} (stated {beside})";
    }

    private string Off(ReactionFigure figure, double by) =>
        $"{Label(figure)} {_words.SaySigned(by, KindOf(figure.Part))}";

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
