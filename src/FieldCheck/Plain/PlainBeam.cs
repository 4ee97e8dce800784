using FieldCheck.Screen;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Plain;

/// <summary>The beam said row by row, its other keys, its units, and steps back and forth.</summary>
internal static class PlainBeam
{
    /// <summary>The beam as typed, one sentence a row, then every other key in which something stands.</summary>
    internal static IEnumerable<string> Rows(PlainState state)
    {
        ScreenState form = state.Form;
        return
        [
            PlainWords.Summary(form),
            .. PlainNames.Blocks.SelectMany(block => Enumerable.Range(0, form.Sheet.RowsOf(block))
                .Where(row => IsSaid(form, block, row))
                .Select(row => Row(form, block, row))),
            .. new[] { FormBlock.Sections, FormBlock.Materials, FormBlock.Limits }
                .SelectMany(block => Enumerable.Range(0, form.Sheet.RowsOf(block)).Where(row => HasText(form, block, row))
                    .Select(row => Row(form, block, row))),
            form.Document.SelfWeight is null
                ? "Own weight: off."
                : PlainWords.Sentence($"own weight: on, case {form.Document.SelfWeight.Case ?? "missing"}"),
            .. PlainNames.KeysOf(form.Document)
                .Where(line => line.Text is not null && !PlainNames.IsOfCases(line)
                    && StickCells.PlaceOf(form.Document, line.Key) is null
                    && !line.Key.StartsWith("title", StringComparison.Ordinal))
                .Select(Said),
        ];
    }

    /// <summary>Every key of a row or of the beam with what stands there, by the name that sets it.</summary>
    internal static IEnumerable<string> More(PlainState state, string text)
    {
        FormSheet sheet = state.Form.Sheet;
        if (PlainNames.BlockIn(text) is (FormBlock block, string behind) && PlainTokens.Of(behind) is [(string which, _), ..]
            && block is FormBlock.Spans or FormBlock.Supports or FormBlock.Loads
            && PlainNames.Row(sheet, block, which) is int row && row < sheet.RowsOf(block))
        {
            string name = FormWords.Row(sheet, block, row);
            return
            [
                PlainWords.Sentence($"more of {name}: set as {name}, then the words, then the text"),
                .. DetailLines.Of(sheet.Document, new DetailPage(block, row)).Select(Said),
            ];
        }

        string wanted = text.Trim();
        string[] lines = [.. PlainNames.KeysOf(sheet.Document)
            .Where(line => wanted.Length == 0 ? !PlainNames.IsOfCases(line) : PlainTokens.After(line.Key, wanted) is not null)
            .Select(Said)];
        return lines.Length == 0
            ? [$"Nothing else is called {wanted}. more lists all."]
            : ["Set any of these as its words, then the text; - empties it.", .. lines];
    }

    internal static PlainStep Again(PlainState state, CommandName name)
    {
        ScreenStep step = Commands.Run(state.Form, name);
        if (step.State.History == state.Form.History)
        {
            return state.With(step);
        }

        ScreenState form = LiveResults.Follow(state.Form, step.State with { Notice = null });
        return (state with { Form = form }).Say(step.State.Notice!.Text, PlainWords.Outcome(form));
    }

    internal static PlainStep Units(PlainState state, string text)
    {
        string wanted = text.Trim().ToLowerInvariant();
        UnitSystem now = state.Form.Document.Units;
        return wanted switch
        {
            "us" when now == UnitSystem.Us => state.Say("Results are in US units already."),
            "si" when now == UnitSystem.Si => state.Say("Results are in SI units already."),
            "us" or "si" => Again(state, CommandName.OtherUnits),
            _ => state.Say("Which units? As: units us, or: units si."),
        };
    }

    internal static PlainStep Stop(PlainState state) => state.Ask is null
        ? state.Say("Nothing is being asked.")
        : (state with { Ask = null }).Say(PlainWords.Outcome(state.Form));

    // What stands in a case is said of its loads; whether they act bay by bay is said of the case.
    private static bool IsSaid(ScreenState form, FormBlock block, int row) =>
        !FormMoves.IsEmptyRow(form.Sheet, new FormPlace(block, row, default))
        && (block != FormBlock.Cases || CaseRows.Of(form.Document)[row].IsPattern
            || form.Document.Renames.Any(rename => rename.Name == CaseRows.Of(form.Document)[row].Name));

    private static bool HasText(ScreenState form, FormBlock block, int row) =>
        FormColumns.Of(block).Any(column => FormCells.TextOf(form.Document, new FormPlace(block, row, column)) is not null);

    private static string Row(ScreenState form, FormBlock block, int row)
    {
        FormCellView view = new(form);
        IEnumerable<string> cells = (StickCells.Has(block) ? FormColumns.Of(block) : PlainNames.ColumnsOf(form.Sheet, block))
            .Select(column => new FormPlace(block, row, column))
            .Where(place => FormCells.TextOf(form.Document, place) is string text
                && (block != FormBlock.Cases || CaseRows.Of(form.Document)[row].Name != text))
            .Select(place => $"{PlainNames.NamesOf(form.Document, block, place.Column)[0]} {view.At(place).Text}"
                + (view.At(place).Mark == ' ' ? "" : " (to mend)"));
        IEnumerable<string> keys = (block is FormBlock.Rolling or FormBlock.Combinations || StickCells.Has(block) ? [] : PlainNames.KeysOf(form.Sheet, block, row))
            .Where(line => line.Text is not null)
            .Select(line => $"{line.Words} {line.Text}");
        string said = string.Join(", ", cells.Concat(keys));
        return PlainWords.Sentence($"{FormWords.Row(form.Sheet, block, row)}: {(said.Length == 0 ? "empty" : said)}");
    }

    private static string Said(DetailLine line) =>
        PlainWords.Sentence($"{line.Words}: {line.Text?.ReplaceLineEndings(" ") ?? "nothing"}");
}
