using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Tests.Editing;

/// <summary>Short ways to type in a form.</summary>
internal static class Form
{
    internal static FormSheet Of(BeamDocument document) => new(document);

    internal static FormSheet Span(this FormSheet sheet, int row, FormColumn column, string text) =>
        sheet.Type(FormBlock.Spans, row, column, text);

    internal static FormSheet Support(this FormSheet sheet, int row, FormColumn column, string text) =>
        sheet.Type(FormBlock.Supports, row, column, text);

    internal static FormSheet Load(this FormSheet sheet, int row, FormColumn column, string text) =>
        sheet.Type(FormBlock.Loads, row, column, text);

    internal static FormSheet Stated(this FormSheet sheet, int row, FormColumn column, string text) =>
        sheet.Type(FormBlock.Stated, row, column, text);

    internal static FormSheet Case(this FormSheet sheet, int row, FormColumn column, string text) =>
        sheet.Type(FormBlock.Cases, row, column, text);

    internal static FormSheet Combination(this FormSheet sheet, int row, FormColumn column, string text) =>
        sheet.Type(FormBlock.Combinations, row, column, text);

    internal static FormSheet Rolling(this FormSheet sheet, int row, FormColumn column, string text) =>
        sheet.Type(FormBlock.Rolling, row, column, text);

    internal static FormSheet Stick(this FormSheet sheet, FormBlock block, int row, FormColumn column, string text) =>
        sheet.Type(block, row, column, text);

    internal static FormSheet Do(this FormSheet sheet, Edit edit) => Editor.Apply(sheet, edit);

    internal static string? Text(this FormSheet sheet, FormBlock block, int row, FormColumn column) =>
        FormCells.TextOf(sheet.Document, new FormPlace(block, row, column));

    private static FormSheet Type(this FormSheet sheet, FormBlock block, int row, FormColumn column, string text) =>
        Editor.Apply(sheet, new Edit.TypeCell(new FormPlace(block, row, column), text));
}
