using System.Collections.Immutable;
using static FieldCheck.Screen.CommandGroup;
using static FieldCheck.Screen.CommandName;

namespace FieldCheck.Screen;

/// <summary>
/// Every key and what it does. Key line, menu, help and docs/keys.md are all made from this table, so none can leave
/// anything out or say anything else.
/// </summary>
internal static class CommandTable
{
    /// <summary>All commands, in the order in which they are listed.</summary>
    internal static ImmutableArray<ScreenCommand> All { get; } =
    [
        new(CommandName.Type, Cell, [], null, "replace what is in the cell", "type to replace"),
        new(EditCell, Cell, [Key(KeyName.F2), Ctrl('E')], 'f', "edit what is in the cell", "F2 edit"),
        new(Right, Cell, [Key(KeyName.Tab)], null, "accept and right", "Tab next"),
        new(Left, Cell, [Key(KeyName.ShiftTab)], null, "accept and left"),
        new(CommandName.Enter, Cell, [Key(KeyName.Enter)], null, "accept and down; on an empty row: the next block"),
        new(Move, Cell, [Key(KeyName.Up), Key(KeyName.Down), Key(KeyName.Left), Key(KeyName.Right)], null,
            "accept and move; after F2, left and right in the cell"),
        new(RowEnds, Cell, [Key(KeyName.Home), Key(KeyName.End)], null, "first or last cell of the row"),
        new(Blocks, Cell, [Key(KeyName.PageUp), Key(KeyName.PageDown)], null, "block above or below"),
        new(Clear, Cell, [Key(KeyName.Backspace), Key(KeyName.Delete)], null, "clear the cell"),
        new(NextChoice, Cell, [Char(" ")], null, "in a cell with few choices: the next one"),
        new(Drop, Beam, [Key(KeyName.Escape)], null, "drop the typing; close; back; never leaves"),
        new(AddRow, Row, [], 'a', "add row below"),
        new(CopyRow, Row, [Ctrl('D')], 'c', "copy row below", "^D copy row"),
        new(DeleteRow, Row, [Ctrl('X')], 'x', "delete row", "^X delete row"),
        new(PutRowBack, Row, [], 'p', "put deleted row back here"),
        new(RowUp, Row, [Char("<")], 'u', "move row up", "< > move row"),
        new(RowDown, Row, [Char(">")], 'd', "move row down"),
        new(ChangeKind, Row, [], 'k', "change kind"),
        new(MoreOfRow, Row, [], 'm', "more of this row"),
        new(NextMarked, Row, [], 'g', "go to the next marked cell"),
        new(Undo, Beam, [Ctrl('Z')], 'z', "undo", "^Z undo"),
        new(Redo, Beam, [Ctrl('Y')], 'y', "redo"),
        new(MoreOfBeam, Beam, [], 'b', "more of the beam"),
        new(OtherUnits, Beam, [], 'e', "results in the other units"),
        new(CommandName.Views, Beam, [], 'v', "views..."),
        new(PreviousView, Beam, [Char("[")], null, "previous view"),
        new(NextView, Beam, [Char("]")], null, "next view"),
        new(BeamView, Beam, [Key(KeyName.F3)], null, "Beam: form, results, sketches"),
        new(PlotsView, Beam, [Key(KeyName.F4)], null, "Plots: shear, moment, deflection, large"),
        new(Open, Beam, [Ctrl('O')], 'o', "open a preset or a file"),
        new(NewBeam, Beam, [Ctrl('N')], 'n', "new beam"),
        new(Save, Beam, [Ctrl('S')], 's', "save", "^S save"),
        new(SaveAs, Beam, [], 'w', "save under another name"),
        new(Redraw, Beam, [Ctrl('L')], 'l', "draw the screen anew"),
        new(Menu, Beam, [Char("/"), Key(KeyName.F9)], null, "menu of what can be done here", "/ menu"),
        new(Help, Beam, [Char("?"), Key(KeyName.F1)], '?', "help"),
        new(Quit, Beam, [Ctrl('Q'), Ctrl('C')], 'q', "leave", "^Q leave"),
    ];

    private static readonly ImmutableArray<KeyValuePair<KeyStroke, ScreenCommand>> ByKey =
        [.. All.SelectMany(command => command.Keys.Select(key => KeyValuePair.Create(key, command)))];

    /// <summary>What a key does; null where it does nothing but, perhaps, type.</summary>
    /// <param name="stroke">The key.</param>
    internal static ScreenCommand? Of(KeyStroke stroke) =>
        ByKey.FirstOrDefault(pair => pair.Key == stroke).Value;

    /// <summary>The menu's entries for a view.</summary>
    /// <param name="view">The view.</param>
    internal static ImmutableArray<ScreenCommand> MenuOf(ScreenView view) =>
        [.. All.Where(command => command.Letter is not null && (view == ScreenView.Beam || command.Group == Beam))];

    private static KeyStroke.Named Key(KeyName name) => new(name);

    private static KeyStroke.Control Ctrl(char letter) => new(letter);

    private static KeyStroke.Text Char(string text) => new(text);
}
