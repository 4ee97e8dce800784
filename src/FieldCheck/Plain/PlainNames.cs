using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Screen;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>Finds what names lead to: rows, cells of a row, and keys without a column.</summary>
internal static class PlainNames
{
    /// <summary>The blocks, as their rows are named.</summary>
    internal static ImmutableArray<FormBlock> Blocks { get; } =
        [FormBlock.Spans, FormBlock.Supports, FormBlock.Loads, FormBlock.Stated];

    /// <summary>The block whose rows are called so; null where none is.</summary>
    /// <param name="word">As "load"; "loads" does as well.</param>
    internal static FormBlock? Block(string word)
    {
        string one = word.Length > 1 ? word.TrimEnd('s', 'S') : word;
        return Blocks.Select(block => (FormBlock?)block).FirstOrDefault(block =>
            FormColumns.RowName(block!.Value).Equals(one, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>
    /// A row by its number or, for a support and what is stated of it, its label; one more than the last is the empty row. Null where there is
    /// none.
    /// </summary>
    /// <param name="sheet">The beam.</param>
    /// <param name="block">The block.</param>
    /// <param name="word">The number or label.</param>
    internal static int? Row(FormSheet sheet, FormBlock block, string word)
    {
        IEnumerable<string?> labels = block switch
        {
            FormBlock.Supports => FormLabels.Of(sheet.Document),
            FormBlock.Stated => StatedRows.Of(sheet.Document).Select(row => row.Label),
            _ => [],
        };
        int named = labels.ToList().FindIndex(label => word.Equals(label, StringComparison.OrdinalIgnoreCase));
        return named >= 0 ? named
            : int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            && number >= 1 && number <= sheet.RowsOf(block) + 1
            ? number - 1
            : null;
    }

    /// <summary>The cell or key of a row that a text begins with, and what stands behind its name.</summary>
    /// <param name="sheet">The beam.</param>
    /// <param name="block">The block.</param>
    /// <param name="row">The row, counted from 0.</param>
    /// <param name="text">The text behind the name of the row.</param>
    internal static PlainFound? InRow(FormSheet sheet, FormBlock block, int row, string text)
    {
        IEnumerable<(string, PlainTarget)> cells = FormColumns.Of(block).SelectMany(column =>
            NamesOf(block, column).Select(name =>
                (name, (PlainTarget)new PlainTarget.Cell(new FormPlace(block, row, column)))));
        IEnumerable<(string, PlainTarget)> keys = row < sheet.RowsOf(block)
            ? DetailLines.Of(sheet.Document, new DetailPage(block, row))
                .Where(line => line.Key.StartsWith(FormColumns.RowName(block), StringComparison.Ordinal))
                .Select(line => (line.Words, (PlainTarget)new PlainTarget.Key(line.Key)))
            : [];
        return Longest([.. cells, .. keys], text);
    }

    /// <summary>The key without a column that a line begins with, and what stands behind its name.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="text">The line.</param>
    internal static PlainFound? OfBeam(BeamDocument document, string text)
    {
        ImmutableArray<DetailLine> lines = KeysOf(document);
        DetailLine? written = lines
            .Where(line => text.StartsWith(line.Key + " ", StringComparison.Ordinal) || text == line.Key)
            .MaxBy(line => line.Key.Length);
        return written is not null
            ? new PlainFound(new PlainTarget.Key(written.Key), text[written.Key.Length..].Trim())
            : Longest([.. lines.Select(line => (line.Key, (PlainTarget)new PlainTarget.Key(line.Key)))], text);
    }

    /// <summary>Every key without a column that is not of a support or a load: all that the form's lists have.</summary>
    /// <param name="document">The beam.</param>
    internal static ImmutableArray<DetailLine> KeysOf(BeamDocument document) =>
    [
        .. DetailLines.Of(document, new DetailPage(null))
            .Concat(Enumerable.Range(0, document.Spans.Count)
                .SelectMany(row => DetailLines.Of(document, new DetailPage(FormBlock.Spans, row)))
                .Where(line => !line.Key.StartsWith("span", StringComparison.Ordinal)))
            .DistinctBy(line => line.Key),
    ];

    /// <summary>What a cell may be called behind the name of its row, the usual name first.</summary>
    /// <param name="block">The block.</param>
    /// <param name="column">The column.</param>
    internal static ImmutableArray<string> NamesOf(FormBlock block, FormColumn column) => (block, column) switch
    {
        (_, FormColumn.Place) => ["at", "place"],
        (_, FormColumn.From) => ["from", "at"],
        (_, FormColumn.Settles) => ["settles", "settlement"],
        (_, FormColumn.Allow) => ["allow", "tolerance"],
        (FormBlock.Loads, FormColumn.Note) => ["note", "label"],
        _ => [FormColumns.Heading(column)],
    };

    // The longest name has the shortest text behind it.
    private static PlainFound? Longest(ImmutableArray<(string Name, PlainTarget Target)> named, string text) => named
        .Select(one => (one.Target, Text: PlainTokens.After(text, one.Name)))
        .Where(one => one.Text is not null)
        .Select(one => new PlainFound(one.Target, one.Text!))
        .MinBy(found => found.Text.Length);
}
