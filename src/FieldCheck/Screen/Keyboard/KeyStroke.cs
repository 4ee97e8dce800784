namespace FieldCheck.Screen.Keyboard;

/// <summary>One press of a key, or one paste. Closed set: the cases are the nested records.</summary>
internal abstract record KeyStroke
{
    private KeyStroke()
    {
    }

    /// <summary>A character typed.</summary>
    /// <param name="Grapheme">One grapheme, which may be several code points; never a control character.</param>
    internal sealed record Text(string Grapheme) : KeyStroke;

    /// <summary>A key with a name.</summary>
    /// <param name="Key">Which.</param>
    internal sealed record Named(KeyName Key) : KeyStroke;

    /// <summary>Ctrl and a letter.</summary>
    /// <param name="Letter">The letter, in capitals.</param>
    internal sealed record Control(char Letter) : KeyStroke;

    /// <summary>A text pasted as a whole.</summary>
    /// <param name="Content">The text, with any line ends in it.</param>
    internal sealed record Paste(string Content) : KeyStroke;
}
