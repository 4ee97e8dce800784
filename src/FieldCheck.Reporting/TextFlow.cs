using System.Collections.Immutable;
using System.Text;
using FieldCheck.Reporting.Tables;

namespace FieldCheck.Reporting;

/// <summary>Breaks text into lines of a given width.</summary>
public static class TextFlow
{
    /// <summary>Breaks a sentence at its blanks, never a number from its unit; too long a word at its hyphens, and else anywhere.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="width">Columns of a line.</param>
    /// <param name="indent">Blanks before every line but the first.</param>
    /// <returns>The lines; none for a text without words.</returns>
    public static ImmutableArray<string> Wrap(string text, int width, int indent = 0) =>
        Join(Words(text), " ", width, indent);

    /// <summary>Puts items on lines; an item is only broken when it is longer than a line.</summary>
    /// <param name="items">The items, in order.</param>
    /// <param name="separator">What stands between two of them on a line.</param>
    /// <param name="width">Columns of a line.</param>
    /// <param name="indent">Blanks before every line but the first.</param>
    internal static ImmutableArray<string> Join(
        IEnumerable<string> items, string separator, int width, int indent = 0)
    {
        ImmutableArray<string>.Builder lines = ImmutableArray.CreateBuilder<string>();
        StringBuilder line = new();
        bool isEmpty = true;
        foreach ((string piece, bool isRest) in items.SelectMany(item => Pieces(item, width - indent).Select((piece, i) => (piece, i > 0))))
        {
            if (!isEmpty && (isRest || line.Length + separator.Length + piece.Length > width))
            {
                lines.Add(line.ToString().TrimEnd());
                line.Clear().Append(' ', indent);
                isEmpty = true;
            }

            line.Append(isEmpty ? "" : separator).Append(piece);
            isEmpty = false;
        }

        if (!isEmpty)
        {
            lines.Add(line.ToString().TrimEnd());
        }

        return lines.ToImmutable();
    }

    /// <summary>What a line is not broken within: words, and numbers with their units.</summary>
    internal static List<string> Words(string text)
    {
        List<string> words = [];
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            bool isUnit = SpokenUnits.IsUnit(word.TrimEnd(',', '.', ';', ':', ')'));
            if (isUnit && words.Count > 0 && char.IsDigit(words[^1][^1]))
            {
                words[^1] += " " + word;
            }
            else
            {
                words.Add(word);
            }
        }

        return words;
    }

    /// <summary>Where a word may be broken: behind a hyphen between two letters.</summary>
    internal static IEnumerable<string> Parts(string word)
    {
        int from = 0;
        for (int i = 1; i + 1 < word.Length; i++)
        {
            if (word[i] == '-' && char.IsLetter(word[i - 1]) && char.IsLetter(word[i + 1]))
            {
                yield return word[from..(i + 1)];
                from = i + 1;
            }
        }

        yield return word[from..];
    }

    private static IEnumerable<string> Pieces(string item, int most)
    {
        if (item.Length <= most)
        {
            return [item];
        }

        List<string> words = Words(item);
        return words.Count > 1 ? Join(words, " ", most) : Broken(item, most);
    }

    private static IEnumerable<string> Broken(string word, int most)
    {
        StringBuilder piece = new();
        foreach (string part in Parts(word).SelectMany(part => part.Length <= most ? [part] : Runes(part)))
        {
            if (piece.Length > 0 && piece.Length + part.Length > most)
            {
                yield return piece.ToString();
                piece.Clear();
            }

            piece.Append(part);
        }

        yield return piece.ToString();
    }

    private static IEnumerable<string> Runes(string text) => text.EnumerateRunes().Select(rune => rune.ToString());
}
