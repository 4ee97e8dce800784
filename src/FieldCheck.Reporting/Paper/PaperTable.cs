using System.Collections.Immutable;
using FieldCheck.Reporting.Pages;

namespace FieldCheck.Reporting.Paper;

/// <summary>Sets a table: its head again on every page, and no row parted but one that is longer than a page.</summary>
internal sealed class PaperTable
{
    private const double Gap = 10;
    private const double Pad = 2;
    private const double Thin = 0.3;
    private const double Thick = 0.8;

    // A head longer than this would leave no room for rows, and is not repeated.
    private const double MostHead = PaperSheet.BodyHeight / 3;

    private const double MostKept = PaperSheet.BodyHeight / 5;

    private readonly PaperLetters _letters;
    private readonly RecordBlock.Table _table;
    private readonly double[] _widths;
    private readonly PaperElement _element = new(PaperElementKind.Table);

    private PaperTable(PaperLetters letters, RecordBlock.Table table)
    {
        _letters = letters;
        _table = table;
        _widths = Widths();
    }

    internal static IEnumerable<PaperPiece> Of(PaperLetters letters, RecordBlock.Table table)
    {
        PaperTable paper = new(letters, table);
        PaperPiece[] heads = [.. paper.Row([.. table.Columns.Select(column => column.Heading)], isHead: true)];
        bool isRepeated = heads is [{ Height: <= MostHead }];
        PaperPiece? again = isRepeated ? Again(heads[0]) : null;
        double most = PaperSheet.BodyHeight - (again?.Height ?? 0);
        return
        [
            .. heads.Select((head, i) => head with { KeepsNext = true, Above = i == 0 ? 2 : 0 }),
            .. Kept([.. table.Rows.SelectMany(row => paper.Row(row, isHead: false, most)).Select(row => row with { Head = again })]),
        ];
    }

    /// <summary>A short table stands on one page; of a longer one neither the first row nor the last stands alone.</summary>
    internal static IEnumerable<PaperPiece> Kept(PaperPiece[] rows)
    {
        bool isShort = rows.Sum(row => row.Height) <= MostKept;
        return rows.Select((row, i) => row with
        {
            KeepsNext = i + 1 < rows.Length && (isShort || i == 0 || i + 2 == rows.Length),
        });
    }

    /// <summary>The head of a table as it is repeated: said once, it is no part of it again.</summary>
    internal static PaperPiece Again(PaperPiece head) =>
        head with { Marks = [.. head.Marks.Select(mark => mark with { Element = null })] };

    /// <summary>As wide as the widest cell; where that is too much, the widest columns give way, at last within words.</summary>
    private double[] Widths()
    {
        double room = PaperSheet.BlockWidth - Gap * (_table.Columns.Length - 1);
        double[] natural = [.. _table.Columns.Select((_, i) => Cells(i).Max(cell => Width(cell.Text, cell.Style)))];
        double[] least = [.. _table.Columns.Select((_, i) => Cells(i).Max(cell => LongestWord(cell.Text, cell.Style)))];
        return natural.Sum() <= room ? natural
            : least.Sum() <= room ? Level(natural, least, room)
            : Level(least, [.. least.Select(_ => 0.0)], room);
    }

    /// <summary>Cuts what reaches above a level, no lower than the least, so that all come to the room there is.</summary>
    private static double[] Level(double[] wanted, double[] least, double room)
    {
        double[] At(double level) => [.. wanted.Zip(least, (most, few) => Math.Max(few, Math.Min(most, level)))];
        (double low, double high) = (0, wanted.Max());
        for (int halving = 0; halving < 60; halving++)
        {
            double middle = (low + high) / 2;
            (low, high) = At(middle).Sum() <= room ? (middle, high) : (low, middle);
        }

        return At(low);
    }

    private IEnumerable<(string Text, PaperStyle Style)> Cells(int column) =>
        [(_table.Columns[column].Heading, PaperStyle.ColumnHead), .. _table.Rows.Select(row => (row[column], PaperStyle.Cell))];

    // A hair more than measured, so that a text that fits is not broken by a last digit.
    private double Width(string text, PaperStyle style) => _letters.WidthOf(_letters.Shown(text, style.Face), style) + 0.01;

    private double LongestWord(string text, PaperStyle style) =>
        TextFlow.Words(text).SelectMany(TextFlow.Parts).Select(part => Width(part, style)).DefaultIfEmpty(1).Max();

    private IEnumerable<PaperPiece> Row(ImmutableArray<string> cells, bool isHead, double most = PaperSheet.BodyHeight)
    {
        PaperStyle style = isHead ? PaperStyle.ColumnHead : PaperStyle.Cell;
        PaperElement row = new(PaperElementKind.Row, _element);
        (ImmutableArray<string> Lines, PaperElement Element)[] broken =
        [
            .. cells.Select((cell, i) => (
                _letters.Lines(cell, style, _widths[i]),
                new PaperElement(isHead || i == 0 ? PaperElementKind.Head : PaperElementKind.Cell, row))),
        ];
        int lines = Math.Max(1, broken.Max(cell => cell.Lines.Length));
        int atOnce = (int)((most - 2 * Pad) / style.Line);
        for (int from = 0; from < lines; from += atOnce)
        {
            int count = Math.Min(atOnce, lines - from);
            double height = 2 * Pad + count * style.Line;
            yield return new PaperPiece(
                height,
                [
                    .. broken.SelectMany((cell, i) => cell.Lines.Skip(from).Take(count)
                        .Select((line, at) => Words(i, line, Pad + at * style.Line + style.Base, cell.Element, style))),
                    new PaperMark.Rule(0, height, PaperSheet.BlockWidth, isHead ? Thick : Thin),
                ]);
        }
    }

    private PaperMark.Words Words(int column, string line, double y, PaperElement element, PaperStyle style)
    {
        double left = _widths.Take(column).Sum() + Gap * column;
        double indent = _table.Columns[column].IsNumber ? _widths[column] - _letters.WidthOf(line, style) : 0;
        return new(left + indent, y, element, line, style);
    }
}
