using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen;

/// <summary>Something told in the message line until the next key.</summary>
/// <param name="Text">One sentence.</param>
/// <param name="Role">How it looks.</param>
internal sealed record Notice(string Text, Role Role = Role.Text);
