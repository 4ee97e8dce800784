using System.Collections.Immutable;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Tests.Screen;

public sealed class KeyBindingsTests
{
    [Fact]
    public void ACommand_TakesOtherKeys_AndAllThatNamesThemFollows()
    {
        Desk desk = Desk(("copy_row", "F5 ^T"), ("undo", "^U"), ("menu", "\\ F9"));

        desk.Press("Down Down Down Down Down Down Down Down");
        int loads = desk.State.Document.Loads.Count;
        desk.Press("F5 ^T");
        Assert.Equal(loads + 2, desk.State.Document.Loads.Count);
        desk.Press("^Z");
        Assert.Equal(loads + 2, desk.State.Document.Loads.Count);
        desk.Press("^U");
        Assert.Equal(loads + 1, desk.State.Document.Loads.Count);

        Assert.Contains("F5 copy row", KeyLine.Of(desk.State, 100), StringComparison.Ordinal);
        Assert.Contains("^U undo", KeyLine.Of(desk.State, 100), StringComparison.Ordinal);
        Assert.Contains("\\ menu", KeyLine.Of(desk.State, 100), StringComparison.Ordinal);
        Assert.Contains(HelpLines.Of(desk.State.Table, ScreenView.Beam, ""), line => line.Words.StartsWith("^U undoes", StringComparison.Ordinal));
        desk.Press("\\");
        Assert.IsType<Overlay.Menu>(desk.State.Overlay);
        desk.Press("Esc 7 ^U");
        Assert.Null(desk.State.Draft);
        Assert.Equal("Typing dropped. ^U brings it back.", desk.Says);
    }

    [Fact]
    public void AKeyThatIsAskedFor_LeavesTheCommandItComesWith()
    {
        CommandTable table = Bound(("redo", "^D"));

        Assert.Equal(CommandName.Redo, table.Of(new KeyStroke.Control('D'), ScreenView.Beam)!.Name);
        Assert.Empty(table[CommandName.CopyRow].Keys);
        Assert.Equal("/ c", table.KeyOf(CommandName.CopyRow));
        Assert.Null(table.Of(new KeyStroke.Control('Y'), ScreenView.Beam));
    }

    [Fact]
    public void AKeyOfThePlotsView_IsFreeInTheForm()
    {
        CommandTable table = Bound(("filling", "s"), ("glyphs", "Up"));

        Assert.Equal(CommandName.Filling, table.Of(new KeyStroke.Text("s"), ScreenView.Plots)!.Name);
        Assert.Null(table.Of(new KeyStroke.Text("s"), ScreenView.Beam));
        Assert.Equal(CommandName.Move, table.Of(new KeyStroke.Named(KeyName.Up), ScreenView.Beam)!.Name);
    }

    [Theory]
    [InlineData("sav", "^S", "keys.sav: there is no such command; did you mean save?")]
    [InlineData("frobnicate", "^S", "keys.frobnicate: there is no such command; docs/keys.md names them")]
    [InlineData("move", "^S", "keys.move: this command keeps its keys")]
    [InlineData("save", "F99", "keys.save: 'F99' is no key, as ^D, F5, Tab or = are")]
    [InlineData("save", "^I", "keys.save: ^I does not arrive from every terminal")]
    [InlineData("save", "s", "keys.save: 's' begins what is typed in a cell")]
    [InlineData("save", "7", "keys.save: '7' begins what is typed in a cell")]
    [InlineData("filling", "7", "keys.filling: a digit begins a place")]
    [InlineData("save", "Enter", "keys.save: Enter is the key of enter, which keeps it")]
    [InlineData("menu", "", "keys.menu: the menu needs a key: nothing else leads there")]
    public void WhatCannotBeBound_IsSaid(string command, string keys, string said)
    {
        (_, ImmutableArray<Problem> problems) = KeyBindings.Bind(CommandTable.Default, [new NamedFigure(command, keys)]);

        Assert.Equal(said, $"{Assert.Single(problems).Key}: {problems[0].Text}");
    }

    [Fact]
    public void TwoCommandsOnOneKey_AreSaidAtBoth()
    {
        (_, ImmutableArray<Problem> problems) = KeyBindings.Bind(
            CommandTable.Default, [new NamedFigure("save", "F5"), new NamedFigure("open", "F5")]);

        Assert.Equal(["F5 is the key of open as well", "F5 is the key of save as well"], problems.Select(problem => problem.Text));
    }

    /// <summary>Each name is read as the key that is written so, so that docs/keys.md and the settings file agree.</summary>
    [Fact]
    public void EveryKeyOfTheTable_IsReadBackFromItsName() => Assert.All(
        CommandTable.Default.All.SelectMany(command => command.Keys),
        key => Assert.Equal(key, KeyStrokeNames.Read(KeyStrokeNames.Of(key))));

    [Fact]
    public void NamesOfCommands_AreTheirOwn() => Assert.Equal(
        CommandTable.Default.All.Length, CommandTable.Default.All.Select(command => command.SettingsName).Distinct().Count());

    private static CommandTable Bound(params (string Command, string Keys)[] bindings)
    {
        (CommandTable table, ImmutableArray<Problem> problems) = KeyBindings.Bind(
            CommandTable.Default, [.. bindings.Select(binding => new NamedFigure(binding.Command, binding.Keys))]);
        Assert.Empty(problems);
        return table;
    }

    private static Desk Desk(params (string Command, string Keys)[] bindings) =>
        new(Beams.Trench, new BeamOrigin("trench-bearer"), new Preferences { Table = Bound(bindings) });
}
