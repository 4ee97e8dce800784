using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Sheet.Findings;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Stated;

namespace FieldCheck.Reporting.Tables;

/// <summary>Stated figures in words: what each is, beside what, and by how much.</summary>
/// <param name="words">The words of the beam.</param>
internal sealed class StatedWords(BeamWords words)
{
    /// <summary>Which figure it is, as "A vertical".</summary>
    internal static string Name(StatedFigure figure) => $"{figure.Label} {figure.Component.Name}";

    /// <summary>The figure as typed and its sense; as read too where that is not plain to see.</summary>
    internal string Stated(StatedFigure figure)
    {
        string typed = PlainAscii.Of(figure.Text.Trim());
        return NumberTyped(figure) is null ? $"{typed}, read as {Directed(figure.Component, figure.Stated)}"
            : figure.Stated == 0 ? typed
            : $"{typed} {Way(figure.Component, figure.Stated)}";
    }

    /// <summary>Its number as typed, where that is plainly one of the unit that results are shown in; else null.</summary>
    internal string? NumberTyped(StatedFigure figure)
    {
        string typed = PlainAscii.Of(figure.Text.Trim());
        string unit = $" {words.Unit(figure.Component.Kind)}";
        bool isPlain = figure.Stated >= 0 && typed.EndsWith(unit, StringComparison.Ordinal)
            && char.IsDigit(typed[0]) && typed.Count(c => c == ' ') == 1;
        return isPlain ? typed[..^unit.Length] : null;
    }

    /// <summary>What stands beside a figure that is judged, item by item.</summary>
    internal ImmutableArray<string> Beside(StatedFigure figure, ReactionComparison compared)
    {
        QuantityKind kind = figure.Component.Kind;
        string share = compared.Ratio is double ratio && double.IsFinite(ratio)
            ? $" ({words.SaySigned(ratio, QuantityKind.Share)})"
            : "";
        return
        [
            $"computed {Directed(figure.Component, compared.Computed)}",
            $"difference {words.SaySigned(compared.Difference, kind)}{share}",
            $"allowed {words.Say(compared.Allowed, kind)}{OfItStated(figure)}",
            .. compared.Band is Band band
                ?
                (string[])[
                    $"band {words.SaySigned(band.Low, kind)} to {words.SaySigned(band.High, kind)}, "
                        + BandWords.Word(band.Certainty),
                ]
                : [],
            .. compared.Band is null && figure.Against!.Governs is not null && words.Beam.IsUncertain
                ? (string[])["plus or minus not counted"]
                : [],
            .. Answer(figure.Against!),
        ];
    }

    private string OfItStated(StatedFigure figure) => figure.PlusOrMinus > figure.HalfDigit
        ? $" ({words.Say(figure.PlusOrMinus, figure.Component.Kind)} of it the plus or minus stated)"
        : "";

    /// <summary>A pull, thrust or moment that nobody states.</summary>
    internal ImmutableArray<string> Beside(UnstatedReaction unstated) =>
        [$"computed {Directed(unstated.Component, unstated.Value)}", .. Answer(unstated.Against)];

    /// <summary>Where all of the figures are stated; null where they name several places, or some of them none.</summary>
    internal static string? OneSource(ImmutableArray<StatedFigure> figures) =>
        figures.Select(figure => figure.Entry.Source).Distinct().ToList() is [string source]
            ? PlainAscii.Of(source)
            : null;

    /// <summary>The verdicts in few words, gravest first, as "LOW at B, HIGH at A"; the good one alone if all agree.</summary>
    internal static string InShort(ImmutableArray<StatedFigure> figures, ImmutableArray<UnstatedReaction> unstated)
    {
        string[] amiss =
        [
            .. ((ReactionVerdict[])[ReactionVerdict.Low, ReactionVerdict.High, ReactionVerdict.NotJudged])
                .Select(verdict => At(verdict, figures)).OfType<string>(),
            .. unstated.IsEmpty
                ? (string[])[]
                : [$"not all stated at {BeamWords.List([.. unstated.Select(one => one.Label).Distinct()])}"],
        ];
        return amiss.Length > 0
            ? string.Join(", ", amiss)
            : At(ReactionVerdict.WithinBand, figures) ?? VerdictWords.Of(ReactionVerdict.Agrees);
    }

    /// <summary>Which answer a figure is held against: nothing where there is only one.</summary>
    internal ImmutableArray<string> Answer(StatedAgainst against)
    {
        string name = TypedLetters.Name(words.Beam, against.Name);
        string basis = BasisWords.Of(against.Basis);
        IEnumerable<string> loads = against.Governs is Situation governs
            ? SituationWords.Loads(words.Beam, governs, against.Factors).Select(words.Sentence)
            : [];
        return against switch
        {
            { Governs: not null, IsCase: true } =>
                [$"{(against.Extreme == "max" ? "greatest" : "least")} of case {name} alone", .. loads],
            { Governs: not null } =>
                [$"{(against.Extreme == "max" ? "greatest" : "least")} over all of the {basis} figures: {name}", .. loads],
            { IsCase: true } => [$"case {name} alone"],
            { Extreme: "max" } => [$"greatest of the {basis} combinations: {name}"],
            { Extreme: not null } => [$"least of the {basis} combinations: {name}"],
            _ when words.Beam.Model.Combinations.Length > 1 => [$"under {name}"],
            _ => [],
        };
    }

    private static string? At(ReactionVerdict verdict, ImmutableArray<StatedFigure> figures)
    {
        string[] labels = [.. figures.Where(one => one.Verdict == verdict).Select(one => one.Label).Distinct()];
        return labels.Length == 0 ? null : $"{VerdictWords.Of(verdict)} at {BeamWords.List(labels)}";
    }

    private string Directed(ReactionComponent component, double value) =>
        component == ReactionComponent.Vertical ? words.Vertical(value)
        : component == ReactionComponent.Horizontal ? words.Horizontal(value)
        : words.Turning(value);

    // The abbreviation that a moment has elsewhere on the page.
    private string Way(ReactionComponent component, double value) =>
        component == ReactionComponent.Moment && !words.IsSpoken
            ? (value > 0 ? "ccw" : "cw")
            : component.Way(value);
}
