using System.Collections.Immutable;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>What the beam is made of and held to, typed in lines: sections, materials, limits, bracing and bearings.</summary>
internal static class PlainSticks
{
    private static readonly FormPlace Rules = new(FormBlock.Limits, 0, FormColumn.Rules);

    /// <summary>"section IPE 200", "section depth 225 mm", or the same behind the name of one of several.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="block">Sections or materials.</param>
    /// <param name="text">What stands behind the word.</param>
    internal static PlainStep Named(PlainState state, FormBlock block, string text)
    {
        // A key as the file writes it is that key and nothing else.
        string word = FormColumns.RowName(block);
        if (text.StartsWith('.') && PlainNames.OfBeam(state.Form.Document, word + text) is (PlainTarget key, string put))
        {
            return PlainCells.Type(state, key, put);
        }

        BeamDocument document = state.Form.Document;
        ImmutableArray<string> names = block == FormBlock.Sections ? StickRows.Sections(document) : StickRows.Materials(document);
        (int Row, string Behind)? named = names
            .Select((name, row) => (Row: row, Behind: PlainTokens.After(text, name)))
            .Where(one => one.Behind is not null)
            .OrderBy(one => one.Behind!.Length)
            .Select(one => ((int, string)?)(one.Row, one.Behind!))
            .FirstOrDefault();
        if (named is null && names.Length > 1)
        {
            return state.Say($"Which {word}? There are {string.Join(", ", names)}. As: {word} {names[0]}, then what is to be set.");
        }

        (int at, string rest) = named ?? (0, text.Trim());
        return rest.Length == 0
            ? PlainRows.Ask(state, new FormPlace(block, at, FormColumns.Of(block)[0]))
            : Cell(state, block, at, rest) ?? Known(state, new FormPlace(block, at, FormColumns.Of(block)[0]), rest);
    }

    /// <summary>"limits deflection L/360"; limits alone asks its cells in turn.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="text">What stands behind the word.</param>
    internal static PlainStep Limits(PlainState state, string text) => text.Trim().Length == 0
        ? PlainRows.Ask(state, Rules)
        : Cell(state, FormBlock.Limits, 0, text.Trim())
            ?? state.Say($"There is no limit {PlainTokens.Of(text).FirstOrDefault().Word ?? text.Trim()}. There are {CellsOf(FormBlock.Limits)}.");

    /// <summary>The rules that strengths are judged by: listed, or the ones that have the words typed.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="text">Words of their name; empty for all.</param>
    internal static PlainStep RulesFor(PlainState state, string text) => Listed(state, Rules, text);

    /// <summary>The factors of timber of the rules chosen: listed, or those that have the words typed.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="text">Words of their name; empty for all.</param>
    internal static PlainStep Factors(PlainState state, string text) =>
        Listed(state, new FormPlace(FormBlock.Materials, 0, FormColumn.Factors), text);

    /// <summary>"unbraced 1 2.4 m", "unbraced braced" of a single span; unbraced alone goes from span to span.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="text">What stands behind the word.</param>
    internal static PlainStep Unbraced(PlainState state, string text)
    {
        int spans = state.Form.Document.Spans.Count;
        string typed = text.Trim();
        string[] words = typed.Split(' ', 2, StringSplitOptions.TrimEntries);
        FormPlace first = new(FormBlock.Bracing, 0, FormColumn.Unbraced);
        return spans == 0 ? state.Say("No span is there yet.")
            : typed.Length == 0 ? Down(state, first)
            : PlainNames.Row(state.Form.Sheet, FormBlock.Spans, words[0]) is int row && row < spans
                && (words.Length == 1 ? spans > 1 : IsValue(words[1]))
            ? PlainCells.Type(state, new PlainTarget.Cell(first with { Row = row }), words.ElementAtOrDefault(1) ?? "")
            : spans == 1 ? PlainCells.Type(state, new PlainTarget.Cell(first), typed)
            : state.Say($"Which span? There are {spans}. As: unbraced 1 2.4 m, unbraced 1 braced.");
    }

    /// <summary>"bearing A 75 mm", "bearing A allow 2.1 MPa", "pad A 600 x 600"; the word alone goes from support to support.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="column">What is set where only a figure is typed.</param>
    /// <param name="text">What stands behind the word.</param>
    internal static PlainStep Bearing(PlainState state, FormColumn column, string text)
    {
        FormSheet sheet = state.Form.Sheet;
        string word = column == FormColumn.Pad ? "pad" : "bearing";
        if (PlainTokens.Of(text) is not [(string which, int end), ..])
        {
            return sheet.RowsOf(FormBlock.Bearings) == 0
                ? state.Say("No support is there yet.")
                : Down(state, new FormPlace(FormBlock.Bearings, 0, column));
        }

        if (PlainNames.Row(sheet, FormBlock.Supports, which) is not int row || row >= sheet.RowsOf(FormBlock.Bearings))
        {
            return state.Say($"At which support? There are {string.Join(", ", FormLabels.Of(sheet.Document))}. As: {word} A {Example(column)}.");
        }

        string rest = PlainTokens.Rest(text, end);
        FormPlace place = new(FormBlock.Bearings, row, column);
        return rest.Length == 0 && column != FormColumn.Pad ? PlainRows.Ask(state, place)
            : Cell(state, FormBlock.Bearings, row, rest) is PlainStep step ? step
            : rest.Length == 0 || IsValue(rest) ? PlainCells.Type(state, new PlainTarget.Cell(place), rest)
            : state.Say($"A bearing has no cell {PlainTokens.Of(rest).FirstOrDefault().Word ?? rest}. It has {CellsOf(FormBlock.Bearings)}.");
    }

    /// <summary>What the cells of a block are called, one after the other.</summary>
    /// <param name="block">The block.</param>
    internal static string CellsOf(FormBlock block) =>
        string.Join(", ", FormColumns.Of(block).Select(column => PlainNames.NamesOf(block, column)[0]));

    private static PlainStep? Cell(PlainState state, FormBlock block, int row, string text)
    {
        FormPlace flat = new(FormBlock.Sections, row, FormColumn.Flat);
        return block == FormBlock.Sections && FormCells.ChoicesOf(flat).Contains(text, StringComparer.OrdinalIgnoreCase)
            ? PlainCells.Type(state, new PlainTarget.Cell(flat), text)
            : PlainNames.InRow(state.Form.Sheet, block, row, text, isCell: text.Contains(',', StringComparison.Ordinal)) is (PlainTarget target, string typed)
            ? PlainCells.Type(state, target, typed)
            : null;
    }

    // What is no cell is taken for a name of the catalogue; what it does not know is searched there before anything is lost.
    private static PlainStep Known(PlainState state, FormPlace place, string text)
    {
        PlainState typed = PlainCells.Make(state, new Edit.TypeCell(place, text), place);
        return CellProblems.At(typed.Form.Settled, place) is null
            ? PlainCells.Type(state, new PlainTarget.Cell(place), text)
            : PlainCatalogue.Search(state with { Ask = null }, place, text);
    }

    private static PlainStep Listed(PlainState state, FormPlace place, string text)
    {
        Overlay.CatalogueList list = new(place, SectionCatalogue.BuiltIn(), LineText.Empty);
        return text.Trim() switch
        {
            PlainWords.Nothing => PlainCells.Type(state, new PlainTarget.Cell(place), PlainWords.Nothing),
            "" => PlainCatalogue.Listed(state, list),
            string words => PlainCatalogue.Answer(state with { Form = state.Form with { Overlay = list } }, list, words),
        };
    }

    private static PlainStep Down(PlainState state, FormPlace first) =>
        (state with { Ask = new PlainAsk.Cell(first, PlainWalk.Down) }).Say();

    private static string Example(FormColumn column) => column == FormColumn.Pad ? "600 x 600" : "75 mm";

    private static bool IsValue(string text) => char.IsDigit(text[0]) || "+-.(½¼¾".Contains(text[0], StringComparison.Ordinal)
        || text.StartsWith("br", StringComparison.OrdinalIgnoreCase);
}
