using System.Collections.Immutable;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen.FormGrid;

/// <summary>All results on a page that scrolls, for when the panel cannot hold them.</summary>
internal static class AllResults
{
    private const int Narrowest = 30;
    private const int MostLines = 100_000;

    /// <summary>The lines, every reaction, peak and remark among them.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static ImmutableArray<string> Lines(ScreenState state, int width) => state.Shown.Beam is null
        ? ResultsPicture.Unread(state, width)
        : ResultsPanel.Lines(
            state.Shown, Math.Max(width, Narrowest), MostLines, state.Age, state.CombinationShown);

    /// <summary>The page.</summary>
    /// <param name="state">The state.</param>
    /// <param name="results">Which line the person is on.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Picture(ScreenState state, Overlay.Results results, int width, int height)
    {
        ImmutableArray<string> lines = Lines(state, width - 2);
        int choice = Math.Min(results.Choice, lines.Length - 1);
        return ListPicture.Of("All results", lines, choice, (null, "> "), [], width, height);
    }

    internal static ScreenStep Press(ScreenState state, Overlay.Results results, KeyStroke stroke)
    {
        // How wide the screen is shows only when it is drawn: the narrowest page has the most lines.
        int most = Lines(state, Narrowest).Length;
        return (state with { Overlay = new Overlay.Results(OverlayKeys.Moved(results.Choice, most, stroke)) }).Step();
    }
}
