using System.Globalization;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Painting;

/// <summary>The part of a line being typed that is seen: always that with the caret.</summary>
internal static class CaretWindow
{
    /// <summary>What is seen, and in which column of it the caret stands.</summary>
    /// <param name="text">The text.</param>
    /// <param name="caret">The caret's index in the text.</param>
    /// <param name="width">The columns that there are.</param>
    internal static (string Seen, int Column) Of(string text, int caret, int width)
    {
        string before = TextSafety.ForTerminal(text[..caret]);
        text = before + TextSafety.ForTerminal(text[caret..]);
        caret = before.Length;
        int start = 0;
        int[] starts = StringInfo.ParseCombiningCharacters(text);
        foreach (int next in starts.Where(next => next <= caret))
        {
            if (TextColumns.Of(text[start..caret]) < Math.Max(width, 1))
            {
                break;
            }

            start = next;
        }

        // After the last character the caret needs a column of its own.
        if (caret == text.Length && TextColumns.Of(text[start..caret]) >= Math.Max(width, 1))
        {
            start = caret;
        }

        return (TextColumns.Cut(text[start..], width), TextColumns.Of(text[start..caret]));
    }
}
