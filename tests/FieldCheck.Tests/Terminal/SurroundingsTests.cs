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
        Assert.Equal(undisturbed.Screen, terminal.Screen);
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
        Assert.Equal(coloured.Screen, terminal.Screen);
    }

    private static PseudoTerminal Type(Session session, ReadOnlySpan<(string Name, string? Value)> variables)
    {
        PseudoTerminal terminal = session.Open(variables);
        terminal.Press("x");
        terminal.WaitFor("[x");
        terminal.Press("\u001bOS");
        terminal.WaitFor("[Plots]");
        terminal.Press("\u001bOR");
        terminal.WaitFor("[Beam]");
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
