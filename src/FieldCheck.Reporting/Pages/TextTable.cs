using System.Collections.Immutable;

namespace FieldCheck.Reporting.Pages;

/// <summary>Sets a table in columns of text; cells that are too long are broken within their column.</summary>
internal static class TextTable
{
    private const string Gap = "  ";
    private const int Indent = 2;
    private const int Least = 8;

    internal static IEnumerable<string> Lines(RecordBlock.Table table, int width)
    {
        ImmutableArray<ImmutableArray<string>> rows =
            [[.. table.Columns.Select(column => column.Heading)], .. table.Rows];
        int[] widths = Widths(rows, width - Indent - Gap.Length * (table.Columns.Length - 1));
        return
        [
            .. Row(table.Columns, rows[0], widths),
            new string(' ', Indent) + string.Join(Gap, widths.Select(column => new string('-', column))),
            .. rows.Skip(1).SelectMany(row => Row(table.Columns, row, widths)),
        ];
    }

    /// <summary>As wide as the widest cell; where that is too much, the widest columns give way, at last within words.</summary>
    private static int[] Widths(ImmutableArray<ImmutableArray<string>> rows, int room)
    {
        int[] widths = [.. rows[0].Select((_, column) => Math.Max(1, rows.Max(row => row[column].Length)))];
        int[] words = [.. rows[0].Select((_, column) => rows.Max(row => LongestWord(row[column])))];
        while (widths.Sum() > room && Widest(column => widths[column] > Math.Max(words[column], Least)) is int column)
        {
            widths[column]--;
        }

        while (widths.Sum() > room && Widest(column => widths[column] > Least) is int column)
        {
            widths[column]--;
        }

        return widths;

        int? Widest(Func<int, bool> mayGive) => Enumerable.Range(0, widths.Length)
            .Where(mayGive)
            .Select(column => (int?)column)
            .MaxBy(column => widths[column!.Value]);
    }

    private static int LongestWord(string cell) =>
        TextFlow.Words(cell).SelectMany(TextFlow.Parts).Select(part => part.Length).DefaultIfEmpty(1).Max();

    private static IEnumerable<string> Row(ImmutableArray<RecordColumn> columns, ImmutableArray<string> cells, int[] widths)
    {
        ImmutableArray<string>[] broken = [.. cells.Select((cell, i) => TextFlow.Wrap(cell, widths[i]))];
        int lines = Math.Max(1, broken.Max(cell => cell.Length));
        for (int line = 0; line < lines; line++)
        {
            IEnumerable<string> parts = broken.Select((cell, i) =>
            {
                string part = line < cell.Length ? cell[line] : "";
                return columns[i].IsNumber ? part.PadLeft(widths[i]) : part.PadRight(widths[i]);
            });
            yield return (new string(' ', Indent) + string.Join(Gap, parts)).TrimEnd();
        }
    }
}
