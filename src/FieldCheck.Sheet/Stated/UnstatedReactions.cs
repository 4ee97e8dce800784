using System.Collections.Immutable;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Sheet.Stated;

/// <summary>Finds what the beam does to its supports, under what is stated, and no figure speaks of.</summary>
internal static class UnstatedReactions
{
    /// <summary>What lies below this share of the largest reaction is rounding [–].</summary>
    private const double Rounding = 1e-9;

    /// <summary>Of each support, component and sense the greatest, in the order of the supports.</summary>
    internal static ImmutableArray<UnstatedReaction> Of(
        ImmutableArray<StatedFigure> figures, StatedComparables comparables, BuiltBeam beam)
    {
        StatedFigure[] judged = [.. figures.Where(figure => figure.Against is not null)];
        IEnumerable<UnstatedReaction> found =
            from answer in judged.SelectMany(figure => comparables.Behind(figure)).DistinctBy(One)
            let speaking = judged.Where(figure => comparables.Behind(figure).Any(answer.IsSameAs)).ToList()
            from support in Enumerable.Range(0, beam.Supports.Length)
            from component in ReactionComponent.All
            let value = component.Value(answer.Response.Reactions[support])
            where IsWorthStating(component, value, answer)
            let row = speaking.Find(figure => figure.Support == support) ?? speaking[0]
            where Math.Abs(value) > StatedAllowance.Of(row.Entry, component, 0, answer, beam).For(value)
            where !figures.Any(figure => figure.Support == support && figure.Component == component
                && Covers(figure, answer, value, comparables))
            select new UnstatedReaction(support, beam.Supports[support].Label, component, value, answer);
        return
        [
            .. found.GroupBy(one => (one.Support, one.Component, Math.Sign(one.Value)))
                .Select(group => group.MaxBy(one => Math.Abs(one.Value))!)
                .OrderBy(one => one.Support)
                .ThenBy(one => ReactionComponent.All.IndexOf(one.Component)),
        ];
    }

    /// <summary>A push across is what anyone expects of a support; the rest has to be said.</summary>
    private static bool IsWorthStating(ReactionComponent component, double value, StatedAgainst answer)
    {
        double largest = answer.Response.Reactions.Max(reaction => Math.Abs(component.Value(reaction)));
        double forces = answer.Response.Reactions
            .Max(reaction => Math.Max(Math.Abs(reaction.Vertical), Math.Abs(reaction.Horizontal)));
        bool isNoise = Math.Abs(value) <= Rounding * (component == ReactionComponent.Moment ? largest : forces);
        return !isNoise && (component != ReactionComponent.Vertical || value < 0);
    }

    /// <summary>Whether a figure states it; one that is not judged is stated all the same.</summary>
    private static bool Covers(
        StatedFigure figure, StatedAgainst answer, double value, StatedComparables comparables) =>
        figure.Against switch
        {
            null => true,
            { Extreme: string extreme } => extreme == (value > 0 ? "max" : "min")
                && comparables.Behind(figure).Any(answer.IsSameAs),
            StatedAgainst named => named.IsSameAs(answer),
        };

    private static (bool IsCase, string Name) One(StatedAgainst answer) => (answer.IsCase, answer.Name);
}
