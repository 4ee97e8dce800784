using System.Collections.Immutable;

namespace FieldCheck.Screen.Keyboard;

/// <summary>One thing that can be done, how it is reached and how it is named.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Group">Where it works.</param>
/// <param name="Keys">Its keys; empty where it is reached by the menu alone, or by typing.</param>
/// <param name="Letter">Its letter in the menu; null: not in the menu.</param>
/// <param name="Words">What it does.</param>
/// <param name="Hint">What the key line says of it behind its key; null: it is not on the key line.</param>
/// <param name="Twin">A command whose key stands beside its own on the key line.</param>
internal sealed record ScreenCommand(
    CommandName Name,
    CommandGroup Group,
    ImmutableArray<KeyStroke> Keys,
    char? Letter,
    string Words,
    string? Hint = null,
    CommandName? Twin = null)
{
    /// <summary>
    /// Its keys as they are written, as "^Q ^C"; "type" where typing is the key; empty where there is none.
    /// </summary>
    internal string KeyWords =>
        Name == CommandName.Type ? "type" : string.Join(' ', Keys.Select(KeyStrokeNames.Of));

    /// <summary>How the menu reaches it, as "/ c", or "/ v p" for a view; empty where it is not in the menu.</summary>
    internal string MenuWords => Letter is char letter ? $"/ {letter}"
        : ScreenViews.ShownBy(Name) is ViewTraits view ? $"/ v {view.Letter}"
        : "";

    /// <summary>Its first key; how the menu reaches it where it has none.</summary>
    internal string ShortestWords => Keys is [KeyStroke first, ..] ? KeyStrokeNames.Of(first)
        : Name == CommandName.Type ? KeyWords : MenuWords;

    /// <summary>Its name in the settings file, as "copy_row".</summary>
    internal string SettingsName => string.Concat(Name.ToString().Select((letter, index) =>
        char.IsUpper(letter) && index > 0 ? $"_{char.ToLowerInvariant(letter)}" : $"{char.ToLowerInvariant(letter)}"));

    /// <summary>True: its keys stay as they come, for what it does depends on which of them is pressed.</summary>
    internal bool HasFixedKeys => Name
        is CommandName.Type or CommandName.Enter or CommandName.Move or CommandName.RowEnds or CommandName.Blocks
        or CommandName.Clear or CommandName.Drop or CommandName.MoveReading or CommandName.Scroll or CommandName.ScrollVerdicts
        or CommandName.ScrollEnvelopes;

    /// <summary>True: it works in a view.</summary>
    /// <param name="view">The view.</param>
    internal bool IsIn(ScreenView view) => Group == CommandGroup.Beam || ScreenViews.Of(view).Groups.Contains(Group);
}
