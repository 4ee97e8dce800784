using System.Globalization;
using FieldCheck.Screen.Keyboard;

namespace FieldCheck.Screen.Painting;

/// <summary>One line of text being typed, and where the next character goes.</summary>
/// <param name="Text">The text.</param>
/// <param name="Caret">Index in the text, between two graphemes, before which the next character goes.</param>
internal sealed record LineText(string Text, int Caret)
{
    /// <summary>Nothing typed yet.</summary>
    internal static LineText Empty { get; } = new("", 0);

    /// <summary>What stands left of the caret.</summary>
    internal string Before => Text[..Caret];

    /// <summary>A text with the caret at its end.</summary>
    /// <param name="text">The text.</param>
    internal static LineText Of(string text) => new(text, text.Length);

    /// <summary>The line with something typed in it.</summary>
    /// <param name="typed">What was typed.</param>
    internal LineText Insert(string typed) => new(Text.Insert(Caret, typed), Caret + typed.Length);

    /// <summary>The line after a key that moves or takes away; null for a key that does neither.</summary>
    /// <param name="key">The key.</param>
    internal LineText? After(KeyName key) => key switch
    {
        KeyName.Backspace => Caret == 0 ? this : new(Text.Remove(Left, Caret - Left), Left),
        KeyName.Delete => Caret == Text.Length ? this : new(Text.Remove(Caret, Right - Caret), Caret),
        KeyName.Left => this with { Caret = Left },
        KeyName.Right => this with { Caret = Right },
        KeyName.Home => this with { Caret = 0 },
        KeyName.End => this with { Caret = Text.Length },
        _ => null,
    };

    private int Left
    {
        get
        {
            int[] starts = StringInfo.ParseCombiningCharacters(Text);
            return Array.FindLast(starts, start => start < Caret);
        }
    }

    private int Right
    {
        get
        {
            int[] starts = StringInfo.ParseCombiningCharacters(Text);
            int found = Array.Find(starts, start => start > Caret);
            return found == 0 ? Text.Length : found;
        }
    }
}
