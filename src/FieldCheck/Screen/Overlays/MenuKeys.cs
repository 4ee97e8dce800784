using System.Collections.Immutable;
using FieldCheck.Screen.Keyboard;

namespace FieldCheck.Screen.Overlays;

/// <summary>Keys pressed in the menu.</summary>
internal static class MenuKeys
{
    /// <summary>The entries of a page, in their order.</summary>
    /// <param name="state">The state.</param>
    /// <param name="page">The page.</param>
    internal static ImmutableArray<MenuEntry> EntriesOf(ScreenState state, MenuPage page) => page == MenuPage.Views
        ? [.. ScreenViews.All.Select(view => OfView(state, view))]
        : [.. state.Table.MenuOf(state.View).Select(command => OfCommand(state, command))];

    internal static ScreenStep Press(ScreenState state, Overlay.Menu menu, KeyStroke stroke)
    {
        ImmutableArray<MenuEntry> entries = EntriesOf(state, menu.Page);
        MenuEntry? chosen = stroke switch
        {
            KeyStroke.Named { Key: KeyName.Enter } => entries[menu.Choice],
            KeyStroke.Text { Grapheme: [char letter] } => entries.FirstOrDefault(entry => entry.Letter == letter),
            _ => null,
        };
        if (chosen is not null)
        {
            return Commands.Run(state with { Overlay = null }, chosen.Command);
        }

        int choice = OverlayKeys.Moved(menu.Choice, entries.Length, stroke);
        return stroke is KeyStroke.Control && state.Table.Of(stroke, state.View) is ScreenCommand command
            ? Commands.Run(state with { Overlay = null }, command.Name, stroke)
            : (state with { Overlay = menu with { Choice = choice } }).Step();
    }

    private static MenuEntry OfView(ScreenState state, ScreenView view)
    {
        ViewTraits traits = ScreenViews.Of(view);
        ScreenCommand command = state.Table[traits.Command];
        return new MenuEntry(command.Name, traits.Letter, command.Words, command.KeyWords);
    }

    private static MenuEntry OfCommand(ScreenState state, ScreenCommand command)
    {
        string? step = command.Name switch
        {
            CommandName.Undo => state.History.ToUndo?.Name,
            CommandName.Redo => state.History.ToRedo?.Name,
            _ => null,
        };
        string words = step is null ? command.Words : $"{command.Words} \"{step}\"";
        return new MenuEntry(command.Name, command.Letter!.Value, words, command.KeyWords);
    }
}
