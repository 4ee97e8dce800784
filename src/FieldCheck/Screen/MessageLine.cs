using FieldCheck.Reporting.Tables;
using FieldCheck.Screen.Combining;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Sections;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen;

/// <summary>The line above the keys: what a cell means, or what is wrong with it.</summary>
internal static class MessageLine
{
    /// <summary>What is to be told now.</summary>
    /// <param name="state">The state.</param>
    internal static Notice Of(ScreenState state)
    {
        if (state.Notice is Notice notice)
        {
            return notice;
        }

        switch (state.Overlay)
        {
            case Overlay.Details details:
                return DetailWords.Of(state, details);
            case Overlay.Help help:
                return new Notice(HelpLines.Of(state.Table, state.View, help.Filter.Text)[help.Choice].Words, Role.Faint);
            case Overlay.Answers { Props.IsEmpty: false }:
                return new Notice(PropLine.Asks, Role.Faint);
            case Overlay.Results or Overlay.Answers:
                return new Notice("");
            case Overlay.Families:
                return new Notice("Sections of the families marked [x] are tried, whatever the beam, until the program is left.", Role.Faint);
            case Overlay.Settings:
                return new Notice("The beam and what was typed stay as they are.", Role.Faint);
            case Overlay.SetList list:
                return SetListPicture.Message(state, list);
            case Overlay.CatalogueList list:
                return CataloguePicture.Message(state, list);
            case Overlay.OpenList list:
                return OpenListWords.Message(list);
            default:
                break;
        }

        return ScreenViews.Of(state.View).Says(state);
    }

    /// <summary>Which beam the results are of, for a view that draws them.</summary>
    /// <param name="state">The state.</param>
    internal static Notice OfResults(ScreenState state) =>
        new(ResultsPicture.Header(state, state.Size.Width), state.Age == ResultsAge.UpToDate ? Role.Text : Role.Warn);

    /// <summary>What the cell of the form that the person is on holds, or what is wrong with it.</summary>
    /// <param name="state">The state.</param>
    internal static Notice OfForm(ScreenState state)
    {
        if (state.Draft is CellDraft draft)
        {
            return OfCell(state.Tried ?? state.Settled, draft.Place) ?? new Notice("");
        }

        FormPlace? told = state.ReadBack is FormPlace place && place != state.Focus
            && !(place.Block == FormBlock.Loads && FormCells.IsAsked(state.Document, place.Row)) ? place : null;
        return (told is null ? null : OfCell(state.Settled, told))
            ?? OfCell(state.Settled, state.Focus)
            ?? new Notice(Named(state.Sheet, state.Focus, CellHints.Of(state.Focus)), Role.Faint);
    }

    private static Notice? OfCell(Calculation calculation, FormPlace place)
    {
        FormSheet sheet = new(calculation.Document);
        if (place.Block == FormBlock.Loads && FormCells.IsAsked(calculation.Document, place.Row))
        {
            return new Notice(Named(sheet, place, Question(calculation, place.Row)), Role.Warn);
        }

        if (CellProblems.At(calculation, place) is Problem problem)
        {
            return CellProblems.IsMissing(calculation, place)
                ? new Notice(Named(sheet, place, CellHints.OfMissing(place) ?? problem.Text))
                : new Notice(Named(sheet, place, problem.Text), Role.Warn);
        }

        return ReadBackWords.Of(calculation, place) is string words ? new Notice(Named(sheet, place, words)) : null;
    }

    /// <summary>What is asked about the size of a load.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="row">The load, counted from 0.</param>
    internal static string Question(Calculation calculation, int row)
    {
        FormPlace size = new(FormBlock.Loads, row, FormColumn.Size);
        string number = FormCells.TextOf(calculation.Document, size) ?? "";
        UnitSystem system = calculation.Document.Units;
        string force = CellUnits.Of(QuantityKind.Force, system);
        string each = system == UnitSystem.Us ? "foot" : "metre";
        return $"{number}{Over(calculation, row)}:  t = {number} {force} in all   m = {number} {force} on each {each}";
    }

    private static string Over(Calculation calculation, int row) =>
        FormLabels.LengthOfLoad(calculation.Document, row) is double length
            ? $" over {new DisplayUnits(calculation.Document.Units).Say(length, QuantityKind.Length)}"
            : "";

    private static string Named(FormSheet sheet, FormPlace place, string text)
    {
        string cell = FormWords.Cell(sheet, place);
        return $"{char.ToUpperInvariant(cell[0])}{cell[1..]}: {text}";
    }
}
