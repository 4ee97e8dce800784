using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen.Sections;

/// <summary>The Section view between title and message line: what the beam is made of and held to, and below the checks.</summary>
internal static class SectionViewPicture
{
    /// <summary>How the view is laid out.</summary>
    internal static CellsOverLines Layout { get; } = new()
    {
        GapFrom = 16,
        GridHeight = (state, height) => CellsOverLines.HeightOfEveryRow(state, ScreenView.Section, height),
        Lines = SectionLines.Of,
        Beside = SectionLines.NotChecked,
        InShort = SectionLines.InShort,
        ScrolledPast = state => state.SectionTop,
    };
}
