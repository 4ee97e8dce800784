using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using FieldCheck.Sheet.Units;
using Wcwidth;

namespace FieldCheck.Screen.Painting;

/// <summary>How many columns of the terminal a text takes, and texts cut to fit.</summary>
internal static class TextColumns
{
    private const int Widest = 2;
    private const string Mark = "..";

    /// <summary>The columns that a text takes.</summary>
    /// <param name="text">The text.</param>
    internal static int Of(string text)
    {
        if (Ascii.IsValid(text))
        {
            return text.Length;
        }

        int columns = 0;
        TextElementEnumerator graphemes = StringInfo.GetTextElementEnumerator(text);
        while (graphemes.MoveNext())
        {
            columns += OfGrapheme(graphemes.GetTextElement());
        }

        return columns;
    }

    /// <summary>As much of the beginning of a text as fits.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">The columns that there are.</param>
    internal static string Cut(string text, int width)
    {
        if (width <= 0)
        {
            return "";
        }

        int columns = 0;
        TextElementEnumerator graphemes = StringInfo.GetTextElementEnumerator(text);
        while (graphemes.MoveNext())
        {
            columns += OfGrapheme(graphemes.GetTextElement());
            if (columns > width)
            {
                return text[..graphemes.ElementIndex];
            }
        }

        return text;
    }

    /// <summary>A text cut or filled up with blanks to be exactly so wide.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">The columns that it shall take.</param>
    internal static string Fit(string text, int width)
    {
        string cut = Cut(TextSafety.ForTerminal(text), width);
        return cut + new string(' ', Math.Max(width - Of(cut), 0));
    }

    /// <summary>As much of a text as fits, ending in ".." where something had to be cut and that finds room.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">The columns that there are.</param>
    internal static string CutWithMark(string text, int width)
    {
        string safe = TextSafety.ForTerminal(text);
        return Of(safe) <= width || width <= Mark.Length ? Cut(safe, width) : Cut(safe, width - Mark.Length) + Mark;
    }

    /// <summary>The same, filled up with blanks to be exactly so wide.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">The columns that it shall take.</param>
    internal static string FitWithMark(string text, int width) => Fit(CutWithMark(text, width), width);

    /// <summary>A sentence broken at its blanks into lines; too long a word is cut.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="width">The columns of a line; 1 or more.</param>
    /// <param name="indent">What stands before every line but the first.</param>
    internal static ImmutableArray<string> Wrap(string text, int width, string indent = "  ")
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (Of(longer) > width && line.Length > 0)
            {
                lines.Add(line);
                longer = indent + word;
            }

            line = Cut(longer, width);
        }

        lines.Add(line);
        return lines.ToImmutable();
    }

    // A terminal gives no grapheme more than two columns, however many wide code points are joined in it.
    private static int OfGrapheme(string grapheme)
    {
        int columns = 0;
        foreach (Rune rune in grapheme.EnumerateRunes())
        {
            columns += Math.Max(UnicodeCalculator.GetWidth(rune), 0);
        }

        return Math.Min(columns, Widest);
    }
}
