using System.Reflection;
using System.Text.RegularExpressions;
using FieldCheck.CommandLine;
using FieldCheck.Sheet;

namespace FieldCheck.Tests.CommandLine;

/// <summary>docs/command-line.md says all that other programs rely on, and nothing that is not there.</summary>
public sealed partial class DocumentationTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(RepositoryRoot(), "docs", "command-line.md"));

    private static readonly string[] Codes =
    [
        .. typeof(MessageCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
            .Where(field => field.IsLiteral)
            .Select(field => (string)field.GetRawConstantValue()!),
    ];

    [Fact]
    public void MessageCodes_AreAllListedAndNoOthers() =>
        Assert.Equal(
            Codes.Order(StringComparer.Ordinal),
            CodeRow().Matches(Page).Select(row => row.Groups["code"].Value).Order(StringComparer.Ordinal));

    [Fact]
    public void StatusOfEachCode_IsTheOneListed() =>
        Assert.All(
            CodeRow().Matches(Page),
            row => Assert.Equal(
                MessageCodes.StatusOf(row.Groups["code"].Value),
                row.Groups["status"].Value.Trim() is { Length: > 0 } status ? Enum.Parse<CheckStatus>(status) : CheckStatus.Holds));

    [Fact]
    public void EveryOption_IsDescribed() =>
        Assert.All(Option.All, option => Assert.Matches($"`[^`]*{option.Name}[` ]", Page));

    [Fact]
    public void EveryCommand_IsDescribed() =>
        Assert.All(CommandWords.All, command => Assert.Contains($"`fieldcheck {command}", Page));

    [Fact]
    public void EveryExample_IsGoodUsage()
    {
        string[] lines = [.. Example().Matches(Page).Select(match => match.Groups["words"].Value)];

        Assert.True(lines.Length >= 6);
        Assert.All(lines, line => Assert.IsType<Sheet.Reading.Reading<Arguments>.Accepted>(
            Arguments.Read([.. Word().Matches(line).Select(word => word.Value.Trim('"'))])));
    }

    private static string RepositoryRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FieldCheck.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName
            ?? throw new DirectoryNotFoundException("FieldCheck.sln not found above " + AppContext.BaseDirectory);
    }

    [GeneratedRegex(@"^\| `(?<code>[a-z_]+)` \| [A-Z][^|]*\.[^|]* \| ?(?<status>\d?) ?\|$", RegexOptions.Multiline)]
    private static partial Regex CodeRow();

    [GeneratedRegex(@"^fieldcheck(?<words>[^#<\n]*)", RegexOptions.Multiline)]
    private static partial Regex Example();

    [GeneratedRegex("\"[^\"]*\"|[^ ]+")]
    private static partial Regex Word();
}
