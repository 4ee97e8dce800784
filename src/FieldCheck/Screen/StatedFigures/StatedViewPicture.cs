using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.StatedFigures;

/// <summary>The Stated view between title and message line: the figures as typed, and below what comes of them.</summary>
internal static class StatedViewPicture
{
    /// <summary>How the view is laid out.</summary>
    internal static CellsOverLines Layout { get; } = new()
    {
        GapFrom = 12,

        // Every row of a few supports; of many, about half the view.
        GridHeight = (state, height) => height <= 2
            ? height
            : Math.Min(FormLayout.HeightOf(state.Sheet, FormBlock.Stated), Math.Max(height / 2, 2)),
        Lines = StatedLines.Of,
        InShort = (state, _) => StatedLines.InShort(state),
        ScrolledPast = state => state.StatedTop,
    };
}
