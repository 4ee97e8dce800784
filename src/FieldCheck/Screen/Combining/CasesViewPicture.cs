using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen.Combining;

/// <summary>The Cases view between title and message line: what is combined, and below the envelopes of it.</summary>
internal static class CasesViewPicture
{
    /// <summary>How the view is laid out.</summary>
    internal static CellsOverLines Layout { get; } = new()
    {
        GapFrom = 16,
        GridHeight = (state, height) => CellsOverLines.HeightOfEveryRow(state, ScreenView.Cases, height),
        Lines = EnvelopeLines.Of,
        InShort = EnvelopeLines.InShort,
        ScrolledPast = state => state.CasesTop,
    };
}
