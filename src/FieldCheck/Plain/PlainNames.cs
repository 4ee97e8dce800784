using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>Finds what names lead to: rows, cells of a row, and keys without a column.</summary>
internal static class PlainNames
{
    /// <summary>The blocks, as their rows are named.</summary>
    internal static ImmutableArray<FormBlock> Blocks { get; } =
    [
        FormBlock.Spans, FormBlock.Supports, FormBlock.Loads, FormBlock.Stated,
        FormBlock.Cases, FormBlock.Combinations, FormBlock.Rolling,
    ];

    /// <summary>The block whose rows are called so; null where none is.</summary>
    /// <param name="word">As "load"; "loads" does as well.</param>
    internal static FormBlock? Block(string word)
    {
        string one = word.Length > 1 ? word.TrimEnd('s', 'S') : word;
        return Blocks.Select(block => (FormBlock?)block).FirstOrDefault(block =>
            WordOf(block!.Value).Equals(one, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The block that a text begins with the name of, and what stands behind that; null where it does not.</summary>
    /// <param name="text">As "load 2", "rolling load 1".</param>
    internal static (FormBlock Block, string Behind)? BlockIn(string text) =>
        PlainTokens.Of(text) is [(string word, int end), ..] && Block(word) is FormBlock block
            ? (block, BehindName(block, PlainTokens.Rest(text, end)))
            : null;

    /// <summary>The same of a text behind the first word of a block's name: a rolling load may be called so.</summary>
    /// <param name="block">The block.</param>
    /// <param name="text">What stands behind the word.</param>
    internal static string BehindName(FormBlock block, string text) => block == FormBlock.Rolling
        ? PlainTokens.After(text, "load") ?? PlainTokens.After(text, "loads") ?? text
        : text;

    /// <summary>The one word that a block's rows go by.</summary>
    /// <param name="block">The block.</param>
    internal static string WordOf(FormBlock block) => block == FormBlock.Rolling ? "rolling" : FormColumns.RowName(block);

    /// <summary>
    /// A row by its number or, for a case, its name and for a support and what is stated of it, its label; one more than
    /// the last is the empty row. Null where there is none.
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
            FormBlock.Cases => CaseRows.Of(sheet.Document).Select(row => row.Name),
            _ => [],
        };
        int named = labels.ToList().FindIndex(label => word.Equals(label, StringComparison.OrdinalIgnoreCase));
        return named >= 0 ? named
            : int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            && number >= 1 && number <= sheet.RowsOf(block) + (block == FormBlock.Cases ? 0 : 1)
            ? number - 1
            : null;
    }

    /// <summary>The case that a text begins with the name of, which may be several words, and what stands behind it.</summary>
    /// <param name="sheet">The beam.</param>
    /// <param name="text">As "roof_live name imposed".</param>
    internal static (string Name, string Behind)? CaseIn(FormSheet sheet, string text) => CaseRows.Of(sheet.Document)
        .Select(row => (row.Name, Behind: PlainTokens.After(text, row.Name)))
        .Where(one => one.Behind is not null)
        .OrderBy(one => one.Behind!.Length)
        .Select(one => ((string, string)?)(one.Name, one.Behind!))
        .FirstOrDefault();

    /// <summary>The cell or key of a row that a text begins with, and what stands behind its name.</summary>
    /// <param name="sheet">The beam.</param>
    /// <param name="block">The block.</param>
    /// <param name="row">The row, counted from 0.</param>
    /// <param name="text">The text behind the name of the row.</param>
    /// <param name="isCell">True: a cell is meant, which can hold several figures by name.</param>
    internal static PlainFound? InRow(FormSheet sheet, FormBlock block, int row, string text, bool isCell = false)
    {
        ImmutableArray<FormColumn> columns = StickCells.Has(block) ? FormColumns.Of(block) : ColumnsOf(sheet, block);
        IEnumerable<(string, PlainTarget)> cells = columns.SelectMany(column =>
            NamesOf(sheet.Document, block, column).Select(name =>
                (name, (PlainTarget)new PlainTarget.Cell(new FormPlace(block, row, column)))));
        return Longest(
            [.. cells, .. (isCell ? [] : KeysOf(sheet, block, row)).Select(line => (line.Words, (PlainTarget)new PlainTarget.Key(line.Key)))],
            text);
    }

    /// <summary>The columns of a block that can be typed in.</summary>
    internal static ImmutableArray<FormColumn> ColumnsOf(FormSheet sheet, FormBlock block) =>
        FormMoves.ColumnsOf(sheet, new FormPlace(block, 0, default));

    /// <summary>The keys of a row that have no column, and those of an axle and a factor, each by what it is called behind the row's name.</summary>
    internal static IEnumerable<DetailLine> KeysOf(FormSheet sheet, FormBlock block, int row)
    {
        if (StickCells.Has(block))
        {
            return OfStick(sheet.Document, block, row);
        }

        string path = string.Create(CultureInfo.InvariantCulture, $"{WordOf(block)}[{row + 1}].");
        return block is FormBlock.Rolling or FormBlock.Combinations
            ? KeysOf(sheet.Document)
                .Where(line => line.Key.StartsWith(path + "axles", StringComparison.Ordinal)
                    || line.Key.StartsWith(path + "factors", StringComparison.Ordinal))
                .Select(line => line with { Words = DetailLines.WordsOf(line.Key[path.Length..]) })
            : row < sheet.RowsOf(block)
                ? DetailLines.Of(sheet.Document, new DetailPage(block, row))
                    .Where(line => line.Key.StartsWith(FormColumns.RowName(block), StringComparison.Ordinal))
                : [];
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

    /// <summary>True: the key has a cell among the cases, combinations and rolling loads.</summary>
    internal static bool IsOfCases(DetailLine line) =>
        line.Key.Split('[', '.')[0] is "combination" or "pattern" or "rolling";

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
        (FormBlock.Cases, FormColumn.Case) => ["name"],
        (FormBlock.Cases, FormColumn.Pattern) => ["bay by bay", "pattern"],
        (FormBlock.Bearings, FormColumn.BearingAllowable) => ["allow", .. NamesOfStick(column)],
        (FormBlock.Bearings, FormColumn.Pressure) => ["pressure", .. NamesOfStick(column)],
        _ when StickCells.Has(block) => NamesOfStick(column),
        _ => [FormColumns.Heading(column)],
    };

    /// <summary>The same of a beam, whose cases are columns of its combinations.</summary>
    internal static ImmutableArray<string> NamesOf(BeamDocument document, FormBlock block, FormColumn column) =>
        FormColumns.CaseOf(column) is null ? NamesOf(block, column) : NamesOfFactor(FormColumns.Heading(document, column));

    private static ImmutableArray<string> NamesOfStick(FormColumn column) =>
        [FormColumns.Heading(column), StickCells.KeyOf(column)!];

    // A factor of a section's or material's table, a limit under one case: what the row has besides its cells.
    private static IEnumerable<DetailLine> OfStick(BeamDocument document, FormBlock block, int row)
    {
        string table = FormColumns.RowName(block);
        string? path = block switch
        {
            FormBlock.Sections => KeyPath.Top.Into(table).Into(StickRows.Sections(document)[row]).ToString(),
            FormBlock.Materials => KeyPath.Top.Into(table).Into(StickRows.Materials(document)[row]).ToString(),
            FormBlock.Limits => table,
            _ => null,
        };
        return path is null ? [] : KeysOf(document)
            .Where(line => line.Key.StartsWith(path + ".", StringComparison.Ordinal))
            .Select(line => line with { Words = DetailLines.WordsOf(line.Key[(path.Length + 1)..]) });
    }

    private static ImmutableArray<string> NamesOfFactor(string name) => [name, $"factor {name}", $"factor of {name}", $"factors {name}"];

    // The longest name has the shortest text behind it.
    private static PlainFound? Longest(ImmutableArray<(string Name, PlainTarget Target)> named, string text) => named
        .Select(one => (one.Target, Text: PlainTokens.After(text, one.Name)))
        .Where(one => one.Text is not null)
        .Select(one => new PlainFound(one.Target, one.Text!))
        .MinBy(found => found.Text.Length);
}
