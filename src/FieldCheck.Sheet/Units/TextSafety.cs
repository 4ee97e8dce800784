using System.Globalization;
using System.Text;

namespace FieldCheck.Sheet.Units;

/// <summary>Makes text from a file or the keyboard harmless to a terminal and to the line it stands in.</summary>
public static class TextSafety
{
    private const char Substitute = '?';
    private const int FirstBeyondAscii = 0x7F;

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

    /// <summary>A text of JSON in which a \u escape stands for all that <see cref="ForTerminal"/> would replace or leave out.</summary>
    /// <param name="json">JSON: signs beyond ASCII stand only inside its strings, and control characters are escaped in it.</param>
    public static string EscapedInJson(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        StringBuilder? safe = null;
        int position = 0;
        foreach (Rune rune in json.EnumerateRunes())
        {
            bool isEscaped = rune.Value >= FirstBeyondAscii && (!IsHarmless(rune) || IsLook(rune));
            safe ??= isEscaped ? new StringBuilder(json, 0, position, json.Length) : null;
            foreach (char part in json.AsSpan(position, rune.Utf16SequenceLength))
            {
                _ = isEscaped ? safe!.Append(CultureInfo.InvariantCulture, $"\\u{(int)part:x4}") : safe?.Append(part);
            }

            position += rune.Utf16SequenceLength;
        }

        return safe?.ToString() ?? json;
    }

    private static bool IsLook(Rune rune) => rune.Value
        is (>= 0xFE00 and <= 0xFE0F) or (>= 0xE0100 and <= 0xE01EF) or (>= 0x180B and <= 0x180D) or 0x180F
        or (>= 0x1F3FB and <= 0x1F3FF);

    private static bool IsHarmless(Rune rune) => !IsInvisible(rune) && Rune.GetUnicodeCategory(rune) is not (
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate
        or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);

    // What Unicode lets a screen pass over (Default_Ignorable_Code_Point) and is of none of these categories.
    private static bool IsInvisible(Rune rune) => rune.Value
        is 0x034F or 0x115F or 0x1160 or 0x17B4 or 0x17B5 or 0x2065 or 0x3164 or 0xFFA0
        or (>= 0xFFF0 and <= 0xFFF8) or (>= 0xE0000 and <= 0xE0FFF and not (>= 0xE0100 and <= 0xE01EF));
}
