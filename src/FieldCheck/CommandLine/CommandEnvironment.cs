using System.Runtime.CompilerServices;
using System.Text;
using FieldCheck.Views;

namespace FieldCheck.CommandLine;

/// <summary>Everything around the program that it reads or writes, so that a test can stand in for it.</summary>
internal sealed record CommandEnvironment
{
    /// <summary>Standard input, as bytes.</summary>
    public required Stream Input { get; init; }

    /// <summary>Standard output.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Standard error.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>True: both standard input and standard output are a terminal, so the form can be drawn.</summary>
    public required bool IsTerminal { get; init; }

    /// <summary>Characters on a line of the output.</summary>
    public required int Width { get; init; }

    /// <summary>The folder that relative names start from.</summary>
    public required string CurrentFolder { get; init; }

    /// <summary>The person's home folder.</summary>
    public required string HomeFolder { get; init; }

    /// <summary>Reads a variable of the environment; null where it is not set.</summary>
    public required Func<string, string?> Variable { get; init; }

    /// <summary>The clock.</summary>
    public required TimeProvider Clock { get; init; }

    /// <summary>Opens the form and gives the exit status when it is left.</summary>
    public required Func<StartRequest, int> OpenForm { get; init; }

    /// <summary>What stands around this process.</summary>
    internal static CommandEnvironment OfProcess()
    {
        const int WidthOfAPipe = 80;
        return new()
        {
            Input = Console.OpenStandardInput(),
            Output = Console.IsOutputRedirected ? Utf8(Console.OpenStandardOutput()) : Console.Out,
            Error = Console.IsErrorRedirected ? Utf8(Console.OpenStandardError()) : Console.Error,
            IsTerminal = !Console.IsInputRedirected && !Console.IsOutputRedirected,
            Width = Console.IsOutputRedirected ? WidthOfAPipe : TerminalWidth(WidthOfAPipe),
            CurrentFolder = Environment.CurrentDirectory,
            HomeFolder = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile),
            Variable = Environment.GetEnvironmentVariable,
            Clock = TimeProvider.System,
            OpenForm = EnterForm,
        };
    }

    // Kept out of its callers: loading the toolkit costs a tenth of a second that nothing but the form needs.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static int EnterForm(StartRequest start) => TerminalScreen.Run(start);

    private static StreamWriter Utf8(Stream stream) => new(stream, new UTF8Encoding(false)) { AutoFlush = true };

    private static int TerminalWidth(int otherwise)
    {
        // Some terminals tell no width, as 0.
        int width = Console.WindowWidth;
        return width > 0 ? width : otherwise;
    }
}
