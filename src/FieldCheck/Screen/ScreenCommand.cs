using System.Collections.Immutable;

namespace FieldCheck.Screen;

/// <summary>One thing that can be done, how it is reached and how it is named.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Group">Where it works.</param>
/// <param name="Keys">Its keys; empty where it is reached by the menu alone, or by typing.</param>
/// <param name="Letter">Its letter in the menu; null: not in the menu.</param>
/// <param name="Words">What it does.</param>
/// <param name="Hint">What the key line says of it; null: it is not on the key line.</param>
internal sealed record ScreenCommand(
    CommandName Name,
    CommandGroup Group,
    ImmutableArray<KeyStroke> Keys,
    char? Letter,
    string Words,
    string? Hint = null)
{
    /// <summary>
    /// Its keys as they are written, as "^Q ^C"; "type" where typing is the key; empty where there is none.
    /// </summary>
    internal string KeyWords =>
        Name == CommandName.Type ? "type" : string.Join(' ', Keys.Select(KeyStrokeNames.Of));

    /// <summary>How the menu reaches it, as "/ c"; empty where it is not in the menu.</summary>
    internal string MenuWords => Letter is char letter ? $"/ {letter}" : "";
}
