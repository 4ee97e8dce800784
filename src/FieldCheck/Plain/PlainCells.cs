using FieldCheck.Screen;
using FieldCheck.Screen.Combining;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Sections;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Plain;

/// <summary>Texts typed for cells and keys, each a step of the history, and what is said of them.</summary>
internal static class PlainCells
{
    /// <summary>The conversation after a change of the beam, its results following it.</summary>
    /// <param name="state">The conversation before.</param>
    /// <param name="edit">The change.</param>
    /// <param name="place">The cell that undo leads back to.</param>
    internal static PlainState Make(PlainState state, Edit edit, FormPlace place) => state with
    {
        Form = LiveResults.Follow(state.Form, FormEdits.Make(state.Form, edit, place, merges: false)),
    };

    /// <summary>A text typed for what a name leads to; an empty one asks for it.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="target">What the name leads to.</param>
    /// <param name="text">The text; "-" empties the cell.</param>
    internal static PlainStep Type(PlainState state, PlainTarget target, string text) => target switch
    {
        PlainTarget.Cell cell when text.Length == 0 =>
            (state with { Ask = new PlainAsk.Cell(cell.Place, PlainWalk.Once) }).Say(),
        PlainTarget.Cell cell => Answer(state, new PlainAsk.Cell(cell.Place, PlainWalk.Once), text),
        PlainTarget.Key key when text.Length == 0 =>
            (state with { Ask = new PlainAsk.Key(key.Path, PlainWalk.Once) }).Say(),
        PlainTarget.Key key => Answer(state, new PlainAsk.Key(key.Path, PlainWalk.Once), text),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>An answer to the question for a cell: what it was read as, what came of it, and the next question.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="ask">The question.</param>
    /// <param name="text">The answer, not empty; "-" empties the cell.</param>
    /// <param name="isSearched">True: a name that is not known was looked for in the catalogue already.</param>
    internal static PlainStep Answer(PlainState state, PlainAsk.Cell ask, string text, bool isSearched = false)
    {
        FormPlace place = ask.Place;
        string meant = text == PlainWords.Nothing ? "" : text;
        if (CaseWords.NotTaken(place, meant) is string why)
        {
            return (state with { Ask = ask }).Say(meant.Length == 0
                ? why
                : PlainWords.Sentence(
                    $"{FormWords.Cell(state.Form.Sheet, place)} is {string.Join(" or ", FormCells.ChoicesOf(place))}; {text} is neither"));
        }

        if (StickWords.NotTaken(place, meant) is string wanted)
        {
            return (state with { Ask = ask }).Say(wanted);
        }

        PlainState typed = Make(state, new Edit.TypeCell(place, meant), place);
        ScreenState form = typed.Form;
        place = Followed(state.Form, form, place);
        ask = ask with { Place = place };
        if (place.Column is FormColumn.Size or FormColumn.From or FormColumn.To && place.Block == FormBlock.Loads
            && FormCells.IsAsked(form.Document, place.Row))
        {
            return (typed with { Ask = new PlainAsk.Size(place, ask.Walk) }).Say();
        }

        if (form.Document.Stated.Count < state.Form.Document.Stated.Count)
        {
            string row = FormWords.Row(state.Form.Sheet, place.Block, place.Row);
            return GoOn(typed, ask, $"No figure is left of {row}: its row is taken out; undo brings it back.");
        }

        Problem? problem = CellProblems.At(form.Settled, place);
        if (problem is not null && !CellProblems.IsMissing(form.Settled, place))
        {
            if (!isSearched && place.Column is FormColumn.Shape or FormColumn.Grade)
            {
                return PlainCatalogue.Search(state with { Ask = ask }, place, text);
            }

            // Kept as typed and asked again: Enter leaves it so, to be mended later.
            PlainAsk? again = ask.Walk == PlainWalk.Once ? null : ask;
            return (typed with { Ask = again }).Say(
                PlainWords.Sentence($"{FormWords.Cell(form.Sheet, place)} does not read: {problem.Text}"),
                again is null ? PlainWords.Outcome(form) : "It is kept as typed. Type it anew, or Enter leaves it so.");
        }

        return GoOn(typed, ask, ReadBack(form, place));
    }

    /// <summary>The size of a load told: the whole, or on each length.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="ask">The question.</param>
    /// <param name="text">The answer.</param>
    internal static PlainStep Answer(PlainState state, PlainAsk.Size ask, string text)
    {
        string word = text.ToLowerInvariant();
        if (word is not ("t" or "m" or ""))
        {
            return state.Say("Answer t for the whole load, m for the load on each length, Enter to leave it open.");
        }

        FormPlace size = ask.Place with { Column = FormColumn.Size };
        PlainState told = word.Length == 0
            ? state
            : Make(state, new Edit.AnswerSize(ask.Place.Row, word == "t"), size);
        return GoOn(
            told,
            new PlainAsk.Cell(ask.Place, ask.Walk),
            word.Length == 0 ? null : ReadBack(told.Form, size));
    }

    /// <summary>An answer to the question for a key without a column.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="ask">The question.</param>
    /// <param name="text">The answer, not empty; "-" empties the key.</param>
    internal static PlainStep Answer(PlainState state, PlainAsk.Key ask, string text)
    {
        string key = ask.Path;
        PlainState typed = Make(
            state, new Edit.TypeKey(key, text == PlainWords.Nothing ? "" : text), state.Form.Focus);
        BeamDocument document = typed.Form.Document;
        string words = DetailLines.WordsOf(key);
        Problem? problem = typed.Form.Settled.Problems.FirstOrDefault(problem => problem.Key == key);
        string? stands = DocumentCells.Get(document, key);
        string said = (problem, stands) switch
        {
            (Problem wrong, string) => $"{words} does not read: {wrong.Text}",
            (_, null) => $"{words}: empty now",
            _ => DetailWords.ReadBackOf(document, DocumentCells.Find(document, key)?.Wanted, stands) is string read
                ? $"read as {read}"
                : $"{words}: {stands}",
        };
        return GoOn(typed, ask, PlainWords.Sentence(said));
    }

    /// <summary>The next question of a walk, if there is one; what came of the beam is said where it is news.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="ask">The question answered.</param>
    /// <param name="said">What is said of the answer; null: nothing was changed.</param>
    internal static PlainStep GoOn(PlainState state, PlainAsk ask, string? said)
    {
        PlainState on = state with { Ask = PlainWalks.Next(state.Form, ask) };
        bool isAskedNext = on.Ask is PlainAsk.Cell next && IsWaitingForRowOf(on.Form.Settled, next.Place);
        bool ends = on.Ask is null
            && ask is (PlainAsk.Cell { Walk: not PlainWalk.Once } or PlainAsk.Key { Walk: not PlainWalk.Once });
        string outcome = ask is PlainAsk.Cell { Place.Block: FormBlock.Stated }
            ? PlainWords.Verdicts(on.Form)
            : PlainWords.Outcome(on.Form);
        return (said, ends) switch
        {
            (string text, _) when !isAskedNext => on.Say(text, outcome),
            (string text, _) => on.Say(text),
            (null, true) => on.Say(outcome),
            _ => on.Say(),
        };
    }

    // The next question says it already.
    private static bool IsWaitingForRowOf(Calculation calculation, FormPlace next) =>
        !calculation.Problems.IsEmpty && CellProblems.Of(calculation).All(found =>
            CellProblems.IsMissing(calculation, found.Place)
            && (found.Place!.Block, found.Place.Row) == (next.Block, next.Row));

    // A case may stand elsewhere once own weight belongs to another.
    private static FormPlace Followed(ScreenState before, ScreenState after, FormPlace place) =>
        place.Block == FormBlock.Cases
        && CaseRows.IndexOf(after.Document, CaseRows.Of(before.Document).ElementAtOrDefault(place.Row)?.Name) is int row
            ? place with { Row = row }
            : place;

    private static string ReadBack(ScreenState form, FormPlace place)
    {
        string cell = FormWords.Cell(form.Sheet, place);
        Calculation calculation = form.Settled;
        return PlainWords.Sentence(PlainStickWords.Sides(form.Document, place) is string sides ? $"read as {sides}"
            : place.Column == FormColumn.Flat ? StickWords.ReadBack(calculation, place, FormCells.TextOf(form.Document, place) ?? "")!
            : FormCells.TextOf(form.Document, place) is not string text ? $"{cell}: empty now"
            : place is { Block: FormBlock.Cases, Column: FormColumn.Case } ? $"the case is called {text} wherever it is used"
            : ReadBackWords.Of(calculation, place) is not string read ? $"{cell}: {text}"
            : place.Column is FormColumn.Kind or FormColumn.Acts or FormColumn.Under or FormColumn.Basis or FormColumn.Rules
                || (place.Column == FormColumn.Unbraced && !char.IsDigit(text[0])) ? read
            : place.Block == FormBlock.Cases ? $"{FormWords.Row(form.Sheet, place.Block, place.Row)}: {read}"
            : $"read as {read}");
    }
}
