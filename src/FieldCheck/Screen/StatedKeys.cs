namespace FieldCheck.Screen;

/// <summary>Does what the commands of the Stated view say: those of the form, and scrolling what comes of its figures.</summary>
internal static class StatedKeys
{
    /// <summary>Does what a command of the Stated view says.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">The command.</param>
    /// <param name="key">The key it was reached by; null: another, or the menu.</param>
    internal static ScreenState Change(ScreenState state, CommandName name, KeyName? key) => name switch
    {
        CommandName.ScrollVerdicts => Scrolled(state, key),
        CommandName.Clear => Cleared(state, key),
        _ => Commands.InForm(state, name, key),
    };

    /// <summary>How many lines below the first are scrolled past, where that is possible: else as many as leave a screenful.</summary>
    /// <param name="state">The state.</param>
    /// <param name="wanted">How many are wanted.</param>
    internal static int Top(ScreenState state, int wanted)
    {
        int most = StatedLines.Of(state, state.Size.Width).Length - Room(state);
        return Math.Clamp(wanted, 0, Math.Max(most, 0));
    }

    // A line that says how much is below takes the place of one; a line of the screenful before stays to be seen. How many
    // lines there are is known when the results have followed.
    private static ScreenState Scrolled(ScreenState state, KeyName? key)
    {
        int page = Math.Max(Room(state) - 3, 1);
        return state with { StatedTop = Math.Max(state.StatedTop + (key == KeyName.PageUp ? -page : page), 0) };
    }

    private static int Room(ScreenState state) =>
        StatedViewPicture.Room(state, ScreenPicture.BodyHeight(state.Size.Height));

    private static ScreenState Cleared(ScreenState state, KeyName? key)
    {
        string row = FormWords.Row(state.Sheet, state.Focus.Block, state.Focus.Row);
        ScreenState cleared = Commands.InForm(state, CommandName.Clear, key);
        return cleared.Document.Stated.Count == state.Document.Stated.Count ? cleared : cleared with
        {
            Notice = new Notice(
                $"No figure is left of {row}: its row is taken out. {state.Table.KeyOf(CommandName.Undo)} brings it back."),
        };
    }
}
