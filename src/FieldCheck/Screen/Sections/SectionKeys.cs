using FieldCheck.Screen.Keyboard;

namespace FieldCheck.Screen.Sections;

/// <summary>Does what the commands of the Section view say: those of the form, and looking through the checks.</summary>
internal static class SectionKeys
{
    /// <summary>Does what a command of the Section view says.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">The command.</param>
    /// <param name="key">The key it was reached by; null: another, or the menu.</param>
    internal static ScreenState Change(ScreenState state, CommandName name, KeyName? key) => name switch
    {
        CommandName.ScrollChecks => state with { SectionTop = SectionViewPicture.Layout.PageFrom(state, key) },
        CommandName.PreviousCheck => Chosen(state, -1),
        CommandName.NextCheck => Chosen(state, 1),
        _ => Commands.InForm(state, name, key),
    };

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
        int room = Math.Max(SectionViewPicture.Layout.Room(chosen) - 2, 1);
        int top = Math.Min(Math.Max(chosen.SectionTop, last - room), first - 1);
        return chosen with { SectionTop = Math.Max(top, 0) };
    }
}
