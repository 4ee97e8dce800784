namespace FieldCheck.Tests.Terminal;

/// <summary>The program on a terminal, in a home and a folder of its own.</summary>
internal sealed class Session : IDisposable
{
    private readonly DirectoryInfo _home = Directory.CreateTempSubdirectory("fieldcheck-");

    internal Session()
    {
        Folder = _home.CreateSubdirectory("site").FullName;
    }

    /// <summary>The program as it was built, or another build of it that FIELDCHECK_EXECUTABLE names.</summary>
    internal static string Built { get; } = Environment.GetEnvironmentVariable("FIELDCHECK_EXECUTABLE")
        ?? Path.Combine(AppContext.BaseDirectory, "fieldcheck");

    /// <summary>The program that is started.</summary>
    internal string Executable { get; init; } = Built;

    /// <summary>The program's current folder.</summary>
    internal string Folder { get; }

    /// <summary>The person's home folder.</summary>
    internal string Home => _home.FullName;

    /// <summary>The folder of unsaved work.</summary>
    internal string Kept => Path.Combine(Home, "state", "fieldcheck", "recover");

    /// <summary>Starts the program and waits until it has drawn its screen.</summary>
    internal PseudoTerminal Open(
        IEnumerable<string> words, (int Width, int Height) size, params ReadOnlySpan<(string Name, string? Value)> variables)
    {
        PseudoTerminal terminal = Begin(words, size, variables);
        terminal.WaitFor("Spans");
        return terminal;
    }

    internal PseudoTerminal Open(params ReadOnlySpan<(string Name, string? Value)> variables) => Open([], (100, 30), variables);

    /// <summary>Starts the program and waits for nothing.</summary>
    internal PseudoTerminal Begin(
        IEnumerable<string> words, (int Width, int Height) size, params ReadOnlySpan<(string Name, string? Value)> variables) =>
        PseudoTerminal.Start(
            Executable,
            words,
            Folder,
            size,
            [("HOME", Home), ("XDG_STATE_HOME", Path.Combine(Home, "state")), ("XDG_CONFIG_HOME", null),
                ("XDG_DATA_HOME", null), ("FIELDCHECK_PRESETS", null), .. variables]);

    public void Dispose() => _home.Delete(recursive: true);
}
