using System.Collections.Immutable;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen.Overlays;

/// <summary>Draws the settings over the whole of a view.</summary>
internal static class SettingsPicture
{
    private const int Words = 34;

    /// <summary>The picture.</summary>
    /// <param name="state">The state.</param>
    /// <param name="settings">The settings, with the line the person is on.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Of(ScreenState state, Overlay.Settings settings, int width, int height)
    {
        ImmutableArray<SettingsLine> lines = SettingsLines.Of(state.Preferences);
        return ListPicture.Of(
            "Settings   kept for the next start",
            [.. lines.Select(line => $"{TextColumns.FitWithMark(line.Words, Words)}  {line.Value}")],
            settings.Choice,
            (null, "> " + TextColumns.FitWithMark(lines[settings.Choice].Words, Words) + "  "),
            ["Keys are bound in the same file by hand; fieldcheck --paths says where it lies."],
            width,
            height);
    }
}
