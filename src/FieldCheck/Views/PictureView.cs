using System.Drawing;
using FieldCheck.Screen;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace FieldCheck.Views;

/// <summary>The form's own view: puts a picture on the terminal, and of that only the lines that changed.</summary>
/// <remarks>
/// The toolkit's table cannot be typed into, so the grid is drawn by us. A cell costs far more to draw than to compute,
/// which is why unchanged lines are left alone.
/// </remarks>
internal sealed class PictureView : View
{
    private readonly Palette _palette;
    private readonly Func<int, int, Picture> _draw;
    private readonly Action<KeyStroke> _press;
    private Picture? _onScreen;

    /// <param name="palette">How roles look.</param>
    /// <param name="draw">Draws the picture for a width and a height.</param>
    /// <param name="press">Takes each key pressed.</param>
    internal PictureView(Palette palette, Func<int, int, Picture> draw, Action<KeyStroke> press)
    {
        _palette = palette;
        _draw = draw;
        _press = press;
        Width = Dim.Fill();
        Height = Dim.Fill();
        CanFocus = true;
    }

    /// <summary>Forgets what stands on the terminal, so that all of it is drawn anew.</summary>
    internal void DrawAll()
    {
        _onScreen = null;
        SetNeedsDraw();
    }

    // Every key is taken here, so no binding of the toolkit's, from wherever it was read, is ever reached.
    protected override bool OnKeyDown(Key key)
    {
        if (KeyReading.Of(key) is KeyStroke stroke)
        {
            _press(stroke);
        }

        return true;
    }

    protected override bool OnClearingViewport() => true;

    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (Viewport.Width < 1 || Viewport.Height < 1)
        {
            return true;
        }

        Picture picture = _draw(Viewport.Width, Viewport.Height);
        for (int y = 0; y < picture.Lines.Length; y++)
        {
            if (_onScreen is null || _onScreen.Lines.Length <= y || !SameLine(_onScreen.Lines[y], picture.Lines[y]))
            {
                DrawLine(y, picture.Lines[y]);
            }
        }

        _onScreen = picture;
        PlaceCursor(picture.Cursor);
        return true;
    }

    private static bool SameLine(PictureLine one, PictureLine other) => one.Runs.SequenceEqual(other.Runs);

    private void DrawLine(int y, PictureLine line)
    {
        Move(0, y);
        foreach (PictureRun run in line.Runs)
        {
            SetAttribute(_palette.Of(run.Role));
            AddStr(run.Text);
        }
    }

    private void PlaceCursor((int X, int Y)? place) =>
        Cursor = place is (int x, int y)
            ? new Cursor { Position = ViewportToScreen(new Point(x, y)), Style = CursorStyle.SteadyBar }
            : new Cursor();
}
