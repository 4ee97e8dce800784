using System.Globalization;
using System.Text.RegularExpressions;
using FieldCheck.Sheet.Tests.Document.Reference;
using Tomlyn;
using Tomlyn.Model;

namespace FieldCheck.Sheet.Tests.Catalogue;

/// <summary>
/// docs/sources.md names every source that a shipped file or a published figure names, and every work that a page cites.
/// FIELDCHECK_ACCEPT=1 writes its lists anew; then read the change.
/// </summary>
public sealed partial class SourcesPageTests
{
    private const string Page = "docs/sources.md";
    private const string Begin = "<!-- sources: begin, written by SourcesPageTests with FIELDCHECK_ACCEPT=1 -->";
    private const string End = "<!-- sources: end -->";

    [Fact]
    public void ListsOnThePage_AreThoseOfTheFiles()
    {
        string page = RepositoryFile.Read(Page);
        int from = page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = page.IndexOf(End, StringComparison.Ordinal);
        string lists = "\n" + string.Join('\n', Lists()) + "\n";
        if (RepositoryFile.IsAccepting)
        {
            RepositoryFile.Write(Page, page[..from] + lists + page[to..]);
            return;
        }

        Assert.Equal(lists, page[from..to]);
    }

    [Fact]
    public void EveryWorkThatAPageCites_IsListed_AndEveryOneListedIsCited()
    {
        string[] listed = [.. Listed().Matches(RepositoryFile.Read(Page)).Select(row => row.Groups["key"].Value)];
        string[] cited =
        [
            .. Directory.GetFiles(Path.Combine(RepositoryFile.Root, "docs"), "*.md")
                .Select(path => Path.GetRelativePath(RepositoryFile.Root, path))
                .SelectMany(name => Cited().Matches(RepositoryFile.Read(name)).Select(key => key.Groups["key"].Value))
                .Distinct(),
        ];

        Assert.InRange(listed.Length, 15, 100);
        Assert.Equal(listed.Order(StringComparer.Ordinal), cited.Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Lists()
    {
        foreach (string folder in new[] { "presets/sections", "presets/materials", "presets/factors", "presets/combinations" })
        {
            foreach (string line in Table($"In {folder}", Named(folder)))
            {
                yield return line;
            }
        }

        foreach (string line in Table(
            "Of published figures", Named("tests/FieldCheck.Mechanics.Tests/Published")))
        {
            yield return line;
        }
    }

    private static IEnumerable<string> Table(string heading, IEnumerable<(string Source, bool IsRead)> named)
    {
        yield return "";
        yield return $"### {heading}";
        yield return "";
        yield return "| source | entries | of them read there, all or in part |";
        yield return "| --- | --- | --- |";
        foreach (IGrouping<string, bool> source in named.GroupBy(one => one.Source, one => one.IsRead).OrderBy(one => one.Key, StringComparer.Ordinal))
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"| {source.Key.Replace("|", "\\|", StringComparison.Ordinal)} | {source.Count()} | {source.Count(isRead => isRead)} |");
        }
    }

    private static IEnumerable<(string Source, bool IsRead)> Named(string folder) =>
        Directory.GetFiles(Path.Combine(RepositoryFile.Root, folder), "*.toml")
            .Order(StringComparer.Ordinal)
            .SelectMany(path => Entries(TomlSerializer.Deserialize<TomlTable>(File.ReadAllText(path))!));

    private static IEnumerable<(string Source, bool IsRead)> Entries(object node) => node switch
    {
        TomlTable table when table.TryGetValue("source", out object? source) && source is string text =>
            [(text, IsRead(table)), .. table.Values.SelectMany(Entries)],
        TomlTable table => table.Values.SelectMany(Entries),
        TomlTableArray rows => rows.SelectMany(Entries),
        TomlArray list => list.OfType<object>().SelectMany(Entries),
        _ => [],
    };

    private static bool IsRead(TomlTable table) => table switch
    {
        _ when table.TryGetValue("seen", out object? seen) => (bool)seen,
        _ when table.TryGetValue("status", out object? status) => ((string)status).Contains("read in", StringComparison.Ordinal),
        _ => false,
    };

    [GeneratedRegex(@"^\| (?<key>[a-z][a-z0-9-]*-[0-9]+[a-z0-9-]*) \| ", RegexOptions.Multiline)]
    private static partial Regex Listed();

    [GeneratedRegex(@"\[(?<key>[a-z][a-z-]*-[0-9]+[a-z0-9-]*)\](?!\()")]
    private static partial Regex Cited();
}
