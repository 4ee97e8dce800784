namespace FieldCheck.Sheet.Reading;

/// <summary>Changes the text of a place without touching what else was typed in it.</summary>
public static class PlaceText
{
    /// <summary>The text after a support was given another label; unchanged where it does not hang on it.</summary>
    /// <param name="text">The place as typed; it need not read.</param>
    /// <param name="label">The label until now; case does not count.</param>
    /// <param name="renamed">The label from now on.</param>
    public static string Renamed(string text, string label, string renamed)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(renamed);
        TextCursor cursor = new(text, []);
        cursor.SkipSpaces();
        int start = cursor.Position;
        string word = char.IsAsciiLetter(cursor.Current) ? Word(ref cursor) : string.Empty;
        return word.Equals(label, StringComparison.OrdinalIgnoreCase) && !LabelReader.IsTaken(word)
            ? text[..start] + renamed + text[cursor.Position..]
            : text;
    }

    /// <summary>Steps over letters, digits and "_".</summary>
    internal static string Word(ref TextCursor cursor)
    {
        int start = cursor.Position;
        while (LabelReader.IsPart(cursor.Current))
        {
            cursor.Position++;
        }

        return cursor.Since(start);
    }
}
