using System.Runtime.CompilerServices;
using FieldCheck.Screen;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;

namespace FieldCheck.Tests.Screen;

public sealed class CommandTableTests
{
    private static readonly CommandTable Table = CommandTable.Default;

    [Fact]
    public void EveryCommand_StandsOnceInTheTable() => Assert.Equal(
        Enum.GetValues<CommandName>().Order(), Table.All.Select(command => command.Name).Order());

    [Fact]
    public void EveryKey_DoesOneThingInAView() => Assert.All(ScreenViews.All, view =>
    {
        KeyStroke[] keys = [.. Table.In(view).SelectMany(command => command.Keys)];

        Assert.Equal(keys.Distinct(), keys);
    });

    [Fact]
    public void EveryLetterOfTheMenu_DoesOneThingInAView() => Assert.All(ScreenViews.All, view =>
    {
        char[] letters = [.. Table.MenuOf(view).Select(command => command.Letter).OfType<char>()];

        Assert.Equal(letters.Distinct(), letters);
    });

    /// <summary>
    /// Terminals, editors and laptops each take some of the function and Ctrl keys: all that those do can be had by the
    /// menu, in at most three presses.
    /// </summary>
    [Fact]
    public void EveryFunctionAndCtrlKey_HasATwinInTheMenu() => Assert.All(
        Table.All.Where(command => command.Keys.Any(key =>
            key is KeyStroke.Control or KeyStroke.Named { Key: >= KeyName.F1 and <= KeyName.F9 })),
        command =>
        {
            bool isView = ScreenViews.ShownBy(command.Name) is not null;
            bool hasPlainKey = command.Keys.Any(key => key is KeyStroke.Text);
            Assert.True(command.Letter is not null || isView || hasPlainKey, command.Words);
        });

    /// <summary>What terminals send as another key, or keep for themselves, is bound to nothing.</summary>
    [Fact]
    public void NoKey_IsOneThatTerminalsDoNotSend() => Assert.All(
        Table.All.SelectMany(command => command.Keys).OfType<KeyStroke.Control>(),
        key => Assert.DoesNotContain(key.Letter, "ABHIJMV"));

    [Fact]
    public void Help_ListsEveryCommandOfTheTable()
    {
        HelpLine[] help = [.. ScreenViews.All.SelectMany(view => HelpLines.Of(Table, view, ""))];

        Assert.All(Table.All, command => Assert.Contains(help, line => line.Command == command));
    }

    [Fact]
    public void HelpLines_FitAWindowOf80Columns_AndTheFirstPageOneOf60() => Assert.All(ScreenViews.All, view =>
    {
        Assert.All(HelpLines.Of(Table, view, ""), line =>
            Assert.InRange((line.Command is null ? 0 : 23) + line.Words.Length, 0, 78));
        Assert.All(ScreenViews.Of(view).Help(Table), line => Assert.InRange(line.Length, 1, 58));
    });

    [Fact]
    public void EveryView_HasAKeyAndALetterOfItsOwn()
    {
        Assert.Equal(Enum.GetValues<ScreenView>(), ScreenViews.All);
        Assert.Distinct(ScreenViews.All.Select(view => ScreenViews.Of(view).Letter));
        Assert.Distinct(ScreenViews.All.SelectMany(view => Table[ScreenViews.Of(view).Command].Keys));
    }

    [Theory]
    [InlineData("undo", 1)]
    [InlineData("row down", 2)]
    [InlineData("no such key", 1)]
    public void HelpSearched_ShowsOnlyWhatFits(string filter, int lines) =>
        Assert.Equal(lines, HelpLines.Of(Table, ScreenView.Beam, filter).Length);

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
