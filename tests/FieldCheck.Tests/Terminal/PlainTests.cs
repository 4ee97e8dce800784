namespace FieldCheck.Tests.Terminal;

/// <summary>The form in lines on a real terminal: no escape codes, nothing of the toolkit, and the same recovery.</summary>
public sealed class PlainTests : IDisposable
{
    private const string EndOfInput = "\u0004";

    private readonly Session _session = new();

    [TerminalTheory]
    [InlineData("xterm-256color", "--plain")]
    [InlineData("dumb", "")]
    public void Task_IsDoneWithoutAnEscapeCodeAndWithoutTheToolkit(string term, string option)
    {
        string list = Path.Combine(_session.Home, "loaded.txt");
        using PseudoTerminal terminal = _session.Begin(
            option.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            (80, 24),
            ("TERM", term),
            ("DOTNET_STARTUP_HOOKS", typeof(StartupHook).Assembly.Location),
            (StartupHook.Variable, list));

        // 12 kN/m along 2.4 m, by hand: A = B = 14.40 kN, and in the middle 12 * 2.4^2 / 8 = 8.64 kNm.
        Type(terminal, "new", "2.4", "stop", "load 1 size 12/m", "at 1.2", "save joist", "leave");

        Assert.Equal(0, terminal.Finish());
        Assert.DoesNotContain('\u001b', terminal.Bytes);
        Assert.Contains("Reactions: A 14.40 kilonewtons up, B 14.40 kilonewtons up.", terminal.Bytes, StringComparison.Ordinal);
        Assert.Contains("moment +8.64 kilonewton metres", terminal.Bytes, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(_session.Folder, "joist.toml")));
        Assert.Contains("fieldcheck", File.ReadAllLines(list));
        Assert.DoesNotContain(
            File.ReadAllLines(list), name => name.StartsWith("Terminal.Gui", StringComparison.Ordinal));
    }

    [TerminalTheory]
    [InlineData("TERM", 15)]
    [InlineData("HUP", 1)]
    [InlineData("INT", 2)]
    [InlineData("QUIT", 3)]
    public void Signal_KeepsTheWorkAndGives128AndItsNumber(string signal, int number)
    {
        using PseudoTerminal terminal = Begin();
        Type(terminal, "load 2 size 4.25 kN");
        terminal.WaitFor("Read as point load, 4.25 kN");

        terminal.Signal(signal);

        Assert.Equal(128 + number, terminal.Finish());
        Assert.Contains("4.25 kN", KeptText, StringComparison.Ordinal);
    }

    [TerminalFact]
    public void LineThatDrops_EndsTheProgramWithTheWorkKept()
    {
        using PseudoTerminal terminal = Begin();
        Type(terminal, "load 2 size 4.25 kN");
        terminal.WaitFor("Read as point load, 4.25 kN");

        terminal.HangUp("\r");

        Assert.Equal(128 + 1, terminal.Finish());
        Assert.Contains("4.25 kN", KeptText, StringComparison.Ordinal);
    }

    [TerminalFact]
    public void WorkLeftInLines_IsOfferedByTheForm_AndBack()
    {
        using (PseudoTerminal lines = Begin())
        {
            Type(lines, "load 2 size 4.25 kN");
            lines.WaitFor("Read as point load, 4.25 kN");
            lines.Press(EndOfInput);
            Assert.Equal(0, lines.Finish());
        }

        using (PseudoTerminal form = _session.Open())
        {
            form.WaitFor("Unsaved work from");
            form.Press("\r");
            form.WaitFor("4.25 kN");
            form.Signal("TERM");
            Assert.Equal(128 + 15, form.Finish());
        }

        using PseudoTerminal again = Begin();
        again.WaitFor("Take it up again, yes or no?");
        Type(again, "yes", "show");
        again.WaitFor("size 4.25 kN");
    }

    public void Dispose() => _session.Dispose();

    private string KeptText => File.ReadAllText(Assert.Single(Directory.GetFiles(_session.Kept)));

    private PseudoTerminal Begin()
    {
        PseudoTerminal terminal = _session.Begin(["--plain"], (80, 24));
        terminal.WaitFor("?");
        return terminal;
    }

    private static void Type(PseudoTerminal terminal, params ReadOnlySpan<string> lines)
    {
        foreach (string line in lines)
        {
            terminal.Press(line + "\r");
        }
    }
}
