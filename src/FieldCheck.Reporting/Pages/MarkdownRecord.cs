using System.Collections.Immutable;
using System.Diagnostics;
using System.Text;

namespace FieldCheck.Reporting.Pages;

/// <summary>Writes a record as Markdown (CommonMark, with pipe tables as GitHub Flavored Markdown has them).</summary>
public static class MarkdownRecord
{
    private const string Special = @"\`*_{}[]<>()#+-.!|~&""'";
    private const string Fence = "```";

    /// <summary>Writes a record.</summary>
    /// <param name="record">The record.</param>
    /// <returns>The text, every line ended by a line feed.</returns>
    public static string Of(CheckRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        IEnumerable<string> lines = [$"# {Escaped(record.Title)}", .. record.Blocks.SelectMany(Lines)];
        return string.Concat(lines.Select(line => line + "\n"));
    }

    private static IEnumerable<string> Lines(RecordBlock block) => block switch
    {
        RecordBlock.Heading heading => ["", $"{new string('#', heading.Level)} {Escaped(heading.Text)}"],
        RecordBlock.Facts facts => Table(
            [new("what"), new("as given")],
            [.. facts.All.Select(fact => (ImmutableArray<string>)[fact.Name, fact.Text])]),
        RecordBlock.Paragraph paragraph =>
            ["", paragraph.IsWarning ? $"**{Escaped(paragraph.Text)}**" : Escaped(paragraph.Text)],
        RecordBlock.Sentences sentences =>
            ["", .. sentences.All.Select(line => $"- {Escaped(line.TrimStart('-', ' '))}")],
        RecordBlock.Table table => ["", $"*{Escaped(table.Caption)}*", .. Table(table.Columns, table.Rows)],
        RecordBlock.Figure figure =>
            ["", $"*{Escaped(figure.Caption)}.* {Escaped(figure.Description)}", .. Fenced(figure.Sketch)],
        RecordBlock.Lines lines => Fenced([.. lines.All.Select(line => line.Text)]),
        RecordBlock.Signatures signatures => Table(
            [new("who"), new("name"), new("date"), new("signature")],
            [.. signatures.All.Select(one => (ImmutableArray<string>)[one.Role, one.Name, "", ""])]),
        _ => throw new UnreachableException(),
    };

    private static IEnumerable<string> Table(
        ImmutableArray<RecordColumn> columns, ImmutableArray<ImmutableArray<string>> rows) =>
    [
        "",
        Row(columns.Select(column => column.Heading)),
        $"| {string.Join(" | ", columns.Select(column => column.IsNumber ? "---:" : "---"))} |",
        .. rows.Select(row => Row(row)),
    ];

    private static string Row(IEnumerable<string> cells) => $"| {string.Join(" | ", cells.Select(Escaped))} |";

    // The lines hold no back quote: they are the program's own letters and names in plain ASCII without it.
    private static IEnumerable<string> Fenced(ImmutableArray<string> lines) =>
        ["", Fence, .. lines.Select(line => line.Replace('`', '\'').TrimEnd()), Fence];

    /// <summary>A text in which nothing is taken for Markdown or HTML.</summary>
    private static string Escaped(string text)
    {
        StringBuilder escaped = new();
        for (int i = 0; i < text.Length; i++)
        {
            bool isPlain = !Special.Contains(text[i], StringComparison.Ordinal) || IsHarmless(text, i);
            _ = isPlain ? escaped.Append(text[i]) : escaped.Append('\\').Append(text[i]);
        }

        return escaped.ToString();
    }

    /// <summary>Signs that mean nothing inside a line but only at its start, so that figures stay readable.</summary>
    private static bool IsHarmless(string text, int at) =>
        at > 0 && text[at] is '.' or '-' or '+' or '(' or ')' or '\'' or '"' or '!' or '#' && at > 0 && !IsListNumber(text, at);

    private static bool IsListNumber(string text, int at) => text.AsSpan(0, at).IndexOfAnyExceptInRange('0', '9') < 0;
}
