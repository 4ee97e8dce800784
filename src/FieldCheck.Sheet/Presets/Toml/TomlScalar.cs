using System.Globalization;
using FieldCheck.Sheet.Document;
using Tomlyn.Syntax;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Makes cells of strings, numbers, truth values and dates.</summary>
/// <remarks>
/// A cell keeps the text that was written, so a number is never rounded. Only what no person means by the way a number
/// is written goes: grouping by <c>_</c>, and hexadecimal, octal and binary digits.
/// </remarks>
internal static class TomlScalar
{
    internal static TomlCell Of(ValueSyntax syntax, string text, KeyPath path)
    {
        TomlSpan span = TomlSpan.Of(syntax);
        return syntax is StringValueSyntax quoted
            ? OfString(quoted, span, text, path)
            : OfBare(syntax, span, span.In(text), path);
    }

    private static TomlCell OfString(StringValueSyntax quoted, TomlSpan span, string text, KeyPath path)
    {
        bool isDirect = quoted.Token!.TokenKind switch
        {
            TokenKind.StringLiteral => true,
            TokenKind.String => !text.AsSpan(span.Start, span.End - span.Start).Contains('\\'),
            _ => false,
        };
        bool isLong = quoted.Token.TokenKind is TokenKind.StringMulti or TokenKind.StringLiteralMulti;
        string said = isLong ? quoted.Value!.Replace("\r\n", "\n", StringComparison.Ordinal) : quoted.Value!;
        return new TomlCell(span, path, said, false, isDirect ? 1 : null);
    }

    private static TomlCell OfBare(ValueSyntax syntax, TomlSpan span, string written, KeyPath path)
    {
        bool isRadix = syntax is IntegerValueSyntax && written.Length > 1 && char.IsAsciiLetter(written[1]);
        string said = isRadix
            ? ((IntegerValueSyntax)syntax).Value.ToString(CultureInfo.InvariantCulture)
            : written.Replace("_", "", StringComparison.Ordinal);
        return new TomlCell(span, path, said, true, said == written ? 0 : null);
    }
}
