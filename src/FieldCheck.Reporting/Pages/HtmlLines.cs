using System.Collections.Immutable;

namespace FieldCheck.Reporting.Pages;

/// <summary>
/// Lines that are kept as they stand, in HTML: a heading on the page of what it heads, and a table that has its head again
/// where a page ends within it.
/// </summary>
internal static class HtmlLines
{
    internal static string Of(ImmutableArray<RecordLine> lines)
    {
        List<string> parts = [];
        for (int from = 0; from < lines.Length;)
        {
            int to = EndOf(lines, from);
            parts.Add(Part(lines[from..to]));
            from = to;
        }

        return $"<div class=\"kept\">\n{string.Join('\n', parts)}\n</div>";
    }

    /// <summary>Where the part ends that begins with a line: a heading with the empty lines below it, a table, or what is neither.</summary>
    private static int EndOf(ImmutableArray<RecordLine> lines, int from)
    {
        int to = from + 1;
        if (lines[from].IsHeading)
        {
            while (to < lines.Length && (lines[to].IsHeading || lines[to].Text.Length == 0))
            {
                to++;
            }

            return to;
        }

        string? head = HeadOf(lines, to);
        bool isTable = head is not null && head == lines[from].Text;
        while (to < lines.Length && (isTable ? lines[to].Head == head : !lines[to].IsHeading && HeadOf(lines, to + 1) is null))
        {
            to++;
        }

        return to;
    }

    private static string? HeadOf(ImmutableArray<RecordLine> lines, int at) => at < lines.Length ? lines[at].Head : null;

    // A line feed behind the opening tag is none of the text, nor is one before the closing tag seen.
    private static string Part(ImmutableArray<RecordLine> lines)
    {
        if (lines.Length > 1 && lines[1].Head is not null)
        {
            IEnumerable<string> rows = lines.Skip(1).Select(Row);
            return $"<table role=\"presentation\">\n<thead>\n{Row(lines[0])}\n</thead>\n<tbody>\n{string.Join('\n', rows)}\n</tbody>\n</table>";
        }

        string lead = lines[0].IsHeading ? " class=\"lead\"" : "";
        return $"<pre{lead}>\n{string.Concat(lines.Select(line => HtmlText.InFlow(line.Text) + "\n"))}</pre>";
    }

    private static string Row(RecordLine line) => $"<tr><td>{HtmlText.InFlow(line.Text)}</td></tr>";
}
