using System.Collections.Immutable;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.FormGrid;

/// <summary>Where the keys lead from a cell of the form.</summary>
internal static class FormMoves
{
    private static readonly ImmutableArray<FormColumn> OwnWeightColumns = [FormColumn.Size, FormColumn.Case];

    private static readonly ImmutableArray<FormColumn> CaseColumns =
        [FormColumn.Case, FormColumn.Pattern, FormColumn.OwnWeight];

    private static readonly ImmutableArray<ImmutableArray<FormBlock>> Views =
    [
        [FormBlock.Spans, FormBlock.Supports, FormBlock.Loads],
        [FormBlock.Stated],
        [FormBlock.Cases, FormBlock.Combinations, FormBlock.Rolling],
        [FormBlock.Sections, FormBlock.Materials, FormBlock.Limits, FormBlock.Bracing, FormBlock.Bearings],
    ];

    /// <summary>Where a beam begins.</summary>
    internal static FormPlace First { get; } = new(FormBlock.Spans, 0, FormColumn.Length);

    /// <summary>The columns in which a row can be typed.</summary>
    internal static ImmutableArray<FormColumn> ColumnsOf(FormSheet sheet, FormPlace place) =>
        place.IsOwnWeight ? OwnWeightColumns
        : place.Block == FormBlock.Cases ? CaseColumns
        : StickCells.Has(place.Block) ? StickCells.ColumnsOf(sheet.Document, place)
        : FormColumns.Of(sheet.Document, place.Block);

    /// <summary>The blocks of the view that a block is shown in, from its top.</summary>
    internal static ImmutableArray<FormBlock> Beside(FormBlock block) => Views.First(blocks => blocks.Contains(block));

    /// <summary>True: it is a row that typing makes: the one at the end of its block, or of a support without figures.</summary>
    internal static bool IsEmptyRow(FormSheet sheet, FormPlace place) => place.Block == FormBlock.Stated
        ? !StatedRows.IsStated(sheet.Document, place.Row)
        : place.Row == sheet.RowsOf(place.Block);

    /// <summary>
    /// The last row of a block that can be typed in. What is stated goes by the supports, a case by its loads, a section by
    /// the spans, so none comes after.
    /// </summary>
    internal static int LastRow(FormSheet sheet, FormBlock block) => block is FormBlock.Stated or FormBlock.Cases
        || StickCells.Has(block)
        ? Math.Max(sheet.RowsOf(block) - 1, 0)
        : sheet.RowsOf(block);

    /// <summary>The view that a block is shown in.</summary>
    internal static ScreenView ViewOf(FormBlock block) => block switch
    {
        FormBlock.Stated => ScreenView.Stated,
        FormBlock.Cases or FormBlock.Combinations or FormBlock.Rolling => ScreenView.Cases,
        _ when StickCells.Has(block) => ScreenView.Section,
        _ => ScreenView.Beam,
    };

    /// <summary>Where the cases begin: at the combinations, of which most is typed.</summary>
    internal static FormPlace FirstOfCases { get; } = new(FormBlock.Combinations, 0, FormColumn.Name);

    /// <summary>Where a section begins: at the catalogue, or the next cell for its sides.</summary>
    internal static FormPlace FirstOfSection { get; } = new(FormBlock.Sections, 0, FormColumn.Shape);

    /// <summary>Where what is stated begins: at the first support of which nothing is.</summary>
    internal static FormPlace FirstToState(FormSheet sheet)
    {
        int rows = sheet.RowsOf(FormBlock.Stated);
        int open = Enumerable.Range(0, rows).FirstOrDefault(row => !StatedRows.IsStated(sheet.Document, row));
        return new FormPlace(FormBlock.Stated, open, FormColumn.Vertical);
    }

    /// <summary>The nearest cell that there is; for when rows have gone.</summary>
    internal static FormPlace Within(FormSheet sheet, FormPlace place) => OnColumn(sheet, place with
    {
        Row = Math.Clamp(place.Row, TopRow(place.Block), LastRow(sheet, place.Block)),
    });

    /// <summary>One row up or down, from block to block.</summary>
    internal static FormPlace Vertical(FormSheet sheet, FormPlace place, bool down)
    {
        int row = place.Row + (down ? 1 : -1);
        if (row >= TopRow(place.Block) && row <= LastRow(sheet, place.Block))
        {
            return OnColumn(sheet, place with { Row = row });
        }

        FormBlock? block = Neighbour(place.Block, down);
        return block is FormBlock other
            ? AtColumnIndex(sheet, new FormPlace(other, down ? TopRow(other) : LastRow(sheet, other), default), IndexOf(sheet, place))
            : place;
    }

    /// <summary>One cell left or right, from row to row.</summary>
    internal static FormPlace Horizontal(FormSheet sheet, FormPlace place, bool right)
    {
        ImmutableArray<FormColumn> columns = ColumnsOf(sheet, place);
        int index = columns.IndexOf(place.Column) + (right ? 1 : -1);
        if (index >= 0 && index < columns.Length)
        {
            return place with { Column = columns[index] };
        }

        FormPlace row = Vertical(sheet, place, down: right);
        return row == place ? place : RowEnd(sheet, row, last: !right);
    }

    /// <summary>Down by Enter: back to a column; from the empty row to the next block's first row.</summary>
    internal static FormPlace Enter(FormSheet sheet, FormPlace place, FormColumn back)
    {
        if (place.Row < LastRow(sheet, place.Block))
        {
            return OnColumn(sheet, place with { Row = place.Row + 1, Column = back });
        }

        return Neighbour(place.Block, down: true) is FormBlock block
            ? new FormPlace(block, 0, FormColumns.Of(block)[0])
            : place;
    }

    /// <summary>The first or last cell of a row.</summary>
    internal static FormPlace RowEnd(FormSheet sheet, FormPlace place, bool last) =>
        place with { Column = last ? ColumnsOf(sheet, place)[^1] : ColumnsOf(sheet, place)[0] };

    /// <summary>The first row of the block above or below.</summary>
    internal static FormPlace Block(FormSheet sheet, FormPlace place, bool down) => Neighbour(place.Block, down) is FormBlock block
        ? AtColumnIndex(sheet, new FormPlace(block, 0, default), IndexOf(sheet, place))
        : place;

    private static int TopRow(FormBlock block) => block == FormBlock.Loads ? FormPlace.OwnWeightRow : 0;

    private static FormBlock? Neighbour(FormBlock block, bool down)
    {
        ImmutableArray<FormBlock> blocks = Beside(block);
        int next = blocks.IndexOf(block) + (down ? 1 : -1);
        return next >= 0 && next < blocks.Length ? blocks[next] : null;
    }

    private static int IndexOf(FormSheet sheet, FormPlace place) =>
        FormColumns.Of(sheet.Document, place.Block).IndexOf(place.Column);

    private static FormPlace AtColumnIndex(FormSheet sheet, FormPlace place, int index)
    {
        ImmutableArray<FormColumn> columns = FormColumns.Of(sheet.Document, place.Block);
        return OnColumn(sheet, place with { Column = columns[Math.Clamp(index, 0, columns.Length - 1)] });
    }

    private static FormPlace OnColumn(FormSheet sheet, FormPlace place) =>
        ColumnsOf(sheet, place).Contains(place.Column) ? place : place with { Column = ColumnsOf(sheet, place)[0] };
}
