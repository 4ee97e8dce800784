using System.Runtime.CompilerServices;
using FieldCheck.Screen;

namespace FieldCheck.Tests.Screen;

public sealed class CommandTableTests
{
    [Fact]
    public void EveryCommand_StandsOnceInTheTable() => Assert.Equal(
        Enum.GetValues<CommandName>().Order(), CommandTable.All.Select(command => command.Name).Order());

    [Fact]
    public void EveryKey_DoesOneThing() => Assert.Equal(
        CommandTable.All.Sum(command => command.Keys.Length),
        CommandTable.All.SelectMany(command => command.Keys).Distinct().Count());

    [Fact]
    public void EveryLetterOfTheMenu_DoesOneThing()
    {
        char[] letters = [.. CommandTable.All.Select(command => command.Letter).OfType<char>()];

        Assert.Equal(letters.Length, letters.Distinct().Count());
    }

    /// <summary>
    /// Terminals, editors and laptops each take some of the function and Ctrl keys: all that those do can be had by the
    /// menu, in at most three presses.
    /// </summary>
    [Fact]
    public void EveryFunctionAndCtrlKey_HasATwinInTheMenu() => Assert.All(
        CommandTable.All.Where(command => command.Keys.Any(key =>
            key is KeyStroke.Control or KeyStroke.Named { Key: >= KeyName.F1 and <= KeyName.F9 })),
        command =>
        {
            bool isView = ScreenViews.All.Any(view => ScreenViews.CommandOf(view) == command.Name);
            bool hasPlainKey = command.Keys.Any(key => key is KeyStroke.Text);
            Assert.True(command.Letter is not null || isView || hasPlainKey, command.Words);
        });

    /// <summary>What terminals send as another key, or keep for themselves, is bound to nothing.</summary>
    [Fact]
    public void NoKey_IsOneThatTerminalsDoNotSend() => Assert.All(
        CommandTable.All.SelectMany(command => command.Keys).OfType<KeyStroke.Control>(),
        key => Assert.DoesNotContain(key.Letter, "ABHIJMV"));

    [Fact]
    public void Help_ListsEveryCommandOfTheTable()
    {
        string help = string.Join('\n', HelpLines.Of(ScreenView.Beam, "").Select(line => line.Keys + " " + line.Words));

        Assert.All(CommandTable.All, command => Assert.Contains(command.Words, help, StringComparison.Ordinal));
    }

    [Fact]
    public void HelpLines_FitAWindowOf80Columns_AndTheFirstPageOneOf60()
    {
        Assert.All(HelpLines.Of(ScreenView.Beam, ""), line =>
            Assert.InRange((line.Command is null ? 0 : 23) + line.Words.Length, 0, 78));
        Assert.All(HelpLines.InAMinute(CommandTable.Default), line => Assert.InRange(line.Length, 1, 58));
    }

    [Theory]
    [InlineData("undo", 1)]
    [InlineData("row down", 2)]
    [InlineData("no such key", 1)]
    public void HelpSearched_ShowsOnlyWhatFits(string filter, int lines) =>
        Assert.Equal(lines, HelpLines.Of(ScreenView.Beam, filter).Length);

    /// <summary>docs/keys.md is made from the table. FIELDCHECK_ACCEPT=1 writes it anew.</summary>
    [Fact]
    public void ListOfKeys_IsThatOfTheTable()
    {
        string path = Path.Combine(Repository(), "docs", "keys.md");
        if (Environment.GetEnvironmentVariable("FIELDCHECK_ACCEPT") == "1")
        {
            File.WriteAllText(path, KeyList.Markdown());
        }

        Assert.Equal(KeyList.Markdown(), File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    private static string Repository([CallerFilePath] string file = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", "..", ".."));
}
