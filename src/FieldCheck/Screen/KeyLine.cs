namespace FieldCheck.Screen;

/// <summary>The lowest line: the keys that lead on from here.</summary>
internal static class KeyLine
{
    private const string Between = "  ";

    /// <summary>The keys in words, as many as there is room for; the menu always among them.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns of the line.</param>
    internal static string Of(ScreenState state, int width) => state.Overlay switch
    {
        Overlay.Menu => "letter or arrows and Enter   Esc back",
        Overlay.Help => "type to search   arrows   Enter runs the line   ? or Esc back",
        Overlay.OpenList => "type to search   arrows   Enter open   Tab open as a copy   Esc back",
        Overlay.NameLine => "Enter save   Esc back",
        Overlay.Details { Draft: not null } => "Enter accept   Esc drop",
        Overlay.Details => "type to replace   F2 edit   arrows   Esc back",
        Overlay overlay => QuestionKeys.Words(state, overlay)?.Keys ?? "Esc back",
        _ when state.Draft is CellDraft draft => draft.IsEdited
            ? "Enter accept   Left Right Home End move   Esc drop"
            : "Enter accept   Tab accept, right   F2 edit   Esc drop",
        _ => OfTable(state, width),
    };

    private static string OfTable(ScreenState state, int width)
    {
        ScreenCommand menu = CommandTable.All.Single(command => command.Name == CommandName.Menu);
        ScreenCommand leave = CommandTable.All.Single(command => command.Name == CommandName.Quit);
        List<string> hints = [];
        int left = width - menu.Hint!.Length - 1;
        foreach (ScreenCommand command in CommandTable.All)
        {
            bool isHere = command != menu && command != leave && command.Hint is not null
                && (state.View == ScreenView.Beam || command.Group == CommandGroup.Beam);
            if (isHere && command.Hint!.Length + Between.Length <= left)
            {
                hints.Add(command.Hint);
                left -= command.Hint.Length + Between.Length;
            }
        }

        if (state.View != ScreenView.Beam && left > 16)
        {
            hints.Add("Esc Beam view");
        }

        hints.Add(menu.Hint);
        return string.Join(Between, leave.Hint!.Length + Between.Length <= left ? hints.Append(leave.Hint) : hints);
    }
}
