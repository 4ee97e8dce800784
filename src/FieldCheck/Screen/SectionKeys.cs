namespace FieldCheck.Screen;

/// <summary>Does what the commands of the Section view say: those of the form, and looking through the checks.</summary>
internal static class SectionKeys
{
    /// <summary>Does what a command of the Section view says.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">The command.</param>
    /// <param name="key">The key it was reached by; null: another, or the menu.</param>
    internal static ScreenState Change(ScreenState state, CommandName name, KeyName? key) => name switch
    {
        CommandName.ScrollChecks => Scrolled(state, key),
        CommandName.PreviousCheck => Chosen(state, -1),
        CommandName.NextCheck => Chosen(state, 1),
        _ => Commands.InForm(state, name, key),
    };

    /// <summary>How many lines below the first are scrolled past, where that is possible: else as many as leave a screenful.</summary>
    /// <param name="state">The state.</param>
    /// <param name="wanted">How many are wanted.</param>
    internal static int Top(ScreenState state, int wanted)
    {
        // What is not scrolled need not be worked out.
        return wanted == 0 ? 0 : Math.Clamp(wanted, 0, Math.Max(SectionLines.Of(state, state.Size.Width).Length - Room(state), 0));
    }

    private static ScreenState Scrolled(ScreenState state, KeyName? key)
    {
        int page = Math.Max(Room(state) - 3, 1);
        return state with { SectionTop = Math.Max(state.SectionTop + (key == KeyName.PageUp ? -page : page), 0) };
    }

    // The check that is chosen is brought into sight, with as much of its work as there is room for.
    private static ScreenState Chosen(ScreenState state, int by)
    {
        int count = state.Shown.Checks.All.Length;
        if (count == 0)
        {
            return state with { Notice = new Notice("There is no check yet.") };
        }

        int from = SectionLines.ChosenIn(state) ?? 0;
        int next = (from + by + count) % count;
        ScreenState chosen = state with { CheckChosen = next };
        (int first, int last) = SectionLines.RowsOf(chosen, chosen.Size.Width);
        int room = Math.Max(Room(chosen) - 2, 1);
        int top = Math.Min(Math.Max(chosen.SectionTop, last - room), first - 1);
        return chosen with { SectionTop = Math.Max(top, 0) };
    }

    private static int Room(ScreenState state) =>
        SectionViewPicture.Room(state, ScreenPicture.BodyHeight(state.Size.Height));
}
