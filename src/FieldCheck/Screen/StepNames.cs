using FieldCheck.Screen.FormGrid;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen;

/// <summary>What changes are called in the menu and after an undo.</summary>
internal static class StepNames
{
    /// <summary>The name of a change, as "load 3 size to 12 kN/m".</summary>
    /// <param name="before">The beam before it.</param>
    /// <param name="after">The beam after it.</param>
    /// <param name="edit">The change.</param>
    internal static string Of(FormSheet before, FormSheet after, Edit edit) => edit switch
    {
        Edit.TypeCell { Place: { Block: FormBlock.Cases, Column: FormColumn.Case } place } typed =>
            $"{FormWords.Cell(before, place)} {To(typed.Text.Trim())}",
        Edit.TypeCell typed =>
            $"{FormWords.Cell(after, typed.Place)} {To(FormCells.TextOf(after.Document, typed.Place))}",
        Edit.TakeShape taken =>
            $"{FormWords.Cell(after, new FormPlace(FormBlock.Sections, taken.Row, FormColumn.Shape))} {To(taken.Name)}",
        Edit.PasteCells => "paste",
        Edit.TypeKey typed => $"{typed.Key} {To(typed.Text)}",
        Edit.PutRow put => $"add {FormWords.Row(after, BlockOf(put.Content), put.Row)}",
        Edit.CopyRow copied => $"copy {FormWords.Row(before, copied.Block, copied.Row)}",
        Edit.DeleteRow deleted => $"delete {FormWords.Row(before, deleted.Block, deleted.Row)}",
        Edit.SwapRows swapped => $"move {FormWords.Row(before, swapped.Block, swapped.Row)}",
        Edit.AnswerSize answered => $"{FormWords.Row(after, FormBlock.Loads, answered.Row)} size",
        Edit.PutCombinations { Replaces: true } => "combinations of a standard in place of all",
        Edit.PutCombinations => "combinations of a standard",
        Edit.ShowUnits => "units",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>The block of a row.</summary>
    /// <param name="content">The row.</param>
    internal static FormBlock BlockOf(FormRow content) => content switch
    {
        FormRow.Span => FormBlock.Spans,
        FormRow.Support => FormBlock.Supports,
        FormRow.Stated => FormBlock.Stated,
        FormRow.Combination => FormBlock.Combinations,
        FormRow.Rolling => FormBlock.Rolling,
        _ => FormBlock.Loads,
    };

    private static string To(string? text) => string.IsNullOrEmpty(text) ? "cleared" : $"to {text}";
}
