using System.Text;
using FieldCheck.CommandLine;

namespace FieldCheck.Tests.CommandLine;

/// <summary>Stands in for the process around one run of the program, in a folder of its own.</summary>
internal sealed class Surroundings : IDisposable
{
    internal DirectoryInfo Folder { get; } = Directory.CreateTempSubdirectory("fieldcheck-");

    internal string Input { get; init; } = "";

    internal bool IsTerminal { get; init; }

    internal int Width { get; init; } = 80;

    internal TextWriter Output { get; init; } = new StringWriter();

    internal Dictionary<string, string> Variables { get; } = [];

    /// <summary>What the form was opened with, or null.</summary>
    internal StartRequest? Form { get; private set; }

    internal string Written => Output.ToString()!;

    internal string Complaints => Error.ToString();

    private StringWriter Error { get; } = new();

    internal int Run(params string[] words) => Program.Run([.. words], Environment());

    internal CommandEnvironment Environment() => new()
    {
        OpenInput = () => new MemoryStream(Encoding.UTF8.GetBytes(Input)),
        Output = Output,
        Error = Error,
        IsTerminal = IsTerminal,
        Width = () => Width,
        CurrentFolder = Folder.FullName,
        HomeFolder = Path.Combine(Folder.FullName, "home"),
        Variable = name => Variables.GetValueOrDefault(name),
        Clock = TimeProvider.System,
        OpenForm = start =>
        {
            Form = start;
            return ExitStatus.Holds;
        },
    };

    /// <summary>Writes a file below the folder.</summary>
    internal string Write(string name, string text)
    {
        string path = Path.Combine(Folder.FullName, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => Folder.Delete(recursive: true);
}
