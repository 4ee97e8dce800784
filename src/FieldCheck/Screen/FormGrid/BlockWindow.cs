using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.FormGrid;

/// <summary>Which rows of a block are seen.</summary>
/// <param name="Block">The block.</param>
/// <param name="First">The first row seen.</param>
/// <param name="Count">How many rows are seen; 0 where the block is not seen at all.</param>
/// <param name="Hidden">How many rows of the beam are not seen.</param>
internal sealed record BlockWindow(FormBlock Block, int First, int Count, int Hidden);
