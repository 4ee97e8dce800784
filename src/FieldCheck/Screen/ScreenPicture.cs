using System.Collections.Immutable;

namespace FieldCheck.Screen;

/// <summary>Draws the screen as text of a given size. It shrinks, and never refuses.</summary>
internal static class ScreenPicture
{
    private const int LeastWithTitle = 6;
    private const int LeastWithKeys = 4;
    private const int LeastWithMessage = 3;

    /// <summary>Draws a state of the screen.</summary>
    /// <param name="state">The screen.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Of(ScreenState state, int width, int height)
    {
        int title = height >= LeastWithTitle ? 1 : 0;
        int message = height >= LeastWithMessage ? 1 : 0;
        int keys = height >= LeastWithKeys ? 1 : 0;
        Picture body = Body(state, width, height - title - message - keys);
        (int X, int Y)? cursor = body.Cursor is (int x, int y) ? (x, y + title) : null;
        (PictureLine line, int? caret) = Message(state, width);
        ImmutableArray<PictureLine> lines =
        [
            .. Enumerable.Repeat(TitleLine.Of(state, width, BeamViewPicture.IsSmall(width, height)), title),
            .. body.Lines,
            .. Enumerable.Repeat(line, message),
            .. Enumerable.Repeat(KeyLine.Line(state, width), keys),
        ];
        return new Picture(lines, caret is int column && message > 0 ? (column, title + body.Lines.Length) : cursor);
    }

    private static Picture Body(ScreenState state, int width, int height)
    {
        if (OverlayPicture.Of(state, width, height) is Picture over)
        {
            return over;
        }

        Picture view = state.View == ScreenView.Beam
            ? BeamViewPicture.Of(state, width, height)
            : new Picture(PlotsViewPicture.Of(state, width, height), null);
        return state.Overlay is Overlay.Menu menu ? MenuPicture.Over(state, menu, view, width) : view;
    }

    private static (PictureLine Line, int? Caret) Message(ScreenState state, int width)
    {
        (string Ask, LineText Line)? typing = state.Overlay switch
        {
            Overlay.NameLine name => ("Save as: ", name.Name),
            Overlay.PlaceLine place => ("Read off at: ", place.Text),
            _ => null,
        };
        if (typing is (string ask, LineText line) && state.Notice is null)
        {
            int room = Math.Max(width - ask.Length - 1, 1);
            (string seen, int column) = CaretWindow.Of(line.Text, line.Caret, room);
            PictureLine typed = new LineWriter(width).Add(ask, Role.Accent).Add(seen).End();
            return (typed, Math.Min(ask.Length + column, width - 1));
        }

        if (state.Overlay is Overlay overlay && QuestionKeys.Words(state, overlay) is (string question, _))
        {
            return (LineWriter.Line(question, width, Role.Warn), Math.Min(TextColumns.Of(question) + 1, width - 1));
        }

        Notice notice = MessageLine.Of(state);
        return (LineWriter.Line(notice.Text, width, notice.Role), null);
    }
}
