using System.Text.RegularExpressions;
using FieldCheck.Tests.Plain;

namespace FieldCheck.Tests.Architecture;

/// <summary>
/// docs/architecture.md has a map of every folder with public types, and docs/types.md lists each of them. FIELDCHECK_ACCEPT=1
/// writes the list anew.
/// </summary>
public sealed partial class MapTests
{
    [Fact]
    public void List_HasEveryPublicType()
    {
        string path = Path.Combine(Repository.Root, "docs", "types.md");
        string page = string.Join('\n', PublicTypes.Page()) + "\n";
        if (Environment.GetEnvironmentVariable("FIELDCHECK_ACCEPT") == "1")
        {
            File.WriteAllText(path, page);
            return;
        }

        Assert.Equal(page, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void EveryPublicType_IsSaidWhatItIs() =>
        Assert.DoesNotContain(PublicTypes.Page(), line => line.StartsWith("| [", StringComparison.Ordinal) && line.EndsWith("|  |", StringComparison.Ordinal));

    /// <summary>One that opens the file listed finds the type there.</summary>
    [Fact]
    public void EveryPublicType_IsDeclaredInTheFileThatItIsListedWith() => Assert.All(
        PublicTypes.All,
        type => Assert.Matches(
            $@"(?m)^public .*\b{type.Name.Split('`')[0]}\b",
            File.ReadAllText(Path.Combine(Repository.Root, "docs", PublicTypes.Source(type)))));

    [Fact]
    public void Map_HasEveryFolderOfTheSourcesAndNoOther()
    {
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "architecture.md"));
        string sources = Path.Combine(Repository.Root, "src");

        Assert.Equal(
            Directory.EnumerateFiles(sources, "*.cs", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(sources, Path.GetDirectoryName(file)!).Replace('\\', '/'))
                .Where(folder => !folder.Split('/').Any(part => part is "obj" or "bin"))
                .Distinct()
                .Order(StringComparer.Ordinal),
            MapRow().Matches(page).Select(row => row.Groups["folder"].Value).Order(StringComparer.Ordinal));
    }

    [GeneratedRegex(@"^\| \[(?<folder>[A-Za-z./]+)\]\(\.\./src/\k<folder>\) \| \S", RegexOptions.Multiline)]
    private static partial Regex MapRow();
}
