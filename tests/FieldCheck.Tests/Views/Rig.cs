using System.Diagnostics;
using System.Drawing;
using FieldCheck.Screen;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Views;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;

namespace FieldCheck.Tests.Views;

/// <summary>The real window on the real toolkit, drawn into memory.</summary>
internal sealed class Rig : IDisposable
{
    private static readonly Dictionary<KeyName, Key> Named = new()
    {
        [KeyName.Enter] = Key.Enter,
        [KeyName.Tab] = Key.Tab,
        [KeyName.ShiftTab] = Key.Tab.WithShift,
        [KeyName.Escape] = Key.Esc,
        [KeyName.Backspace] = Key.Backspace,
        [KeyName.Delete] = Key.Delete,
        [KeyName.Up] = Key.CursorUp,
        [KeyName.Down] = Key.CursorDown,
        [KeyName.Left] = Key.CursorLeft,
        [KeyName.Right] = Key.CursorRight,
        [KeyName.Home] = Key.Home,
        [KeyName.End] = Key.End,
        [KeyName.PageUp] = Key.PageUp,
        [KeyName.PageDown] = Key.PageDown,
    };

    private readonly VirtualTimeProvider _time = new();
    private readonly IApplication _application;
    private readonly SessionToken _session;

    internal Rig(
        ScreenState state,
        int width = 80,
        int height = 24,
        bool hasColour = true,
        bool isUtf8 = true,
        Func<Effect, ScreenEvent?>? perform = null)
    {
        _application = Application.Create(_time);
        _application.Init(DriverRegistry.Names.ANSI);
        _application.Driver!.Force16Colors = true;
        _application.Driver!.SetScreenSize(width, height);
        Window = new ScreenWindow(state, new Palette(state.Preferences.Theme, hasColour, isUtf8), effect =>
        {
            Effects.Add(effect);
            return perform?.Invoke(effect);
        });
        _session = _application.Begin(Window)!;
        Draw();
    }

    internal ScreenWindow Window { get; }

    internal List<Effect> Effects { get; } = [];

    /// <summary>The screen as text, without the line end after its last line.</summary>
    internal string Text => _application.Driver!.ToString()!.ReplaceLineEndings("\n").TrimEnd('\n');

    /// <summary>The screen with its escape codes.</summary>
    internal string Codes => _application.Driver!.ToAnsi();

    /// <summary>The place of the terminal's cursor; null while it is hidden.</summary>
    internal (int X, int Y)? Cursor => Window.SubViews.Single().Cursor is { IsVisible: true, Position: Point place }
        ? (place.X, place.Y)
        : null;

    public void Dispose()
    {
        _application.End(_session);
        Window.Dispose();
        _application.Dispose();
    }

    /// <summary>Binds a key to the toolkit's own way of leaving, as a configuration file of its may.</summary>
    internal void BindToQuit(Key key) => _application.Keyboard.KeyBindings.Add(key, Command.Quit);

    internal void Press(params Key[] keys)
    {
        foreach (Key key in keys)
        {
            _application.InjectKey(key);
        }

        Draw();
    }

    /// <summary>Presses keys as the toolkit would deliver them from a terminal; a paste comes as a whole.</summary>
    internal void Press(IEnumerable<KeyStroke> strokes)
    {
        foreach (KeyStroke stroke in strokes)
        {
            if (stroke is KeyStroke.Paste)
            {
                Window.Happen(new ScreenEvent.Key(stroke));
            }
            else
            {
                foreach (Key key in KeysOf(stroke))
                {
                    _application.InjectKey(key);
                }
            }
        }

        Draw();
    }

    internal void Type(string text) => Press([.. text.Select(character => new Key(character))]);

    internal void Resize(int width, int height)
    {
        _application.Driver!.SetScreenSize(width, height);
        Draw();
        Draw();
    }

    /// <summary>Turns the wheel down by a notch, or presses the left button, at a place of the screen.</summary>
    internal void Mouse(MouseFlags what, int x, int y)
    {
        _application.InjectMouse(new Mouse { Flags = what, ScreenPosition = new Point(x, y) });
        Draw();
    }

    /// <summary>Lets time pass, and what was due in it happen.</summary>
    internal void Pass(TimeSpan time)
    {
        _time.Advance(time);
        _application.TimedEvents!.RunTimers();
        Draw();
    }

    // A terminal sends the code points of a character one by one.
    private static IEnumerable<Key> KeysOf(KeyStroke stroke) => stroke switch
    {
        KeyStroke.Text text => text.Grapheme.EnumerateRunes().Select(rune => new Key(rune.Value)),
        KeyStroke.Control control => [new Key(control.Letter).WithCtrl],
        KeyStroke.Named { Key: >= KeyName.F1 and KeyName function } => [new Key(KeyCode.F1 + (uint)(function - KeyName.F1))],
        KeyStroke.Named named => [Named[named.Key]],
        _ => throw new UnreachableException(),
    };

    private void Draw() => _application.LayoutAndDraw(false);
}
