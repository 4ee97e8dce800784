namespace FieldCheck.Sheet.Reading;

/// <summary>Reads how far a length may deflect, as a part of it: "L/360".</summary>
public static class DeflectionLimitReader
{
    /// <summary>Reads the number below L [–], greater than 0.</summary>
    /// <param name="text">As typed; the case of L and spaces do not count.</param>
    public static Reading<double> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (string.IsNullOrWhiteSpace(text))
        {
            return Refuse(ReadingMessages.EmptyText(ReadingMessages.LimitExpected), 0);
        }

        TextCursor cursor = new(text, []);
        cursor.SkipSpaces();
        if (!TrySkip(ref cursor, 'L') || !TrySkip(ref cursor, '/'))
        {
            return cursor.AtEnd
                ? Refuse(ReadingMessages.LimitShape("the end of the text"), text.TrimEnd().Length)
                : Refuse(ReadingMessages.LimitShape(Found.At(cursor)), cursor.Position);
        }

        return NumberReader.Read(text[cursor.Position..]).At(cursor.Position).Then<double>(number => number > 0
            ? new Reading<double>.Accepted(number)
            : Refuse(ReadingMessages.LimitNotPositive, text.IndexOf('/') + 1));
    }

    private static bool TrySkip(ref TextCursor cursor, char expected)
    {
        if (char.ToUpperInvariant(cursor.Current) != expected)
        {
            return false;
        }

        cursor.Position++;
        cursor.SkipSpaces();
        return true;
    }

    private static Reading<double>.Refused Refuse(string text, int offset) => new(text, offset);
}
