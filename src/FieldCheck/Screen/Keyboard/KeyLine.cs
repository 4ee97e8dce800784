using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;

namespace FieldCheck.Screen.Keyboard;

/// <summary>The lowest line: the keys that lead on from here.</summary>
internal static class KeyLine
{
    private const string Between = "  ";

    /// <summary>The keys in words, as many as there is room for; the menu always among them.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns of the line.</param>
    internal static string Of(ScreenState state, int width)
    {
        string edit = $"{state.Table.KeyOf(CommandName.EditCell)} edit";
        return state.Overlay switch
        {
            Overlay.Menu => "letter or arrows and Enter   Esc back",
            Overlay.Help => "type to search   arrows   Enter runs the line   ? or Esc back",
            Overlay.OpenList => "type to search   arrows   Enter open   Tab open as a copy   Esc back",
            Overlay.SetList => "type to search   arrows   Enter add   Tab replace   Esc back",
            Overlay.CatalogueList { Passing: not null } => "type to search   arrows   Enter take   Tab families   Esc back",
            Overlay.Families => "arrows   Space switches   m as at first   Tab back to the list",
            Overlay.CatalogueList => "type to search   arrows   Enter take   Esc back",
            Overlay.NameLine or Overlay.PaperName => "Enter save   Esc back",
            Overlay.PlaceLine { Use: PlaceUse.ReadOff } => "Enter read off there   Esc back",
            Overlay.PlaceLine { Use: PlaceUse.Influence } => "A support's letter, V or M, or M 1.2   Enter   Esc back",
            Overlay.PlaceLine => "Enter take moments there   Esc back",
            Overlay.Answers { Draft: not null } => "Enter ask; nothing typed: rigid   Esc drop",
            Overlay.Answers { Props.IsEmpty: false } => "type how stiff a prop stands   arrows   Esc back",
            Overlay.Results or Overlay.Answers => "arrows   Esc back",
            Overlay.Settings => "arrows   Space or Enter changes it   Esc back",
            Overlay.Details { Draft: not null } => "Enter accept   Esc drop",
            Overlay.Details => $"type to replace   {edit}   arrows   Esc back",
            Overlay overlay => QuestionKeys.Words(state, overlay)?.Keys ?? "Esc back",
            _ when state.Draft is CellDraft draft => draft.IsEdited
                ? "Enter accept   Left Right Home End move   Esc drop"
                : $"Enter accept   Tab accept, right   {edit}   Esc drop",
            _ => OfTable(state, width),
        };
    }

    /// <summary>The line itself; a click on what a key does is that key.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns of the line.</param>
    internal static PictureLine Line(ScreenState state, int width)
    {
        LineWriter line = new LineWriter(width).Add(" ");
        foreach (string hint in Of(state, width - 1).Split(Between))
        {
            string words = hint.TrimStart();
            KeyStroke? key = KeyStrokeNames.Read(words.Split(' ')[0]);
            line.Add(line.Column > 1 ? Between + hint[..^words.Length] : "", Role.Faint)
                .Add(words, Role.Faint, key is null ? null : new LinkTarget.Key(key));
        }

        return line.End();
    }

    private static string OfTable(ScreenState state, int width)
    {
        string menu = HintOf(state, state.Table[CommandName.Menu]);
        string leave = HintOf(state, state.Table[CommandName.Quit]);
        List<string> hints = [.. ScreenViews.Of(state.View).Hints];
        int left = width - menu.Length - 1 - hints.Sum(hint => hint.Length + Between.Length);
        foreach (ScreenCommand command in state.Table.In(state.View))
        {
            bool isHere = command.Hint is not null && command.Name is not (CommandName.Menu or CommandName.Quit);
            string hint = isHere ? HintOf(state, command) : "";
            if (isHere && hint.Length + Between.Length <= left)
            {
                hints.Add(hint);
                left -= hint.Length + Between.Length;
            }
        }

        hints.Add(menu);
        return string.Join(Between, leave.Length + Between.Length <= left ? hints.Append(leave) : hints);
    }

    private static string HintOf(ScreenState state, ScreenCommand command)
    {
        string twin = command.Twin is CommandName name ? $" {state.Table.KeyOf(name)}" : "";
        return $"{command.ShortestWords}{twin} {command.Hint}";
    }
}
