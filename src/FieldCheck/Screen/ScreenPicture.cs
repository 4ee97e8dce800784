using System.Collections.Immutable;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Workings;

namespace FieldCheck.Screen;

/// <summary>Draws the screen as text of a given size. It shrinks, and never refuses.</summary>
internal static class ScreenPicture
{
    private const int LeastWithTitle = 6;
    private const int LeastWithKeys = 4;
    private const int LeastWithMessage = 3;
    private const int LeastWithLongMessage = 12;
    private const int MostOverTheView = 3;

    /// <summary>Draws a state of the screen.</summary>
    /// <param name="state">The screen.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Of(ScreenState state, int width, int height)
    {
        int title = height >= LeastWithTitle ? 1 : 0;
        int message = height >= LeastWithMessage ? 1 : 0;
        int keys = height >= LeastWithKeys ? 1 : 0;
        state = WorkingKeys.Resized(state, (width, height));
        Picture body = Body(state, width, BodyHeight(height));
        (int X, int Y)? cursor = body.Cursor is (int x, int y) ? (x, y + title) : null;
        (ImmutableArray<PictureLine> told, int? caret) = MessagePicture.Of(state, width, RoomForMessage(body, height));
        int over = Math.Max(told.Length - 1, 0);
        ImmutableArray<PictureLine> lines =
        [
            .. Enumerable.Repeat(TitleLine.Of(state, width, BeamViewPicture.IsSmall(width, height)), title),
            .. body.Lines[..(body.Lines.Length - over * message)],
            .. message > 0 ? told : [],
            .. Enumerable.Repeat(KeyLine.Line(state, width), keys),
        ];
        return new Picture(lines, caret is int column && message > 0 ? (column, title + body.Lines.Length) : cursor);
    }

    /// <summary>The lines that a view has of a window.</summary>
    /// <param name="height">Lines of the window; 1 or more.</param>
    internal static int BodyHeight(int height) => height switch
    {
        >= LeastWithTitle => height - 3,
        >= LeastWithKeys => height - 2,
        >= LeastWithMessage => height - 1,
        _ => height,
    };

    // A long message reaches up over the view rather than being cut, for it ends with what would be right; where the
    // person is, stays to be seen.
    private static int RoomForMessage(Picture body, int height) => height < LeastWithLongMessage
        ? 1
        : 1 + Math.Clamp(body.Lines.Length - 1 - (body.Cursor?.Y ?? 0), 0, MostOverTheView);

    private static Picture Body(ScreenState state, int width, int height)
    {
        if (OverlayPicture.Of(state, width, height) is Picture over)
        {
            return over;
        }

        Picture view = ScreenViews.Of(state.View).Draw(state, width, height);
        return state.Overlay is Overlay.Menu menu ? MenuPicture.Over(state, menu, view, width) : view;
    }
}
