using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Stated;

namespace FieldCheck.Reporting.Record;

/// <summary>Stated figures, and the balances of whole sets of them, as JSON.</summary>
internal static class JsonStatedFigures
{
    /// <summary>One entry for each figure stated, in the order of the rows.</summary>
    internal static ImmutableArray<JsonStated> Of(Calculation calculation) =>
        [.. calculation.Stated.Select(figure => Of(figure, calculation.Beam!))];

    /// <summary>One entry for each whole set.</summary>
    internal static ImmutableArray<JsonStatedBalance> BalancesOf(Calculation calculation) =>
        [.. calculation.StatedBalances.Select(Of)];

    /// <summary>The unit of a component's numbers.</summary>
    internal static string Unit(ReactionComponent component) =>
        component.Kind == QuantityKind.Moment ? "Nm" : "N";

    private static JsonStated Of(StatedFigure figure, BuiltBeam beam)
    {
        ReactionComparison? compared = figure.Comparison;
        StatedAgainst? against = figure.Against;
        return new(
            figure.Label,
            figure.Component.Name,
            against is { IsCase: false } ? against.Name : figure.Entry.Combination,
            against is not null ? JsonAnswer.Word(against.Basis) : figure.Entry.Basis ?? "unknown",
            Unit(figure.Component),
            JsonFigure.Of(figure.Stated),
            Number(compared?.Computed),
            Number(compared?.Difference),
            Number(compared?.Ratio),
            Number(compared?.Allowed),
            Number(compared?.Band?.Low),
            Number(compared?.Band?.High),
            Word(figure.Verdict),
            figure.Reason,
            figure.Entry.Case,
            figure.Entry.Extreme,
            figure.Text,
            figure.Entry.Source,
            against is { Governs: Situation governs }
                ? JsonSituations.Of(beam, governs, against.IsCase ? null : against.Name, against.Factors)
                : null,
            figure.PlusOrMinus > 0 ? JsonFigure.Of(figure.PlusOrMinus) : null,
            compared?.Band is Band band ? JsonBands.Word(band.Certainty) : null);
    }

    private static JsonStatedBalance Of(StatedBalance stated)
    {
        ReactionBalance balance = stated.Balance;
        return new(
            stated.Against.IsCase ? null : stated.Against.Name,
            stated.Against.IsCase ? stated.Against.Name : null,
            JsonAnswer.Word(stated.Against.Basis),
            stated.Source,
            balance.Closes,
            Of(balance.Forces),
            stated.About,
            JsonFigure.Of(balance.About),
            balance.Moments is BalanceSide moments ? Of(moments) : null,
            balance.Lacking is BalancingLoad load
                ? new(
                    JsonFigure.Of(load.Down),
                    JsonFigure.Of(load.Position),
                    JsonFigure.Of(load.From),
                    JsonFigure.Of(load.To))
                : null);
    }

    private static JsonBalanceSide Of(BalanceSide side) => new(
        JsonFigure.Of(side.Stated),
        JsonFigure.Of(side.Loads),
        JsonFigure.Of(side.Difference),
        JsonFigure.Of(side.Allowed),
        side.Closes);

    private static double? Number(double? value) => value is double number ? JsonFigure.Of(number) : null;

    private static string Word(ReactionVerdict verdict) => verdict switch
    {
        ReactionVerdict.Agrees => "agrees",
        ReactionVerdict.Low => "low",
        ReactionVerdict.High => "high",
        ReactionVerdict.WithinBand => "within_band",
        ReactionVerdict.NotJudged => "not_judged",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
