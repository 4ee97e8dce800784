using System.Collections.Immutable;
using FieldCheck.Screen;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>Which cell is asked next.</summary>
internal static class PlainWalks
{
    /// <summary>The first cell that a new beam is asked for.</summary>
    internal static PlainAsk OfNewBeam { get; } = new PlainAsk.Cell(FormMoves.First, PlainWalk.Beam);

    /// <summary>What is said before a new beam is asked for.</summary>
    internal const string NewBeam =
        "A new beam. Enter keeps what stands; stop ends the questions; ? says what can be typed.";

    /// <summary>The first question for what a preset asks for; null where it asks for nothing.</summary>
    /// <param name="document">The beam.</param>
    internal static PlainAsk? OfAsked(BeamDocument document) =>
        Screen.FormGrid.Asked.Of(document) is [AskedCell first, ..] ? Ask(first) : null;

    /// <summary>The question after one that was answered; null where the walk ends.</summary>
    /// <param name="form">The beam, the answer in it.</param>
    /// <param name="ask">The question answered.</param>
    internal static PlainAsk? Next(ScreenState form, PlainAsk ask) => ask switch
    {
        PlainAsk.Cell { Walk: PlainWalk.Asked } cell => AfterAsked(form.Document, asked => asked.Place == cell.Place),
        PlainAsk.Key { Walk: PlainWalk.Asked } key => AfterAsked(form.Document, asked => asked.Key == key.Path),
        PlainAsk.Cell { Walk: PlainWalk.Row } cell => FormMoves.IsEmptyRow(form.Sheet, cell.Place)
            ? null
            : On(InRow(FormMoves.ColumnsOf(form.Sheet, cell.Place), cell.Place), cell.Walk),
        PlainAsk.Cell { Walk: PlainWalk.Down } cell => cell.Place.Row + 1 < form.Sheet.RowsOf(cell.Place.Block)
            ? On(cell.Place with { Row = cell.Place.Row + 1 }, cell.Walk)
            : null,
        PlainAsk.Cell { Walk: PlainWalk.Beam } cell => On(InBeam(form, cell.Place), cell.Walk),
        _ => null,
    };

    private static PlainAsk.Cell? On(FormPlace? place, PlainWalk walk) =>
        place is null ? null : new PlainAsk.Cell(place, walk);

    private static PlainAsk Ask(AskedCell asked) => asked.Place is FormPlace place
        ? new PlainAsk.Cell(place, PlainWalk.Asked)
        : new PlainAsk.Key(asked.Key, PlainWalk.Asked);

    private static PlainAsk? AfterAsked(BeamDocument document, Func<AskedCell, bool> isIt) =>
        Screen.FormGrid.Asked.Of(document).SkipWhile(asked => !isIt(asked)).Skip(1).Select(Ask).FirstOrDefault();

    private static FormPlace? InRow(ImmutableArray<FormColumn> columns, FormPlace place)
    {
        int next = columns.IndexOf(place.Column) + 1;
        return next > 0 && next < columns.Length ? place with { Column = columns[next] } : null;
    }

    // Of each row what no beam can do without; the rest stands under the row's own name.
    private static FormPlace? InBeam(ScreenState form, FormPlace place)
    {
        if (FormMoves.IsEmptyRow(form.Sheet, place) || (place.Block == FormBlock.Spans && IsMissing(form, place)))
        {
            return place.Block switch
            {
                FormBlock.Spans => new FormPlace(FormBlock.Supports, 0, FormColumn.Place),
                FormBlock.Supports => new FormPlace(FormBlock.Loads, 0, FormColumn.Size),
                _ => null,
            };
        }

        ImmutableArray<FormColumn> columns = place.Block switch
        {
            FormBlock.Spans => [FormColumn.Length],
            FormBlock.Supports => [FormColumn.Place, FormColumn.Kind],
            _ when form.Document.Loads[place.Row].Kind == "couple" => [FormColumn.Size, FormColumn.From],
            _ => [FormColumn.Size, FormColumn.From, FormColumn.To],
        };
        return InRow(columns, place) ?? new FormPlace(place.Block, place.Row + 1, columns[0]);
    }

    private static bool IsMissing(ScreenState form, FormPlace place) =>
        FormCells.TextOf(form.Document, place) is null
        && FormCells.TextOf(form.Document, place with { Column = FormColumn.Reading }) is null;
}
