using System.Globalization;
using System.Text;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Reading;

/// <summary>Quotes a piece of what was typed so that it can be shown: short, every character visible.</summary>
internal static class Found
{
    private const int Longest = 24;

    /// <summary>The word or number that stands at the cursor, or the one character.</summary>
    internal static string At(in TextCursor cursor)
    {
        string text = cursor.Text;
        int end = cursor.Position;
        while (end < text.Length && IsWordPart(text[end]))
        {
            end++;
        }

        return end > cursor.Position
            ? Quoted(text[cursor.Position..end])
            : Single(text, cursor.Position);
    }

    internal static string Quoted(string text) => "'" + Clipped(text) + "'";

    internal static string Clipped(string text)
    {
        string safe = TextSafety.ForTerminal(text.Trim());
        return safe.Length <= Longest ? safe : Cut(safe, Longest) + "...";
    }

    /// <summary>The beginning of a text, no half of a surrogate pair at its end.</summary>
    internal static string Cut(string text, int length) =>
        text[..(char.IsHighSurrogate(text[length - 1]) ? length - 1 : length)];

    private static string Single(string text, int position)
    {
        bool whole = Rune.TryGetRuneAt(text, position, out Rune rune);
        string shown = whole ? rune.ToString() : text[position].ToString();
        int code = whole ? rune.Value : text[position];
        if (Symbols.IsFootMark(text[position]) || Symbols.IsInchMark(text[position]))
        {
            return Symbols.IsFootMark(text[position]) ? "a foot mark" : "an inch mark";
        }

        return shown != TextSafety.ForTerminal(shown) || (whole && Rune.IsWhiteSpace(rune))
            ? string.Create(CultureInfo.InvariantCulture, $"the character U+{code:X4}")
            : "'" + shown + "'";
    }

    private static bool IsWordPart(char c) => char.IsLetterOrDigit(c) || c is '.' or ',' or '_';
}
