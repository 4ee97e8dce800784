using System.Globalization;
using System.Text;

namespace FieldCheck.Sheet.Units;

/// <summary>Makes text from a file or the keyboard harmless to a terminal and to the line it stands in.</summary>
public static class TextSafety
{
    private const char Substitute = '?';

    /// <summary>
    /// Puts "?" for every control character (escape, line feed and tab too), direction mark, invisible format
    /// character, line separator and broken surrogate. Leaves out what only tells how the sign before it looks, because
    /// terminals disagree on the columns that such a pair takes: variation selectors and skin tones.
    /// </summary>
    /// <param name="text">One line; a text of several lines is cut into them first.</param>
    /// <returns>The same text where there is nothing to replace; never longer.</returns>
    public static string ForTerminal(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!text.AsSpan().ContainsAnyExceptInRange(' ', '~'))
        {
            return text;
        }

        StringBuilder? safe = null;
        int position = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            // A broken surrogate is handed out as U+FFFD though one char stands in the text, as it does for a real one.
            bool broken = char.IsSurrogate(text[position]) && rune == Rune.ReplacementChar;
            bool harmless = !broken && IsHarmless(rune);
            bool isLook = IsLook(rune);
            if (!harmless || isLook)
            {
                safe ??= new StringBuilder(text, 0, position, text.Length);
            }

            safe?.Append(isLook ? "" : harmless ? rune.ToString() : Substitute.ToString());
            position += broken ? 1 : rune.Utf16SequenceLength;
        }

        return safe?.ToString() ?? text;
    }

    private static bool IsLook(Rune rune) => rune.Value is (>= 0xFE00 and <= 0xFE0F) or (>= 0x1F3FB and <= 0x1F3FF);

    private static bool IsHarmless(Rune rune) => Rune.GetUnicodeCategory(rune) is not (
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate
        or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);
}
