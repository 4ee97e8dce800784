using System.Globalization;
using System.Text.RegularExpressions;

namespace FieldCheck.Tests.Terminal;

/// <summary>What stands around the program on a real terminal: files of the toolkit's, variables.</summary>
public sealed partial class SurroundingsTests
{
    private const string Hostile = """
        { "Application": { "ForceDriver": "dotnet", "DefaultKeyBindings": { "Quit": { "All": ["x"] } } } }
        """;

    [TerminalFact]
    public void HostileConfigurationOfTheToolkit_ChangesNothing()
    {
        using Session calm = new();
        using PseudoTerminal undisturbed = Type(calm, []);
        using Session session = new();
        foreach (string folder in new[] { session.Folder, session.Home })
        {
            string tui = Directory.CreateDirectory(Path.Combine(folder, ".tui")).FullName;
            File.WriteAllText(Path.Combine(tui, "config.json"), Hostile);
            File.WriteAllText(Path.Combine(tui, "fieldcheck.config.json"), Hostile);
        }

        using PseudoTerminal terminal = Type(session, [("TUI_CONFIG", Hostile)]);

        Assert.Contains("[x ", terminal.Screen, StringComparison.Ordinal);
        terminal.WaitUntil(image => image.ToString() == undisturbed.Screen, "the undisturbed screen:\n" + undisturbed.Screen);
        Assert.Equal(undisturbed.Modes.Order(), terminal.Modes.Order());
    }

    [TerminalFact]
    public void NoColor_NoColourCodeIsWritten()
    {
        using Session session = new();
        using PseudoTerminal coloured = Type(session, []);
        using PseudoTerminal terminal = Type(session, [("NO_COLOR", "1")]);

        Assert.NotEmpty(ColoursIn(coloured.Bytes));
        Assert.Empty(ColoursIn(terminal.Bytes));
        terminal.WaitUntil(image => image.ToString() == coloured.Screen, "the coloured screen:\n" + coloured.Screen);
    }

    [TerminalFact]
    public void Mouse_IsLeftToTheTerminal_SoThatTextCanBeMarked()
    {
        using Session session = new();
        using PseudoTerminal terminal = Type(session, []);

        Assert.Empty(terminal.Modes.Intersect([9, 1000, 1001, 1002, 1003, 1005, 1006, 1015]));
    }

    [TerminalFact]
    public void MouseThatIsAskedFor_ClicksAreReportedAndNoMovement()
    {
        using Session session = new();
        string folder = Directory.CreateDirectory(Path.Combine(session.Home, ".config", "fieldcheck")).FullName;
        File.WriteAllText(Path.Combine(folder, "settings.toml"), "format = 1\nmouse = true\n");
        using PseudoTerminal terminal = session.Open();
        Assert.Equal([1000, 1006], terminal.Modes.Intersect([9, 1000, 1001, 1002, 1003, 1005, 1006, 1015]).Order());

        int column = terminal.Screen.Split('\n')[0].IndexOf("Plots", StringComparison.Ordinal) + 1;
        terminal.Press($"\u001b[<0;{column};1M\u001b[<0;{column};1m");
        terminal.WaitFor("[Plots]");

        terminal.Signal("TERM");
        terminal.Finish();
        Assert.Equal([25], terminal.Modes);
    }

    [TerminalTheory]
    [InlineData("C")]
    [InlineData("en_US.ISO-8859-1")]
    public void WithoutUtf8_OnlyAsciiIsWritten(string locale)
    {
        using Session session = new();
        using PseudoTerminal terminal = session.Open(["d\u00e9p\u00f4t.toml"], (100, 30), ("LC_ALL", locale));
        terminal.WaitFor("depot");

        Assert.All(terminal.Bytes, letter => Assert.True(letter < '\u0080'));
    }

    private static PseudoTerminal Type(Session session, ReadOnlySpan<(string Name, string? Value)> variables)
    {
        PseudoTerminal terminal = session.Open(variables);
        terminal.Press("x");
        terminal.WaitFor("[x");
        terminal.Press("\u001bOS");
        terminal.WaitFor("[Plots]");
        terminal.Press("\u001bOR");
        // The lowest line is drawn last.
        terminal.WaitFor("type to replace");
        return terminal;
    }

    private static int[] ColoursIn(string bytes) =>
    [
        .. Attributes().Matches(bytes)
            .SelectMany(code => code.Groups[1].Value.Split(';', StringSplitOptions.RemoveEmptyEntries))
            .Select(number => int.Parse(number, CultureInfo.InvariantCulture))
            .Where(number => number is (>= 30 and <= 38) or (>= 40 and <= 48) or (>= 90 and <= 107)),
    ];

    [GeneratedRegex(@"\u001b\[([\d;]*)m")]
    private static partial Regex Attributes();
}
