using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.Details;

/// <summary>Which keys a list of details shows.</summary>
/// <param name="Block">The block whose row it is about; null: the whole beam.</param>
/// <param name="Row">The row, counted from 0.</param>
internal sealed record DetailPage(FormBlock? Block, int Row = 0);
