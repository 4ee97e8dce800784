namespace FieldCheck.Screen;

/// <summary>Does what the commands of the Cases view say: those of the form, and scrolling the envelopes.</summary>
internal static class CasesKeys
{
    /// <summary>Does what a command of the Cases view says.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">The command.</param>
    /// <param name="key">The key it was reached by; null: another, or the menu.</param>
    internal static ScreenState Change(ScreenState state, CommandName name, KeyName? key) => name switch
    {
        CommandName.ScrollEnvelopes => Scrolled(state, key),
        _ => Commands.InForm(state, name, key),
    };

    /// <summary>How many lines below the first are scrolled past, where that is possible: else as many as leave a screenful.</summary>
    /// <param name="state">The state.</param>
    /// <param name="wanted">How many are wanted.</param>
    internal static int Top(ScreenState state, int wanted)
    {
        // What is not scrolled need not be worked out.
        return wanted == 0 ? 0 : Math.Clamp(wanted, 0, Math.Max(EnvelopeLines.Of(state, state.Size.Width).Length - Room(state), 0));
    }

    private static ScreenState Scrolled(ScreenState state, KeyName? key)
    {
        int page = Math.Max(Room(state) - 3, 1);
        return state with { CasesTop = Math.Max(state.CasesTop + (key == KeyName.PageUp ? -page : page), 0) };
    }

    private static int Room(ScreenState state) =>
        CasesViewPicture.Room(state, ScreenPicture.BodyHeight(state.Size.Height));
}
