using System.Globalization;
using System.Text;

namespace FieldCheck.Fuzz;

/// <summary>
/// Any text as one line of letters, digits and signs of ASCII, which no editor and no checkout changes: "a\nb\u001b".
/// </summary>
/// <remarks>Half a surrogate pair too, which no encoding of a file holds.</remarks>
public static class QuotedText
{
    /// <summary>Quotes a text.</summary>
    /// <param name="text">Any text.</param>
    public static string Of(string text)
    {
        StringBuilder quoted = new("\"", text.Length + 2);
        foreach (char sign in text)
        {
            _ = sign switch
            {
                '\n' => quoted.Append("\\n"),
                '"' or '\\' => quoted.Append('\\').Append(sign),
                >= ' ' and <= '~' => quoted.Append(sign),
                _ => quoted.Append(CultureInfo.InvariantCulture, $"\\u{(int)sign:x4}"),
            };
        }

        return quoted.Append('"').ToString();
    }

    /// <summary>The text that was quoted.</summary>
    /// <param name="quoted">As <see cref="Of"/> writes it.</param>
    public static string Read(string quoted)
    {
        StringBuilder text = new(quoted.Length);
        for (int at = 1; at < quoted.Length - 1; at++)
        {
            if (quoted[at] != '\\')
            {
                text.Append(quoted[at]);
                continue;
            }

            at++;
            switch (quoted[at])
            {
                case 'n':
                    text.Append('\n');
                    break;
                case 'u':
                    text.Append((char)ushort.Parse(quoted.AsSpan(at + 1, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture));
                    at += 4;
                    break;
                default:
                    text.Append(quoted[at]);
                    break;
            }
        }

        return text.ToString();
    }
}
