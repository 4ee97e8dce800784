using System.Globalization;
using FieldCheck.Screen.Keyboard;

namespace FieldCheck.Tests.Screen;

/// <summary>
/// Keys written as text: names (Enter, Shift+Tab, ^Z, Space), and anything else typed letter by letter.
/// </summary>
internal static class Keys
{
    private static readonly Dictionary<string, KeyStroke> Named = Enum.GetValues<KeyName>()
        .Select(name => (KeyStroke)new KeyStroke.Named(name))
        .Append(new KeyStroke.Text(" "))
        .ToDictionary(KeyStrokeNames.Of);

    /// <summary>
    /// Reads keys; what stands in double quotes is typed as it is, what stands in ~ is pasted, \n a line end in it.
    /// </summary>
    internal static IReadOnlyList<KeyStroke> Read(string text)
    {
        List<KeyStroke> keys = [];
        for (int at = 0; at < text.Length;)
        {
            char first = text[at];
            if (char.IsWhiteSpace(first))
            {
                at++;
                continue;
            }

            int end = first is '"' or '~' ? text.IndexOf(first, at + 1) : at;
            while (first is not ('"' or '~') && end < text.Length && !char.IsWhiteSpace(text[end]))
            {
                end++;
            }

            string token = first is '"' or '~' ? text[(at + 1)..end] : text[at..end];
            keys.AddRange(Token(first, token));
            at = end + (first is '"' or '~' ? 1 : 0);
        }

        return keys;
    }

    internal static IEnumerable<KeyStroke> Typed(string text)
    {
        TextElementEnumerator graphemes = StringInfo.GetTextElementEnumerator(text);
        while (graphemes.MoveNext())
        {
            yield return new KeyStroke.Text(graphemes.GetTextElement());
        }
    }

    private static IEnumerable<KeyStroke> Token(char first, string token) => first switch
    {
        '"' => Typed(token),
        '~' => [new KeyStroke.Paste(token
            .Replace("\\n", "\n", StringComparison.Ordinal)
            .Replace("\\t", "\t", StringComparison.Ordinal))],
        _ when Named.TryGetValue(token, out KeyStroke? named) => [named],
        '^' when token.Length == 2 => [new KeyStroke.Control(token[1])],
        _ => Typed(token),
    };
}
