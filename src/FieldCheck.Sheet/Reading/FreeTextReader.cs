namespace FieldCheck.Sheet.Reading;

/// <summary>Reads words that nothing is worked out from: a title, a note, a date as the person writes it.</summary>
public static class FreeTextReader
{
    /// <summary>The longest text that is kept.</summary>
    public const int LongestText = 4000;

    /// <summary>Takes the text as it is; only its length is looked at. It may be empty.</summary>
    /// <param name="text">As typed.</param>
    public static Reading<string> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length <= LongestText
            ? new Reading<string>.Accepted(text)
            : new Reading<string>.Refused(ReadingMessages.TooLong(LongestText), LongestText);
    }
}
