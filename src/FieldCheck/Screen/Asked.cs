using System.Collections.Immutable;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen;

/// <summary>The cells that a preset asks for.</summary>
internal static class Asked
{
    /// <summary>The first of them; null where none is asked for.</summary>
    /// <param name="document">The beam.</param>
    internal static FormPlace? First(BeamDocument document) => Of(document).FirstOrDefault();

    /// <summary>The one after a cell; null after the last, and where the cell is none of them.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="place">The cell.</param>
    internal static FormPlace? After(BeamDocument document, FormPlace place)
    {
        ImmutableArray<FormPlace> asked = Of(document);
        int index = asked.IndexOf(place);
        return index >= 0 && index + 1 < asked.Length ? asked[index + 1] : null;
    }

    private static ImmutableArray<FormPlace> Of(BeamDocument document) =>
    [
        .. document.Ask
            .Where(key => DocumentCells.Find(document, key) is not null)
            .Select(key => FormCells.PlaceOf(document, key))
            .OfType<FormPlace>()
            .Distinct(),
    ];
}
