namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Takes a file apart into whole lines: blocks, each a header with the statements under it, and what is between.</summary>
/// <remarks>
/// A comment directly above a statement, with no empty line between, belongs to it; so does one behind it on its line. A
/// comment directly under the last statement of a block belongs to the block. Every other comment stands by itself.
/// </remarks>
internal static class TomlLayout
{
    /// <summary>The blocks of a file; the first has no header, and may be empty.</summary>
    internal static FileDraft Of(TomlFile file)
    {
        FileDraft draft = new(file.Text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n");
        string text = IsWhole(file.Text) ? file.Text : file.Text + draft.LineEnd;
        draft.Blocks.Add(new BlockDraft("", null));
        int at = 0;
        for (int number = 0; number < file.Statements.Length; number++)
        {
            TomlStatement statement = file.Statements[number];
            int start = StartOfLine(text, statement.Span.Start);
            string lead = Between(draft, Lines(text[at..start]), statement.IsHeader ? statement.Key : null);
            at = EndOfLine(text, statement.Span.End);
            draft.Blocks[^1].Pieces.Add(new PieceDraft(lead, text[start..at], number, statement.IsHeader ? null : statement.Key));
        }

        List<string> last = Lines(text[at..]);
        int kept = last.TakeWhile(IsComment).Count();
        draft.Blocks[^1].Add(last[..kept]);
        draft.Tail = string.Concat(last[kept..]);
        return draft;
    }

    /// <summary>Shares out the lines above a statement; for a header, a new block begins.</summary>
    /// <returns>The lines that belong to the statement.</returns>
    private static string Between(FileDraft draft, List<string> lines, string? header)
    {
        int own = lines.Count - lines.AsEnumerable().Reverse().TakeWhile(IsComment).Count();
        BlockDraft block = draft.Blocks[^1];
        int left = header is null ? own : block.Pieces.Count == 0 ? 0 : lines.TakeWhile(IsComment).Count();
        left = Math.Min(left, own);
        block.Add(lines[..left]);
        if (header is not null)
        {
            draft.Blocks.Add(new BlockDraft(string.Concat(lines[left..own]), header));
        }

        return string.Concat(lines[own..]);
    }

    /// <summary>The lines of a text, each with its line end.</summary>
    internal static List<string> Lines(string text)
    {
        List<string> lines = [];
        for (int start = 0; start < text.Length;)
        {
            int end = EndOfLine(text, start);
            lines.Add(text[start..end]);
            start = end;
        }

        return lines;
    }

    internal static bool IsComment(string line) => line.AsSpan().TrimStart().StartsWith("#");

    /// <summary>True: the last line of a text ends as every other one does.</summary>
    internal static bool IsWhole(string text) => text.Length == 0 || text[^1] == '\n';

    internal static int StartOfLine(string text, int at) => at == 0 ? 0 : text.LastIndexOf('\n', at - 1) + 1;

    private static int EndOfLine(string text, int at) =>
        text.IndexOf('\n', at) is int end and >= 0 ? end + 1 : text.Length;
}
