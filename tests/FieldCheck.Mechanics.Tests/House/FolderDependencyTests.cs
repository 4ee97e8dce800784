using System.Text.RegularExpressions;

namespace FieldCheck.Mechanics.Tests.House;

/// <summary>
/// Which folder of Mechanics may see which: Model sees none, Response sees Model, Solving sees both; the hand methods
/// are a second opinion and see Model only, so that no fault of the solver can reach them.
/// </summary>
public sealed class FolderDependencyTests
{
    private static readonly Dictionary<string, string[]> MaySee = new()
    {
        ["Model"] = [],
        ["Response"] = ["Model"],
        ["Solving"] = ["Model", "Response"],
        ["HandMethods"] = ["Model"],
        ["Envelopes"] = ["Model", "Response", "Solving"],
        ["Strength"] = ["Model", "Response", "Solving", "Envelopes"],
        ["Checks"] = ["Model", "Response", "Solving", "HandMethods", "Envelopes"],
    };

    public static TheoryData<string> Files() => new(Directory
        .EnumerateFiles(Source(), "*.cs", SearchOption.AllDirectories)
        .Select(file => Path.GetRelativePath(Source(), file).Replace('\\', '/')));

    [Theory]
    [MemberData(nameof(Files))]
    public void File_SeesOnlyTheFoldersThatItMay(string file)
    {
        string text = File.ReadAllText(Path.Combine(Source(), file));
        string folder = Path.GetDirectoryName(file)!;
        if (folder.Length == 0)
        {
            folder = "Model";
        }

        string[] allowed = MaySee[folder];

        string[] seen = [.. MaySee.Keys.Where(other => other != folder && Sees(text, other))];

        Assert.Empty(seen.Except(allowed));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Namespace_IsTheFolder(string file)
    {
        string folder = Path.GetDirectoryName(file)!;
        string expected = "FieldCheck.Mechanics" + (folder.Length == 0 ? "" : "." + folder.Replace('/', '.'));

        Assert.Contains($"\nnamespace {expected};", "\n" + File.ReadAllText(Path.Combine(Source(), file)));
    }

    [Theory]
    [InlineData("using FieldCheck.Mechanics.Solving;", true)]
    [InlineData("Solving.BeamSolver solver = new();", true)]
    [InlineData("/// <see cref=\"Solving.BeamSolver\"/>", true)]
    [InlineData("answer.Solving.Length", false)]
    [InlineData("/// Solving takes a while.", false)]
    public void Seeing_IsAUsingOrAQualifiedName(string line, bool sees) => Assert.Equal(sees, Sees(line, "Solving"));

    private static bool Sees(string text, string folder) =>
        Regex.IsMatch(text, $@"Mechanics\.{folder}\b|(?<![\w.]){folder}\.[A-Z]");

    private static string Source()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FieldCheck.sln")))
        {
            folder = folder.Parent;
        }

        return Path.Combine(
            folder?.FullName ?? throw new DirectoryNotFoundException("FieldCheck.sln not found."),
            "src",
            "FieldCheck.Mechanics");
    }
}
