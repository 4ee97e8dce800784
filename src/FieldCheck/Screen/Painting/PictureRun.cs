namespace FieldCheck.Screen.Painting;

/// <summary>A stretch of text of one role.</summary>
/// <param name="Text">The text; no control characters.</param>
/// <param name="Role">What it is there for.</param>
/// <param name="Target">What a click on it does; null: nothing.</param>
internal sealed record PictureRun(string Text, Role Role, LinkTarget? Target = null);
