using System.Globalization;
using System.Text;
using FieldCheck.Reporting;

namespace FieldCheck.Screen.Painting;

/// <summary>A text of the screen for a terminal that shows ASCII only; as wide as it was, so that columns still line up.</summary>
internal static class AsciiText
{
    // Half blocks as the curves use them in ASCII.
    private const string Blocks = "▀▄█";
    private const string BlocksInAscii = "'.:";

    /// <summary>The text with each sign in its plain form where that is as wide, else with "?".</summary>
    /// <param name="text">The text.</param>
    internal static string Of(string text)
    {
        if (Ascii.IsValid(text))
        {
            return text;
        }

        StringBuilder plain = new();
        TextElementEnumerator graphemes = StringInfo.GetTextElementEnumerator(text);
        while (graphemes.MoveNext())
        {
            plain.Append(OfGrapheme(graphemes.GetTextElement()));
        }

        return plain.ToString();
    }

    private static string OfGrapheme(string grapheme)
    {
        // Marks that stand on a letter go.
        int width = TextColumns.Of(grapheme);
        string spelled = Blocks.Contains(grapheme, StringComparison.Ordinal)
            ? BlocksInAscii[Blocks.IndexOf(grapheme, StringComparison.Ordinal)].ToString()
            : PlainAscii.Of(Rune.GetRuneAt(grapheme, 0).ToString());
        return spelled.Length == width ? spelled

            // Of a letter spelled with two, the first will do; a sign cut short would say something else.
            : spelled.Length > width && width > 0 && spelled.All(char.IsAsciiLetter) ? spelled[..width]
            : new string('?', width);
    }
}
