using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen.FormGrid;

/// <summary>One cell of the form as it is seen.</summary>
/// <param name="Text">What stands in it.</param>
/// <param name="Role">Text for what was typed, Faint for what follows from other cells.</param>
/// <param name="Mark">"!" where it does not read, "?" where it asks, else a blank.</param>
internal sealed record FormCell(string Text, Role Role, char Mark);
