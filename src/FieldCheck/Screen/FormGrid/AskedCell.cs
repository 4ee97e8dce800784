using FieldCheck.Screen.Details;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.FormGrid;

/// <summary>A cell that a preset asks for: one of the form, or a line of keys without a column.</summary>
/// <param name="Key">Its key path.</param>
/// <param name="Place">The cell of the form; null for a key without a column.</param>
/// <param name="Page">The page on which a key without a column stands; null for a cell of the form.</param>
internal sealed record AskedCell(string Key, FormPlace? Place, DetailPage? Page);
