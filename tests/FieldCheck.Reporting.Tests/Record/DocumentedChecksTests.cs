using System.Collections.Immutable;
using FieldCheck.Reporting.Record;

namespace FieldCheck.Reporting.Tests.Record;

/// <summary>The checks that the documentation shows are those of the built-in pipe rack, with rows left out.</summary>
public sealed class DocumentedChecksTests
{
    [Theory]
    [InlineData("README.md", "  what ")]
    [InlineData("docs/using.md", "CHECKS\n")]
    public void EveryLineShown_StandsOnThePage(string page, string first)
    {
        ImmutableArray<string> told = CheckText.Lines(Sheets.Preset("pipe-rack-beam"), new CheckRequest("", []));
        string[] shown =
        [
            .. File.ReadLines(Path.Combine(Root(), page))
                .SkipWhile(line => !(line + "\n").StartsWith(first, StringComparison.Ordinal))
                .TakeWhile(line => line.Trim() != "```"),
        ];

        Assert.InRange(shown.Length, 5, 30);
        Assert.All(shown, line => Assert.Contains(line, told));
    }

    private static string Root()
    {
        DirectoryInfo folder = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "FieldCheck.sln")))
        {
            folder = folder.Parent!;
        }

        return folder.FullName;
    }
}
