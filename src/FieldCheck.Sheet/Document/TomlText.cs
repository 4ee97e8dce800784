using System.Globalization;
using System.Text;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace FieldCheck.Sheet.Document;

/// <summary>Keys and strings as TOML writes them.</summary>
internal static class TomlText
{
    /// <summary>A key, bare where it may be, else quoted.</summary>
    internal static string Key(string key) => key.Length > 0 && key.All(IsBareKeyCharacter) ? key : Quoted(key);

    internal static bool IsBareKeyCharacter(char character) =>
        char.IsAsciiLetterOrDigit(character) || character is '_' or '-';

    /// <summary>A basic string on one line. U+FFFD is escaped, because the parser takes it for damage where it stands bare.</summary>
    internal static string Quoted(string text)
    {
        StringBuilder quoted = new StringBuilder(text.Length + 2).Append('"');
        foreach (Rune rune in text.EnumerateRunes())
        {
            Append(quoted, rune);
        }

        return quoted.Append('"').ToString();
    }

    /// <summary>Where the basic string that starts at a place ends, or the end of the text where it is not closed.</summary>
    internal static int EndOfQuoted(string text, int start)
    {
        int at = start + 1;
        while (at < text.Length && text[at] != '"')
        {
            at += text[at] == '\\' ? 2 : 1;
        }

        return Math.Min(at + 1, text.Length);
    }

    /// <summary>What a basic string says, or null where it is not sound.</summary>
    internal static string? Unquoted(string quoted)
    {
        try
        {
            DocumentSyntax document = SyntaxParser.Parse("k=" + quoted, validate: false);
            return document.HasErrors ? null : (document.KeyValues.Single().Value as StringValueSyntax)?.Value;
        }
        catch (ArgumentOutOfRangeException)
        {
            // The parser's answer to half a surrogate pair.
            return null;
        }
    }

    /// <summary>True for what may not stand as it is in a string of TOML; a tab may.</summary>
    internal static bool IsControl(Rune rune) => rune.Value is (< 0x20 and not '\t') or 0x7F;

    private static void Append(StringBuilder quoted, Rune rune)
    {
        string? escaped = rune.Value switch
        {
            '"' => "\\\"",
            '\\' => "\\\\",
            '\n' => "\\n",
            '\r' => "\\r",
            '\t' => "\\t",
            _ => null,
        };
        if (escaped is not null)
        {
            quoted.Append(escaped);
        }
        else if (IsControl(rune) || rune == Rune.ReplacementChar)
        {
            quoted.Append(CultureInfo.InvariantCulture, $"\\u{rune.Value:X4}");
        }
        else
        {
            quoted.Append(rune.ToString());
        }
    }
}
