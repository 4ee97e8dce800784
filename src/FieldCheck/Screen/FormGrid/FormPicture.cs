using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.FormGrid;

/// <summary>Draws the form.</summary>
internal sealed class FormPicture
{
    private const int WidestText = 20;
    private const int WidestAxles = 40;
    private const int WidestName = 12;
    private const int RowSigns = 2;
    private const string MoreColumns = ">";
    private const string FewerColumns = "<";

    private readonly ScreenState _state;
    private readonly FormCellView _cells;
    private readonly int _width;
    private readonly int _head;
    private readonly List<PictureLine> _lines = [];
    private (int X, int Y)? _cursor;

    private FormPicture(ScreenState state, int width)
    {
        _state = state;
        _cells = new FormCellView(state);
        _width = width;
        _head = HeadWidth(state);
    }

    /// <summary>The form in so many lines; its cursor stands in the cell the person is on.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Of(ScreenState state, int width, int height)
    {
        FormPicture picture = new(state, width);
        foreach (BlockWindow window in FormLayout.Of(state.Sheet, state.Focus, height))
        {
            picture.Draw(window, hasHeading: height > 1);
        }

        while (picture._lines.Count < height)
        {
            picture._lines.Add(LineWriter.Line("", width));
        }

        return new Picture([.. picture._lines.Take(height)], picture._cursor);
    }

    private static int HeadWidth(ScreenState state) => state.View switch
    {
        ScreenView.Stated => StatedRows.Of(state.Document).Select(row => TextColumns.Of(row.Label ?? "?")).Append(1).Max(),
        ScreenView.Cases => Math.Max(state.Document.Combinations.Count, state.Document.Rolling.Count)
            .ToString(CultureInfo.InvariantCulture).Length,
        ScreenView.Section => Math.Min(
            FormMoves.Beside(FormBlock.Sections)
                .SelectMany(block => Enumerable.Range(0, state.Sheet.RowsOf(block))
                    .Select(row => TextColumns.Of(FormWords.Head(state.Sheet, block, row))))
                .Max(),
            WidestName),
        _ => HeadWidth(state.Sheet),
    };

    private static int HeadWidth(FormSheet sheet) => FormLabels.Of(sheet.Document)
        .Select(label => TextColumns.Of(label ?? ""))
        .Append(sheet.RowsOf(FormBlock.Supports).ToString(CultureInfo.InvariantCulture).Length)
        .Append(sheet.RowsOf(FormBlock.Loads).ToString(CultureInfo.InvariantCulture).Length)
        .Max();

    // The block's name reaches over the first column, so the heading of that one begins behind it.
    private int HeadingWidth(FormBlock block, FormColumn column) => TextColumns.Of(FormColumns.Heading(_state.Document, column))
        + (column == FormColumns.Of(block)[0] ? Math.Max(FormWords.Block(block).Length - RowSigns - _head, 0) : 0);

    private void Draw(BlockWindow window, bool hasHeading)
    {
        ImmutableArray<(FormColumn Column, int Width)> columns = Columns(window);
        if (hasHeading)
        {
            _lines.Add(Heading(window, columns));
        }

        for (int row = window.First; row < window.First + window.Count; row++)
        {
            _lines.Add(Row(window.Block, row, columns));
        }
    }

    private ImmutableArray<(FormColumn Column, int Width)> Columns(BlockWindow window)
    {
        FormPlace[] places = [.. Enumerable.Range(window.First, window.Count)
            .Select(row => new FormPlace(window.Block, row, FormColumns.Of(window.Block)[0]))];
        int Wanted(FormColumn column) => places
            .Where(place => !place.IsOwnWeight || FormMoves.ColumnsOf(_state.Sheet, place).Contains(column))
            .Select(place => WidthOf(place with { Column = column }))
            .Append(HeadingWidth(window.Block, column))
            .Max(text => Math.Min(text, column == FormColumn.Axles ? WidestAxles : WidestText));

        FormColumn? focus = _state.Focus.Block == window.Block ? _state.Focus.Column : null;
        ImmutableArray<FormColumn> all = FormColumns.Of(_state.Document, window.Block);
        int room = _width - RowSigns - _head;
        return FormColumnWidths.Of(
            StickCells.Has(window.Block) ? WithWhatStands(all, places, Wanted, focus, room) : all, Wanted, focus, room);
    }

    // Where not all find room, those in which nothing stands make way for those in which something does.
    private ImmutableArray<FormColumn> WithWhatStands(
        ImmutableArray<FormColumn> all, FormPlace[] places, Func<FormColumn, int> wanted, FormColumn? focus, int room)
    {
        HashSet<FormColumn> seen =
        [
            .. all.Where(column => column == all[0] || column == focus
                || places.Any(place => FormCells.TextOf(_state.Document, place with { Column = column }) is not null)),
        ];
        foreach (FormColumn column in all.Where(column => !seen.Contains(column)))
        {
            if (seen.Append(column).Sum(one => wanted(one) + FormColumnWidths.Beside) > room)
            {
                break;
            }

            seen.Add(column);
        }

        return [.. all.Where(seen.Contains)];
    }

    // What is being typed needs a column more, for the cursor behind it.
    private int WidthOf(FormPlace place) =>
        TextColumns.Of(TextSafety.ForTerminal(_cells.At(place).Text)) + (_state.Draft?.Place == place ? 1 : 0);

    private PictureLine Heading(BlockWindow window, ImmutableArray<(FormColumn Column, int Width)> columns)
    {
        LineWriter line = new(_width);
        string name = FormWords.Block(window.Block);
        ImmutableArray<FormColumn> all = FormColumns.Of(_state.Document, window.Block);
        bool goesOn = columns[^1].Column != all[^1];
        bool isStick = StickCells.Has(window.Block);
        goesOn |= isStick && columns.Length < all.Length;
        bool isCutShort = !isStick && all.IndexOf(columns[^1].Column) >= columns.Length;
        string more = (isCutShort ? FewerColumns : "") + (goesOn ? MoreColumns : "") + (window.Hidden > 0 ? $" ..{window.Hidden} more" : "");
        more = more.TrimStart();
        line.Add(TextColumns.Cut(name, more.Length > 0 ? _width - more.Length - 1 : _width), Role.Accent);
        int x = RowSigns + _head;
        foreach ((FormColumn column, int width) in columns)
        {
            int start = Math.Max(x + 1, line.Column + 1);
            string heading = TextColumns.CutWithMark(FormColumns.Heading(_state.Document, column), x + 1 + width - start);

            // How much is hidden is told in any case: before a heading that there is no room for beside it.
            if (more.Length > 0 && start + heading.Length + 1 + more.Length > _width)
            {
                break;
            }

            line.To(start).Add(heading, Role.Faint);
            x += width + FormColumnWidths.Beside;
        }

        return more.Length == 0 ? line.End() : line.To(_width - more.Length).Add(more, Role.Warn).End();
    }

    private PictureLine Row(FormBlock block, int row, ImmutableArray<(FormColumn Column, int Width)> columns)
    {
        bool isHere = _state.Focus.Block == block && _state.Focus.Row == row;
        LineWriter line = new(_width);
        line.Add(isHere ? ">" : " ").Add(_cells.RowMark(block, row).ToString(), Role.Warn);
        line.Add(TextColumns.FitWithMark(FormWords.Head(_state.Sheet, block, row), _head));
        FormPlace first = new(block, row, columns[0].Column);
        bool isEmpty = FormMoves.IsEmptyRow(_state.Sheet, first);
        if (isEmpty && !isHere)
        {
            return line.Add($" ({FormWords.OfEmptyRow(_state.Sheet, block)})", Role.Faint, new LinkTarget.Cell(first)).End();
        }

        if (first.IsOwnWeight)
        {
            return OwnWeight(line, columns, isHere);
        }

        foreach ((FormColumn column, int width) in columns)
        {
            string beside = column == columns[^1].Column ? DetailLines.SetIn(_state.Document, block, row) : "";
            Cell(line, first with { Column = column }, width, isHere && column == _state.Focus.Column, beside);
        }

        return line.End();
    }

    // Between its two cells stands what the row is.
    private PictureLine OwnWeight(LineWriter line, ImmutableArray<(FormColumn Column, int Width)> columns, bool isHere)
    {
        int between = columns
            .Where(column => column.Column is FormColumn.From or FormColumn.To)
            .Sum(column => column.Width + FormColumnWidths.Beside);
        bool isSaid = false;
        foreach ((FormColumn column, int width) in columns)
        {
            FormPlace place = new(FormBlock.Loads, FormPlace.OwnWeightRow, column);
            if (FormMoves.ColumnsOf(_state.Sheet, place).Contains(column))
            {
                Cell(line, place, width, isHere && column == _state.Focus.Column);
            }
            else if (!isSaid)
            {
                line.Add(TextColumns.Fit("own weight", column == FormColumn.Note ? width : between), Role.Faint);
                isSaid = true;
            }
        }

        return line.End();
    }

    private static string WithBeside(string text, string beside, int width)
    {
        string both = beside.Length > 0 ? $"{text}   {beside}" : text;
        return TextColumns.Of(both) <= width ? both : text;
    }

    // What has no column is shown beside the last cell where there is room; the mark at the left says that it is set.
    private void Cell(LineWriter line, FormPlace place, int width, bool isFocus, string beside = "")
    {
        FormCell cell = _cells.At(place);
        LinkTarget here = new LinkTarget.Cell(place);
        if (!isFocus)
        {
            line.Add(cell.Mark.ToString(), Role.Warn, here)
                .Add(TextColumns.FitWithMark(WithBeside(cell.Text, beside, width), width), cell.Role, here)
                .Add(" ");
            return;
        }

        (string seen, int caret) = CaretWindow.Of(cell.Text, _state.Draft?.Line.Caret ?? 0, width);
        _cursor = (Math.Min(line.Column + 1 + caret, _width - 1), _lines.Count);
        line.Add("[", Role.Focus).Add(TextColumns.Fit(seen, width), Role.Focus).Add("]", Role.Focus);
    }

}
