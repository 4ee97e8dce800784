using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Stated;

/// <summary>What the computed reaction beside a stated one may be.</summary>
internal static class StatedBand
{
    /// <returns>The band; null where nothing is uncertain, or none can be given.</returns>
    internal static Band? Of(
        ToleranceBands? bands, StatedFigure figure, StatedAgainst against, BeamModel model)
    {
        // The bands are those of whole combinations and cases.
        if (bands is null || against.Governs is not null)
        {
            return null;
        }

        ReactionBands? reaction = against.IsCase
            ? bands.ReactionOfCase(IndexOf(model.Cases.Select(one => one.Name), against.Name), figure.Support)
            : bands.Reaction(IndexOf(model.Combinations.Select(one => one.Name), against.Name), figure.Support);
        return reaction?.Of(figure.Component.Part);
    }

    private static int IndexOf(IEnumerable<string> names, string name) => names.ToList().IndexOf(name);
}
