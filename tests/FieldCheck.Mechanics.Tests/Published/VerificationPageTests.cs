namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>
/// docs/verification.md shows every printed figure beside ours. FIELDCHECK_ACCEPT=1 writes the tables anew; then read the
/// change.
/// </summary>
public sealed class VerificationPageTests
{
    private const string Begin = "<!-- published: begin, written by VerificationPageTests with FIELDCHECK_ACCEPT=1 -->";
    private const string End = "<!-- published: end -->";

    [Fact]
    public void TablesOnThePage_AreThoseOfThePublishedFigures()
    {
        string path = Path.Combine(Root(), "docs", "verification.md");
        string page = File.ReadAllText(path).ReplaceLineEndings("\n");
        int from = page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = page.IndexOf(End, StringComparison.Ordinal);
        string tables = "\n" + string.Join('\n', Lines()) + "\n";
        if (Environment.GetEnvironmentVariable("FIELDCHECK_ACCEPT") == "1")
        {
            File.WriteAllText(path, page[..from] + tables + page[to..]);
            return;
        }

        Assert.Equal(tables, page[from..to]);
    }

    [Fact]
    public void EveryFigureThatWasAdmitted_HasARow() =>
        Assert.Equal(
            CoverageTests.Checked.Sum(file => PublishedFile.Cases(file).Sum(example => example.Values.Length)),
            CoverageTests.Checked.SelectMany(PublishedTable.Of).Count(IsFigure));

    private static bool IsFigure(string line) =>
        line.StartsWith('|') && !line.StartsWith("| ---", StringComparison.Ordinal) && !line.StartsWith("| what", StringComparison.Ordinal);

    private static IEnumerable<string> Lines()
    {
        foreach (string line in PublishedTable.Summary(CoverageTests.Checked))
        {
            yield return line;
        }

        foreach (string file in CoverageTests.Checked)
        {
            yield return "";
            foreach (string line in PublishedTable.Of(file))
            {
                yield return line;
            }
        }
    }

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FieldCheck.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("FieldCheck.sln not found");
    }
}
