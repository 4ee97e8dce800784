using FieldCheck.Screen;
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
    private readonly VirtualTimeProvider _time = new();
    private readonly IApplication _application;
    private readonly SessionToken _session;

    internal Rig(ScreenState state, int width = 80, int height = 24, bool hasColour = true)
    {
        _application = Application.Create(_time);
        _application.Init(DriverRegistry.Names.ANSI);
        _application.Driver!.Force16Colors = true;
        _application.Driver!.SetScreenSize(width, height);
        Window = new ScreenWindow(state, new Palette(hasColour), effect =>
        {
            Effects.Add(effect);
            return null;
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

    internal void Type(string text) => Press([.. text.Select(character => new Key(character))]);

    internal void Resize(int width, int height)
    {
        _application.Driver!.SetScreenSize(width, height);
        Draw();
        Draw();
    }

    /// <summary>Lets time pass, and what was due in it happen.</summary>
    internal void Pass(TimeSpan time)
    {
        _time.Advance(time);
        _application.TimedEvents!.RunTimers();
        Draw();
    }

    private void Draw() => _application.LayoutAndDraw(false);
}
