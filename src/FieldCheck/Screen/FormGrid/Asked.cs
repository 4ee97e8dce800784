using System.Collections.Immutable;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Overlays;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.FormGrid;

/// <summary>The cells that a preset asks for, in the order in which it asks.</summary>
internal static class Asked
{
    /// <summary>All of them; a key that stands nowhere in the beam is passed over.</summary>
    /// <param name="document">The beam.</param>
    internal static ImmutableArray<AskedCell> Of(BeamDocument document)
    {
        var asked = ImmutableArray.CreateBuilder<AskedCell>();
        foreach (string key in document.Ask.Take(BeamDocument.MostAsked))
        {
            // Two keys of one cell are asked for once.
            if (CellOf(document, key) is AskedCell cell
                && (cell.Place is null || asked.All(other => other.Place != cell.Place)))
            {
                asked.Add(cell);
            }
        }

        return asked.ToImmutable();
    }

    /// <summary>What a cell is called, and the load's own note where it has one.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="cell">The cell.</param>
    internal static string Words(BeamDocument document, AskedCell cell)
    {
        FormSheet sheet = new(document);
        string note = cell.Place is { Block: FormBlock.Loads, Row: >= 0 } load && document.Loads[load.Row].Label is string label
            ? $" ({label})"
            : "";
        return cell switch
        {
            { Place: FormPlace place } => FormWords.Cell(sheet, place) + note,
            { Page: { Block: FormBlock block } page } =>
                $"{FormWords.Row(sheet, block, page.Row)} {DetailLines.WordsOf(cell.Key)}",
            _ => DetailLines.WordsOf(cell.Key),
        };
    }

    /// <summary>The screen with the person on a cell.</summary>
    /// <param name="state">The state.</param>
    /// <param name="cell">The cell.</param>
    internal static ScreenState At(ScreenState state, AskedCell cell) => cell switch
    {
        { Place: FormPlace place } => state with
        {
            Focus = place,
            View = FormMoves.ViewOf(place.Block),
            TabStart = null,
            Overlay = null,
        },
        { Page: DetailPage page } => state with
        {
            Overlay = new Overlay.Details(page, LineOf(state.Document, page, cell.Key)),
        },
        _ => state,
    };

    /// <summary>The one after where the person is; null after the last, and where the person is on none of them.</summary>
    /// <param name="state">The state.</param>
    internal static AskedCell? Next(ScreenState state)
    {
        ImmutableArray<AskedCell> asked = Of(state.Document);
        int index = asked.ToList().FindIndex(cell => IsOn(state, cell));
        return index >= 0 && index + 1 < asked.Length ? asked[index + 1] : null;
    }

    /// <summary>True: the person is on one of them.</summary>
    /// <param name="state">The state.</param>
    internal static bool IsOnOne(ScreenState state) => Of(state.Document).Any(cell => IsOn(state, cell));

    private static bool IsOn(ScreenState state, AskedCell cell) => state.Overlay is Overlay.Details details
        ? cell.Page is not null && cell.Key == DetailLines.At(state.Document, details).Key
        : cell.Place == state.Focus;

    private static AskedCell? CellOf(BeamDocument document, string key)
    {
        if (DocumentCells.Find(document, key) is null)
        {
            return null;
        }

        FormPlace? place = FormCells.PlaceOf(document, key);
        if (place is not null && DetailLines.HasColumn(key))
        {
            return new AskedCell(key, place, null);
        }

        DetailPage[] pages = place is { Row: >= 0 } row && row.Row < new FormSheet(document).RowsOf(row.Block)
            ? [new DetailPage(row.Block, row.Row), new DetailPage(null)]
            : [new DetailPage(null)];
        DetailPage? page = Array.Find(pages, page => LineOf(document, page, key) >= 0);
        return page is null ? null : new AskedCell(key, null, page);
    }

    private static int LineOf(BeamDocument document, DetailPage page, string key) =>
        DetailLines.Of(document, page).ToList().FindIndex(line => line.Key == key);
}
