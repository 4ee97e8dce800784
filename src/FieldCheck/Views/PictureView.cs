using System.Drawing;
using FieldCheck.Screen;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace FieldCheck.Views;

/// <summary>The form's own view: puts a picture on the terminal, and of that only what changed.</summary>
/// <remarks>
/// The toolkit's table cannot be typed into, so the grid is drawn by us. A cell costs far more to draw than to compute,
/// which is why unchanged cells are left alone.
/// </remarks>
internal sealed class PictureView : View
{
    private readonly Func<Palette> _palette;
    private readonly Func<int, int, Picture> _draw;
    private readonly Action<ScreenEvent> _happen;
    private (Palette Palette, Picture Picture)? _onScreen;

    /// <param name="palette">How roles look now.</param>
    /// <param name="draw">Draws the picture for a width and a height.</param>
    /// <param name="happen">Takes each key and click.</param>
    internal PictureView(Func<Palette> palette, Func<int, int, Picture> draw, Action<ScreenEvent> happen)
    {
        _palette = palette;
        _draw = draw;
        _happen = happen;
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
            _happen(new ScreenEvent.Key(stroke));
        }

        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Flags.HasFlag(MouseFlags.WheeledUp) || mouse.Flags.HasFlag(MouseFlags.WheeledDown))
        {
            KeyName row = mouse.Flags.HasFlag(MouseFlags.WheeledUp) ? KeyName.Up : KeyName.Down;
            _happen(new ScreenEvent.Key(new KeyStroke.Named(row)));
        }
        else if (mouse is { Position: Point at } && mouse.Flags.HasFlag(MouseFlags.LeftButtonPressed)
            && _onScreen?.Picture.TargetAt(at.X, at.Y) is LinkTarget target)
        {
            _happen(new ScreenEvent.Click(target));
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
        Palette palette = _palette();
        PictureLine[] before = _onScreen?.Palette == palette ? [.. _onScreen.Value.Picture.Lines] : [];
        for (int y = 0; y < picture.Lines.Length; y++)
        {
            foreach ((int column, PictureRun run) in LineChanges.Of(before.ElementAtOrDefault(y), picture.Lines[y]))
            {
                Move(column, y);
                SetAttribute(palette.Of(run.Role));
                AddStr(palette.Text(run.Text));
            }
        }

        _onScreen = (palette, picture);
        PlaceCursor(picture.Cursor);
        return true;
    }

    private void PlaceCursor((int X, int Y)? place) =>
        Cursor = place is (int x, int y)
            ? new Cursor { Position = ViewportToScreen(new Point(x, y)), Style = CursorStyle.SteadyBar }
            : new Cursor();
}
