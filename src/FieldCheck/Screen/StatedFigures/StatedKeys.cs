using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;

namespace FieldCheck.Screen.StatedFigures;

/// <summary>Does what the commands of the Stated view say: those of the form, and scrolling what comes of its figures.</summary>
internal static class StatedKeys
{
    /// <summary>Does what a command of the Stated view says.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">The command.</param>
    /// <param name="key">The key it was reached by; null: another, or the menu.</param>
    internal static ScreenState Change(ScreenState state, CommandName name, KeyName? key) => name switch
    {
        CommandName.ScrollVerdicts => state with { StatedTop = StatedViewPicture.Layout.PageFrom(state, key) },
        CommandName.Clear => Cleared(state, key),
        _ => Commands.InForm(state, name, key),
    };

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
