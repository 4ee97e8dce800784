using System.Collections.Frozen;

namespace FieldCheck.Sheet.Reading;

/// <summary>Reads a support's label: a letter, then letters, digits or "_".</summary>
public static class LabelReader
{
    /// <summary>How many characters a label has at most.</summary>
    public const int LongestLabel = 12;

    private static readonly FrozenSet<string> Taken =
        FrozenSet.Create(StringComparer.OrdinalIgnoreCase, "joint", "mid", "end");

    /// <summary>Reads a label. Whether another support has it too shows only on the beam.</summary>
    /// <param name="text">As typed, or as it stands in a file; spaces round it do not count.</param>
    public static Reading<string> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string label = text.Trim();
        int start = text.Length - text.TrimStart().Length;
        if (label.Length == 0)
        {
            return Refuse(ReadingMessages.EmptyText(ReadingMessages.LabelExpected), 0);
        }

        TextCursor cursor = new(label, []);
        if (char.IsAsciiLetter(cursor.Current))
        {
            PlaceText.Word(ref cursor);
        }

        if (!cursor.AtEnd)
        {
            return Refuse(ReadingMessages.LabelShape(Found.At(cursor)), start + cursor.Position);
        }

        if (label.Length > LongestLabel)
        {
            return Refuse(ReadingMessages.LabelTooLong(LongestLabel), start + LongestLabel);
        }

        return IsTaken(label)
            ? Refuse(ReadingMessages.LabelTaken(label), start)
            : new Reading<string>.Accepted(label);
    }

    /// <summary>The words of places, which no support may be called.</summary>
    internal static bool IsTaken(string label) => Taken.Contains(label);

    internal static bool IsPart(char c) => char.IsAsciiLetterOrDigit(c) || c == '_';

    private static Reading<string>.Refused Refuse(string text, int offset) => new(text, offset);
}
