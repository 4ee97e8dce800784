using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.FormGrid;

/// <summary>A cell that is being typed in.</summary>
/// <param name="Place">The cell.</param>
/// <param name="Line">What is typed so far.</param>
/// <param name="IsEdited">True: what stood in the cell is being edited, so left and right move within it.</param>
/// <param name="WasOffered">True: it had been dropped and was brought back; dropped again, it is gone.</param>
internal sealed record CellDraft(FormPlace Place, LineText Line, bool IsEdited = false, bool WasOffered = false);
