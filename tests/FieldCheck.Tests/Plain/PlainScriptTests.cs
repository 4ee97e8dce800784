using System.Runtime.CompilerServices;
using FieldCheck.Plain;

namespace FieldCheck.Tests.Plain;

/// <summary>Scripts/*.lines: what is typed; Expected/*.txt: all that is seen then.</summary>
/// <remarks>
/// Lines with "!" are not typed: "!start FILE" names the file, "!changed FILE" lets another hand change a file,
/// "!file FILE" shows a file, "!end" ends the input; "!about" says what the script is about. Set FIELDCHECK_ACCEPT=1 to
/// write what is seen anew, then read it.
/// </remarks>
public sealed class PlainScriptTests
{
    public static TheoryData<string> Scripts() =>
        new(Directory.GetFiles(Folder("Scripts"), "*.lines")
            .Select(Path.GetFileNameWithoutExtension)
            .OfType<string>()
            .Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Scripts))]
    public void LinesTyped_LeadToWhatIsSeen(string name)
    {
        string seen = Run(File.ReadAllLines(Path.Combine(Folder("Scripts"), name + ".lines")));

        string expected = Path.Combine(Folder("Expected"), name + ".txt");
        if (Environment.GetEnvironmentVariable("FIELDCHECK_ACCEPT") == "1")
        {
            File.WriteAllText(expected, seen);
        }

        Assert.Equal(File.ReadAllText(expected), seen);
    }

    [Theory]
    [InlineData("overhang")]
    [InlineData("enough")]
    public void ConversationInTheDocumentation_IsWhatIsSeen(string name)
    {
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "plain.md"));

        Assert.Contains("```\n" + File.ReadAllText(Path.Combine(Folder("Expected"), name + ".txt")).TrimEnd() + "\n```", page);
    }

    private static string Run(string[] lines)
    {
        string? start = lines.FirstOrDefault(line => line.StartsWith("!start ", StringComparison.Ordinal))?[7..];
        using Talk talk = new(start);
        foreach (string line in lines)
        {
            Do(talk, line);
        }

        return talk.Written;
    }

    private static void Do(Talk talk, string line)
    {
        string[] words = line.Split(' ', 2);
        switch (words[0])
        {
            case "!about" or "!start":
                break;
            case "!changed":
                File.AppendAllText(talk.PathOf(words[1]), "# by another hand\n");
                break;
            case "!file":
                talk.Note($"\n[{words[1]}]\n{File.ReadAllText(talk.PathOf(words[1]))}[end]\n");
                break;
            case "!end":
                talk.Happen(new PlainEvent.InputEnded());
                break;
            default:
                talk.Say(line);
                break;
        }
    }

    private static string Folder(string name, [CallerFilePath] string file = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, name));
}
