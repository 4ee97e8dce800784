using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Sheet.Stated;

/// <summary>Strikes the balance of every whole set of stated figures: all vertical reactions of one answer.</summary>
internal static class StatedBalances
{
    internal static ImmutableArray<StatedBalance> Of(ImmutableArray<StatedFigure> figures, BuiltBeam beam) =>
    [
        .. figures
            .Where(figure => figure.Against is { Extreme: null })
            .GroupBy(figure => (figure.Against!.IsCase, figure.Against.Name))
            .SelectMany(group => OfAnswer([.. group], beam)),
    ];

    /// <summary>One set; where a support is stated twice, one for each source that states them all.</summary>
    private static IEnumerable<StatedBalance> OfAnswer(StatedFigure[] figures, BuiltBeam beam) =>
        figures.DistinctBy(Part).Count() == figures.Length
            ? OfSet(figures, null, beam)
            : figures.GroupBy(figure => figure.Entry.Source)
                .Where(group => group.DistinctBy(Part).Count() == group.Count())
                .SelectMany(group => OfSet([.. group], group.Key, beam));

    private static IEnumerable<StatedBalance> OfSet(StatedFigure[] figures, string? source, BuiltBeam beam)
    {
        if (Stated(figures, ReactionComponent.Vertical, beam) is not { IsEmpty: false } verticals)
        {
            yield break;
        }

        NamedSupport about = beam.Supports.First(one => ReactionComponent.Vertical.IsGivenBy(one.Support));
        StatedAgainst against = figures[0].Against!;
        yield return new StatedBalance(
            against,
            source,
            about.Label,
            ReactionBalance.Of(
                verticals,
                Stated(figures, ReactionComponent.Moment, beam),
                against.Response.Proof,
                about.Support.Position),
            figures.All(figure => figure.Verdict is ReactionVerdict.Agrees or ReactionVerdict.WithinBand)
                && figures.Any(figure => figure.Verdict == ReactionVerdict.WithinBand));
    }

    /// <summary>What is stated of every support that can give a component; null where one of them is missing.</summary>
    private static ImmutableArray<StatedForce>? Stated(
        StatedFigure[] figures, ReactionComponent component, BuiltBeam beam)
    {
        StatedFigure[] stated = [.. figures.Where(figure => figure.Component == component)];
        bool isWhole = Enumerable.Range(0, beam.Supports.Length)
            .Where(support => component.IsGivenBy(beam.Supports[support].Support))
            .All(support => stated.Any(figure => figure.Support == support));
        return isWhole
            ?
            [
                .. stated.Select(figure => new StatedForce(
                    beam.Supports[figure.Support].Support.Position,
                    figure.Stated,
                    figure.AsWritten,
                    figure.Comparison!.Value.Allowed)),
            ]
            : null;
    }

    private static (int Support, ReactionComponent Component) Part(StatedFigure figure) =>
        (figure.Support, figure.Component);
}
