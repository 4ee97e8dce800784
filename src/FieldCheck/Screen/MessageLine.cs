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

        if (state.Draft is CellDraft draft)
        {
            return OfCell(state.Tried ?? state.Settled, draft.Place) ?? new Notice("");
        }

        FormPlace? told = state.ReadBack is FormPlace place && place != state.Focus
            && !(place.Block == FormBlock.Loads && FormCells.IsAsked(state.Document, place.Row)) ? place : null;
        return (told is null ? null : OfCell(state.Settled, told))
            ?? OfCell(state.Settled, state.Focus)
            ?? new Notice(Hint(state), Role.Faint);
    }

    private static Notice? OfCell(Calculation calculation, FormPlace place)
    {
        string cell = Capital(FormWords.Cell(new FormSheet(calculation.Document), place));
        if (place.Block == FormBlock.Loads && FormCells.IsAsked(calculation.Document, place.Row))
        {
            return new Notice($"{cell}: {Question(calculation, place.Row)}", Role.Warn);
        }

        if (CellProblems.At(calculation, place) is Problem problem)
        {
            bool isMissing = CellProblems.IsMissing(calculation, place);
            return new Notice($"{cell}: {problem.Text}", isMissing ? Role.Text : Role.Warn);
        }

        return ReadBackWords.Of(calculation, place) is string words ? new Notice($"{cell}: {words}") : null;
    }

    private static string Question(Calculation calculation, int row)
    {
        string number = FormCells.TextOf(calculation.Document, new FormPlace(FormBlock.Loads, row, FormColumn.Size)) ?? "";
        UnitSystem system = Editor.SystemOf(calculation.Document);
        string force = CellUnits.Of(QuantityKind.Force, system);
        return $"{number}{Over(calculation, row)}:  t = {number} {force} in all   m = {number} {force} on each {(system == UnitSystem.Us ? "foot" : "metre")}";
    }

    private static string Over(Calculation calculation, int row) =>
        FormLabels.LengthOfLoad(calculation.Document, row) is double length
            ? $" over {new DisplayUnits(Editor.SystemOf(calculation.Document)).Say(length, QuantityKind.Length)}"
            : "";

    private static string Hint(ScreenState state)
    {
        FormPlace place = state.Focus;
        string cell = Capital(FormWords.Cell(state.Sheet, place));
        string hint = place.IsOwnWeight
            ? "the weight of the sections as a load, on or off (Space)"
            : place.Column switch
            {
                FormColumn.Length => "the span's length: 3.6, 3600mm, 12'-6 1/2\"",
                FormColumn.Reading => "tape reading of the far end, from the left end of the beam",
                FormColumn.Section => "a shape of the catalogue, as W10x30, or a name; sizes by / m",
                FormColumn.Material => "a grade of the catalogue, as A992, or a name; figures by / m",
                FormColumn.Place => "a distance, joint 1, end, mid 1, end - 6 in",
                FormColumn.Kind => "Space: pin, roller, fixed, guide, spring; with its figure: roller 30 deg, spring 500",
                FormColumn.Settles => "by how much it sinks: 12 mm",
                FormColumn.Acts => "Space: both, up (only pushes), down (only holds down)",
                FormColumn.Label => "what it is called everywhere; empty: its letter",
                FormColumn.Size => "12 a force, 12/m spread, 3..6/m varies, 5 kNm turns, 1.2t a weight, 12 psf * 5 ft",
                FormColumn.From => "where it stands or begins: 0.6, A + 4 ft, mid 1",
                FormColumn.To => "where it ends; empty for a load at one place",
                FormColumn.Case => "dead, live, roof_live, snow, rain, wind, earthquake, construction or another name",
                _ => "what it is",
            };
        return $"{cell}: {hint}";
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
