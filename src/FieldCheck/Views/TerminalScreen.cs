using FieldCheck.CommandLine;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Sheet;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace FieldCheck.Views;

/// <summary>The form on a real terminal.</summary>
internal static class TerminalScreen
{
    // The toolkit has every movement reported. Without reports the terminal's own way of marking text works.
    private const string WithoutMouse = "\x1b[?1003l\x1b[?1015l\x1b[?1006l";
    private const string ClicksOnly = "\x1b[?1003l\x1b[?1015l\x1b[?1000h\x1b[?1006h";

    private const int UnseenWidth = 120;
    private const int UnseenHeight = 40;

    /// <summary>Opens the form and comes back when it is left.</summary>
    /// <param name="start">What to open with.</param>
    /// <returns>The exit status.</returns>
    internal static int Run(StartRequest start)
    {
        // Beside the toolkit's start, which takes as long; neither waits for the other.
        Task<ScreenState> state = Task.Run(() => StateAt(start));
        _ = DrawUnseen(state);
        ToolkitIsolation.LoadWithoutConfiguration();
        ScreenEffects effects = new(start);
        try
        {
            return RunIsolated(start, state, effects);
        }
        catch (Exception)
        {
            effects.SayWhereWorkIs();
            throw;
        }
    }

    /// <summary>The screen that a start asks for.</summary>
    internal static ScreenState StateAt(StartRequest start)
    {
        BeamSolver solver = new();
        BeamOrigin origin = BeamOrigin.OfStart(start.Path, start.Origin);
        return ScreenState.Start(start.Document, origin, document => Calculation.Run(document, start.Catalogue, solver, isFollowed: true)) with
        {
            Preferences = start.Preferences,
            IsAsciiOnly = !start.IsUtf8,
        };
    }

    // Nobody waits for it: what draws is compiled by then, or nearly so.
    private static async Task DrawUnseen(Task<ScreenState> state) =>
        _ = ScreenPicture.Of(await state.ConfigureAwait(false), UnseenWidth, UnseenHeight);

    private static int RunIsolated(StartRequest start, Task<ScreenState> state, ScreenEffects effects)
    {
        // Declared before the toolkit, so disposed of after it: the toolkit's own end may hang on a line that is gone.
        using TerminalGuard guard = new(TerminalModes.Now());
        using IApplication application = Application.Create();
        application.Init(OperatingSystem.IsWindows() ? DriverRegistry.Names.WINDOWS : DriverRegistry.Names.ANSI);
        application.Driver!.Force16Colors = true;
        LoopPace.Keep(application, start.Clock);

        application.Driver!.WriteRaw(start.Preferences.HasMouse ? ClicksOnly : WithoutMouse);
        Palette palette = new(start.Preferences.Theme, HasColour: !start.NoColor, start.IsUtf8);
        using ScreenWindow window = new(state.GetAwaiter().GetResult(), palette, effects.Perform);
        guard.Watch(
            application,
            keep: () => effects.KeepAtOnce(window.State),
            stop: () => window.Happen(new ScreenEvent.Stopped()),
            lastWords: effects.SayWhereWorkIs);
        application.Paste += (_, paste) =>
        {
            window.Happen(new ScreenEvent.Key(new KeyStroke.Paste(paste.Text)));
            paste.Handled = true;
        };
        effects.RememberStart();
        if (start.Problem is string problem)
        {
            window.Happen(new ScreenEvent.Told(problem));
        }

        if (effects.FindLeftBehind() is ScreenEvent offer)
        {
            window.Happen(offer);
        }

        try
        {
            application.Run(window);
        }
        catch (Exception)
        {
            effects.KeepAtOnce(window.State);
            throw;
        }

        return guard.Status;
    }
}
