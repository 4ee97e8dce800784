using System.Runtime.CompilerServices;
using System.Text;
using FieldCheck.Views;
using Microsoft.Win32.SafeHandles;

namespace FieldCheck.CommandLine;

/// <summary>Everything around the program that it reads or writes, so that a test can stand in for it.</summary>
internal sealed record CommandEnvironment
{
    private const int LeastWidth = 40;
    private const int MostWidth = 120;

    // A line of JSON goes out in one piece, so that a signal does not cut it.
    private const int LongLine = 1 << 16;

    /// <summary>Opens standard input, as bytes.</summary>
    public required Func<Stream> OpenInput { get; init; }

    /// <summary>How the bytes of the input are text, where lines are typed.</summary>
    public Encoding InputEncoding { get; init; } = new UTF8Encoding(false);

    /// <summary>Standard output.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Standard error.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>True: both standard input and standard output are a terminal, so the form can be drawn.</summary>
    public required bool IsTerminal { get; init; }

    /// <summary>True: standard error is a terminal and nothing else is written to it.</summary>
    public bool ShowsProgress { get; init; }

    /// <summary>Characters on a line of the output.</summary>
    public required Func<int> Width { get; init; }

    /// <summary>Characters on a line of text: the output's, where that is neither too narrow nor too wide to read.</summary>
    public int TextWidth => Math.Clamp(Width(), LeastWidth, MostWidth);

    /// <summary>True: the terminal shows all of Unicode, and not only ASCII.</summary>
    public bool IsUtf8 => ShowsUtf8(OperatingSystem.IsWindows());

    // Windows tells it by the code page of the console, and has no locale in its variables.
    internal bool ShowsUtf8(bool isWindows) => isWindows
        ? Output.Encoding.CodePage == Encoding.UTF8.CodePage
        : Locale is string locale && (locale.Contains("UTF-8", StringComparison.OrdinalIgnoreCase)
            || locale.Contains("UTF8", StringComparison.OrdinalIgnoreCase));

    // POSIX: the first of the three that is set and not empty says it.
    private string? Locale => Set("LC_ALL") ?? Set("LC_CTYPE") ?? Set("LANG");

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
            OpenInput = () => IsUnixTerminal(Console.IsInputRedirected)
                ? Bytes(0, FileAccess.Read)
                : Console.OpenStandardInput(),
            InputEncoding = Console.InputEncoding,
            Output = Writer(1, Console.OpenStandardOutput, Console.IsOutputRedirected),
            Error = Writer(2, Console.OpenStandardError, Console.IsErrorRedirected),
            IsTerminal = !Console.IsInputRedirected && !Console.IsOutputRedirected,
            ShowsProgress = !Console.IsErrorRedirected && Console.IsOutputRedirected,
            Width = () => Console.IsOutputRedirected ? WidthOfAPipe : TerminalWidth(WidthOfAPipe),
            CurrentFolder = WorkingFolder(),
            HomeFolder = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile),
            Variable = Environment.GetEnvironmentVariable,
            Clock = TimeProvider.System,
            OpenForm = EnterForm,
        };
    }

    private string? Set(string variable) => Variable(variable) is { Length: > 0 } value ? value : null;

    // Kept out of its callers: loading the toolkit costs a tenth of a second that nothing but the form needs.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static int EnterForm(StartRequest start)
    {
        // The toolkit expects a console that the runtime has set up.
        _ = Console.Out;
        return TerminalScreen.Run(start);
    }

    // A folder that is gone has no name any more but the one the shell knows it by: what is looked for there is not found.
    private static string WorkingFolder()
    {
        try
        {
            return Environment.CurrentDirectory;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return Environment.GetEnvironmentVariable("PWD") is string shells && Path.IsPathFullyQualified(shells)
                ? shells
                : Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        }
    }

    // The runtime's own reader and writer switch a terminal into another mode by escape codes; bytes do not.
    private static FileStream Bytes(int descriptor, FileAccess access) =>
        new(new SafeFileHandle(descriptor, ownsHandle: false), access, bufferSize: 0);

    private static bool IsUnixTerminal(bool isRedirected) => !isRedirected && !OperatingSystem.IsWindows();

    private static StreamWriter Writer(int descriptor, Func<Stream> open, bool isRedirected)
    {
        Encoding encoding = isRedirected || Console.OutputEncoding is UTF8Encoding
            ? new UTF8Encoding(false)
            : Console.OutputEncoding;
        Stream stream = IsUnixTerminal(isRedirected) ? Bytes(descriptor, FileAccess.Write)
            : isRedirected && !OperatingSystem.IsWindows() ? PipeOr(descriptor, open)
            : open();
        return new StreamWriter(stream, encoding, LongLine) { AutoFlush = true };
    }

    // The runtime's own stream does not tell that the reader of a pipe has gone, so that a batch would never end. Of a
    // file it keeps the system's own place, which those who write after us in the same file need.
    private static Stream PipeOr(int descriptor, Func<Stream> open)
    {
        try
        {
            FileStream bytes = Bytes(descriptor, FileAccess.Write);
            return bytes.CanSeek ? open() : bytes;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return open();
        }
    }

    private static int TerminalWidth(int otherwise)
    {
        // Some terminals tell no width, as 0.
        int width = Console.WindowWidth;
        return width > 0 ? width : otherwise;
    }
}
