using FieldCheck.Screen;
using Terminal.Gui.Views;

namespace FieldCheck.Views;

/// <summary>The one window: hands keys to the screen's update, performs its effects and shows its picture.</summary>
internal sealed class ScreenWindow : Runnable
{
    // The promise is one second; the rest is for a busy machine to write in.
    private static readonly TimeSpan KeptAfter = TimeSpan.FromMilliseconds(700);

    private readonly Func<Effect, ScreenEvent?> _perform;
    private readonly PictureView _view;
    private bool _isKeepComing;

    /// <param name="state">The screen at the start.</param>
    /// <param name="palette">How roles look on this terminal; its theme is the one that the person wants.</param>
    /// <param name="perform">Performs an effect that concerns files; gives its answer, if it has one.</param>
    internal ScreenWindow(ScreenState state, Palette palette, Func<Effect, ScreenEvent?> perform)
    {
        State = state;
        _perform = perform;
        CanFocus = true;
        _view = new PictureView(
            () => palette with { Theme = State.Preferences.Theme },
            (width, height) => ScreenPicture.Of(State, width, height),
            Happen);
        Add(_view);

        // A resize or a redraw wipes the toolkit's own copy of the terminal, and with it what the view left alone.
        Initialized += (_, _) => App!.Driver!.ClearedContents += (_, _) => _view.DrawAll();
    }

    /// <summary>The screen as it is now.</summary>
    internal ScreenState State { get; private set; }

    /// <summary>Lets something happen to the screen and performs what follows from it.</summary>
    internal void Happen(ScreenEvent first)
    {
        // How far a key scrolls depends on the window as it is when the key is pressed.
        bool isResized = _view.Viewport is { Width: > 0, Height: > 0 } window && (window.Width, window.Height) != State.Size;
        Queue<ScreenEvent> happenings = new(isResized
            ? [new ScreenEvent.Resized(_view.Viewport.Width, _view.Viewport.Height), first]
            : [first]);
        while (happenings.TryDequeue(out ScreenEvent? happening))
        {
            ScreenStep step = ScreenUpdate.Apply(State, happening);
            State = step.State;
            foreach (Effect effect in step.Effects)
            {
                if (Perform(effect) is ScreenEvent answer)
                {
                    happenings.Enqueue(answer);
                }
            }
        }

        _view.SetNeedsDraw();
    }

    private ScreenEvent? Perform(Effect effect)
    {
        switch (effect)
        {
            case Effect.Quit:
                App?.RequestStop();
                return null;
            case Effect.KeepSoon:
                KeepSoon();
                return null;
            case Effect.Redraw:
                App!.ClearScreenNextIteration = true;
                _view.DrawAll();
                return null;
            default:
                return _perform(effect);
        }
    }

    private void KeepSoon()
    {
        if (!_isKeepComing)
        {
            _isKeepComing = true;
            App!.AddTimeout(KeptAfter, () =>
            {
                _isKeepComing = false;
                Happen(new ScreenEvent.KeepDue());
                return false;
            });
        }
    }
}
