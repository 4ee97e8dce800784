namespace FieldCheck.Tests.Terminal;

/// <summary>A test that needs a pseudo-terminal; where there is none it is skipped, and says why.</summary>
internal sealed class TerminalFactAttribute : FactAttribute
{
    public TerminalFactAttribute() => Skip = PseudoTerminal.WhyNot;
}

/// <summary>The same with data.</summary>
internal sealed class TerminalTheoryAttribute : TheoryAttribute
{
    public TerminalTheoryAttribute() => Skip = PseudoTerminal.WhyNot;
}
