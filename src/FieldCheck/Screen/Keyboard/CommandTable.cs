using System.Collections.Immutable;
using static FieldCheck.Screen.Keyboard.CommandGroup;
using static FieldCheck.Screen.Keyboard.CommandName;

namespace FieldCheck.Screen.Keyboard;

/// <summary>
/// Every key and what it does. Key line, menu, help and docs/keys.md are all made from this table, so none can leave
/// anything out or say anything else.
/// </summary>
/// <param name="all">All commands, in the order in which they are listed.</param>
internal sealed class CommandTable(ImmutableArray<ScreenCommand> all)
{
    /// <summary>The table as it comes.</summary>
    internal static CommandTable Default { get; } = new(
    [
        new(CommandName.Type, Cell, [], null, "replace what is in the cell", "to replace"),
        new(EditCell, Cell, [Key(KeyName.F2), Ctrl('E')], 'f', "edit what is in the cell", "edit"),
        new(Right, Cell, [Key(KeyName.Tab)], null, "accept and right", "next"),
        new(Left, Cell, [Key(KeyName.ShiftTab)], null, "accept and left"),
        new(CommandName.Enter, Cell, [Key(KeyName.Enter)], null, "accept and down; on an empty row: the next block"),
        new(Move, Cell, [Key(KeyName.Up), Key(KeyName.Down), Key(KeyName.Left), Key(KeyName.Right)], null,
            "accept and move; after F2, left and right in the cell"),
        new(RowEnds, Cell, [Key(KeyName.Home), Key(KeyName.End)], null, "first or last cell of the row"),
        new(Blocks, Form, [Key(KeyName.PageUp), Key(KeyName.PageDown)], null, "block above or below"),
        new(Clear, Cell, [Key(KeyName.Backspace), Key(KeyName.Delete)], null, "clear the cell"),
        new(NextChoice, Cell, [Char(" ")], null, "in a cell with few choices: the next one"),
        new(MoveReading, Plots, [Key(KeyName.Left), Key(KeyName.Right), Key(KeyName.PageUp), Key(KeyName.PageDown),
            Key(KeyName.Home), Key(KeyName.End)], null, "move the reading line: one step, ten, to an end"),
        new(NextMark, Plots, [Key(KeyName.Tab)], null, "reading line to next support, load edge, peak or zero", "mark"),
        new(PreviousMark, Plots, [Key(KeyName.ShiftTab)], null, "reading line to the one before"),
        new(Drop, Beam, [Key(KeyName.Escape)], null, "drop the typing; close; back; never leaves"),
        new(AddRow, Row, [], 'a', "add row below"),
        new(CopyRow, Row, [Ctrl('D')], 'c', "copy row below", "copy row"),
        new(DeleteRow, Row, [Ctrl('X')], 'x', "delete row", "delete row"),
        new(PutRowBack, Row, [], 'p', "put deleted row back here"),
        new(RowUp, Row, [Char("<")], 'u', "move row up", "move row", RowDown),
        new(RowDown, Row, [Char(">")], 'd', "move row down"),
        new(ChangeKind, Form, [], 'k', "change kind"),
        new(MoreOfRow, Form, [], 'm', "more of this row"),
        new(NextMarked, Cell, [], 'g', "go to the next marked cell"),
        new(ReadAt, Beam, [Char("=")], 'r', "read off at a place: type it"),
        new(Filling, Plots, [Char("f")], 'f', "diagrams filled or outlined", "fill"),
        new(SagSide, Plots, [Char("u")], 'u', "sagging moment above or below", "sag"),
        new(Glyphs, Plots, [Char("h")], 'h', "ASCII or half blocks", "blocks"),
        new(EnvelopeCurves, Plots, [Char("e")], 'k', "envelope drawn round the curves or not", "envelope"),
        new(CommandName.InfluenceLine, Plots, [Char("i")], 'a', "influence line of a support, or of V or M at a place", "influence"),
        new(ShearCurve, Plots, [Char("v")], '1', "shear shown or not", "b d n curves"),
        new(MomentCurve, Plots, [Char("b")], '2', "moment shown or not"),
        new(DeflectionCurve, Plots, [Char("d")], '3', "deflection shown or not"),
        new(AxialCurve, Plots, [Char("n")], '4', "axial force shown or not"),
        new(HeaviestHere, Plots, [Char("w")], 'd', "how heavy one more load may be at the reading line"),
        new(Scroll, Working, [Key(KeyName.Up), Key(KeyName.Down), Key(KeyName.PageUp), Key(KeyName.PageDown),
            Key(KeyName.Home), Key(KeyName.End)], null, "scroll: one line, a screenful, to an end"),
        new(NextPoint, Working, [Key(KeyName.Tab)], null, "moments about the next support or hinge", "point"),
        new(PreviousPoint, Working, [Key(KeyName.ShiftTab)], null, "moments about the one before"),
        new(MomentsAbout, Working, [Char("m")], 'm', "moments about a place: type it", "place"),
        new(CommandName.StepNames, Working, [Char("n")], 'h', "names of the steps shown or not", "step names"),
        new(ShortForm, Working, [Char("f")], 'f', "full form or short", "short"),
        new(SaveWorking, Working, [Char("x")], 'x', "save the working as a text file", "as text"),
        new(ScrollVerdicts, Stated, [Key(KeyName.PageUp), Key(KeyName.PageDown)], null, "scroll what comes of the stated figures"),
        new(ScrollChecks, Section, [Key(KeyName.PageUp), Key(KeyName.PageDown)], null, "scroll the checks"),
        new(PreviousCheck, Section, [Char("<")], null, "work of the check before", "work of a check", NextCheck),
        new(NextCheck, Section, [Char(">")], null, "work of the next check"),
        new(ChooseFromCatalogue, Section, [], 'k', "choose from the catalogue: shape, grade, factors, rules"),
        new(SectionsThatDo, Section, [], 'd', "sections of the catalogue that would do"),
        new(CommandName.WhatIf, Section, [], 'h', "what if: more load, a longer bay, a prop"),
        new(ScrollEnvelopes, Cases, [Key(KeyName.PageUp), Key(KeyName.PageDown)], null, "scroll the envelopes"),
        new(StandardCombinations, Cases, [], 'k', "put in the combinations of a standard"),
        new(Undo, Beam, [Ctrl('Z')], 'z', "undo", "undo"),
        new(Redo, Beam, [Ctrl('Y')], 'y', "redo"),
        new(MoreOfBeam, Beam, [], 'b', "more of the beam"),
        new(OtherUnits, Beam, [], 'e', "results in the other units"),
        new(NextCombination, Beam, [Char(";")], 't', "results of the next combination"),
        new(CommandName.AllResults, Beam, [Char("\\")], 'j', "all results, to scroll"),
        new(CommandName.Views, Beam, [], 'v', "views..."),
        new(PreviousView, Beam, [Char("[")], null, "previous view"),
        new(NextView, Beam, [Char("]")], null, "next view"),
        new(BeamView, Beam, [Key(KeyName.F3)], null, "Beam: form, results, sketches"),
        new(PlotsView, Beam, [Key(KeyName.F4)], null, "Plots: the curves, large, with a reading line"),
        new(WorkingView, Beam, [Key(KeyName.F5)], null, "Working: the reactions worked by hand"),
        new(StatedView, Beam, [Key(KeyName.F6)], null, "Stated: a supplier's figures, typed and judged"),
        new(SectionView, Beam, [Key(KeyName.F7)], null, "Section: section, material, limits; is it enough"),
        new(CasesView, Beam, [Key(KeyName.F8)], null, "Cases: cases, combinations, rolling loads, envelopes"),
        new(Open, Beam, [Ctrl('O')], 'o', "open a preset or a file"),
        new(NewBeam, Beam, [Ctrl('N')], 'n', "new beam"),
        new(Save, Beam, [Ctrl('S')], 's', "save", "save"),
        new(SaveAs, Beam, [], 'w', "save under another name"),
        new(SaveRecord, Beam, [Ctrl('P')], '5', "record of the check as a file"),
        new(CommandName.Settings, Beam, [], 'i', "settings..."),
        new(Redraw, Beam, [Ctrl('L')], 'l', "draw the screen anew"),
        new(Menu, Beam, [Char("/"), Key(KeyName.F9)], null, "menu of what can be done here", "menu"),
        new(Help, Beam, [Char("?"), Key(KeyName.F1)], '?', "help"),
        new(Quit, Beam, [Ctrl('Q'), Ctrl('C')], 'q', "leave", "leave"),
    ]);

    private readonly ImmutableArray<KeyValuePair<KeyStroke, ScreenCommand>> _byKey =
        [.. all.SelectMany(command => command.Keys.Select(key => KeyValuePair.Create(key, command)))];

    /// <summary>All commands, in the order in which they are listed.</summary>
    internal ImmutableArray<ScreenCommand> All { get; } = all;

    /// <summary>A command by its name.</summary>
    internal ScreenCommand this[CommandName name] => All.First(command => command.Name == name);

    /// <summary>What works in a view.</summary>
    /// <param name="view">The view.</param>
    internal IEnumerable<ScreenCommand> In(ScreenView view) => All.Where(command => command.IsIn(view));

    /// <summary>What a key does in a view; null where it does nothing but, perhaps, type.</summary>
    /// <param name="stroke">The key.</param>
    /// <param name="view">The view.</param>
    internal ScreenCommand? Of(KeyStroke stroke, ScreenView view) =>
        _byKey.FirstOrDefault(pair => pair.Key == stroke && pair.Value.IsIn(view)).Value;

    /// <summary>True: the key is one of a command's.</summary>
    /// <param name="stroke">The key.</param>
    /// <param name="name">The command.</param>
    internal bool Is(KeyStroke stroke, CommandName name) => this[name].Keys.Contains(stroke);

    /// <summary>How a command is reached most shortly, as "^Z"; by the menu where it has no key.</summary>
    /// <param name="name">The command.</param>
    internal string KeyOf(CommandName name) => this[name].ShortestWords;

    /// <summary>The menu's entries for a view.</summary>
    /// <param name="view">The view.</param>
    internal ImmutableArray<ScreenCommand> MenuOf(ScreenView view) =>
        [.. In(view).Where(command => command.Letter is not null)];

    private static KeyStroke.Named Key(KeyName name) => new(name);

    private static KeyStroke.Control Ctrl(char letter) => new(letter);

    private static KeyStroke.Text Char(string text) => new(text);
}
