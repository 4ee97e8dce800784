namespace FieldCheck.Tests.Terminal;

/// <summary>However the program ends, the terminal is given back as it was and unsaved work is kept.</summary>
public sealed class EndTests : IDisposable
{
    private readonly Session _session = new();

    [TerminalTheory]
    [InlineData("TERM", 15)]
    [InlineData("HUP", 1)]
    [InlineData("INT", 2)]
    [InlineData("QUIT", 3)]
    public void Signal_RestoresTheTerminal_KeepsTheTypingAtOnce_AndGives128AndItsNumber(string signal, int number)
    {
        using PseudoTerminal terminal = Typing("4.25");

        terminal.Signal(signal);

        Assert.Equal(128 + number, terminal.Finish());
        AssertRestored(terminal);
        Assert.Contains("4.25 m", KeptText, StringComparison.Ordinal);
    }

    [TerminalFact]
    public void Left_RestoresTheTerminal()
    {
        using PseudoTerminal terminal = _session.Open();

        terminal.Press("\u0011");

        Assert.Equal(0, terminal.Finish());
        AssertRestored(terminal);
    }

    [TerminalFact]
    public void LineThatTakesNothingAnyMore_IsNotWaitedForForEver()
    {
        using PseudoTerminal terminal = Typing("4.25");
        terminal.StopReading();
        for (int turn = 0; turn < 60; turn++)
        {
            terminal.Press(turn % 2 == 0 ? "\u001bOS" : "\u001bOR");
            Thread.Sleep(30);
        }

        terminal.Signal("HUP");

        Assert.Equal(128 + 1, terminal.Finish());
        Assert.Contains("4.25 m", KeptText, StringComparison.Ordinal);
    }

    [TerminalFact]
    public void LineThatDrops_EndsTheProgramWithTheTypingKept()
    {
        using PseudoTerminal terminal = Typing("4.25");

        terminal.HangUp();

        Assert.Equal(128 + 1, terminal.Finish());
        Assert.Contains("4.25 m", KeptText, StringComparison.Ordinal);
    }

    [TerminalTheory]
    [InlineData(StartupHook.CrashScreen)]
    [InlineData(StartupHook.CrashElsewhere)]
    public void Crash_RestoresTheTerminal_KeepsTheTyping_AndIsToldWithoutSteps(string where)
    {
        string trigger = Path.Combine(_session.Home, "now");
        using PseudoTerminal terminal = _session.Open(
            [],
            (200, 80),
            ("DOTNET_STARTUP_HOOKS", typeof(StartupHook).Assembly.Location), (where, trigger));
        terminal.Press("4.25");
        terminal.WaitFor("[4.25");

        File.WriteAllText(trigger, "");

        Assert.Equal(4, terminal.Finish());
        AssertRestored(terminal);
        Assert.Contains("4.25 m", KeptText, StringComparison.Ordinal);
        Assert.Matches(@"(?m)^fieldcheck: the program failed\. ", terminal.Screen);
        Assert.Matches(@"(?m)^To whoever mends it: version \d", terminal.Screen);
        Assert.Matches(@"(?m)^System\.InvalidOperationException: broken\non demand\n   at ", terminal.Screen);
        Assert.Matches(@"(?m)^Unsaved work is kept in ", terminal.Screen);
    }

    public void Dispose() => _session.Dispose();

    private string KeptText => File.ReadAllText(Assert.Single(Directory.GetFiles(_session.Kept, "*.toml")));

    private PseudoTerminal Typing(string keys)
    {
        PseudoTerminal terminal = _session.Open();
        terminal.Press(keys);
        terminal.WaitFor("[" + keys);
        return terminal;
    }

    // The cursor is seen, and nothing else is on: not the other screen, paste, mouse or keypad.
    private static void AssertRestored(PseudoTerminal terminal)
    {
        Assert.Equal([25], terminal.Modes);
        Assert.Equal(terminal.LineModesAtStart, terminal.LineModes);
    }
}
