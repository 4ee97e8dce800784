using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Writes the text of a cell as a value of TOML.</summary>
internal static partial class TomlLiteral
{
    private const string LongMarks = "\"\"\"";

    /// <summary>A value on one line: bare where the cell asks for it and the text allows it, else a string.</summary>
    internal static string Of(string text, Wanted wanted)
    {
        if (IsBare(text, wanted))
        {
            return text;
        }

        bool isPlainer = text.AsSpan().ContainsAny('"', '\\');
        return isPlainer && MayBeLiteral(text) ? $"'{text}'" : TomlText.Quoted(text);
    }

    /// <summary>A value that may take several lines: a text with line breaks keeps them; the lines end in a line feed.</summary>
    internal static string OfLines(string text, Wanted wanted)
    {
        if (wanted is not Wanted.FreeText || !text.Contains('\n') || !text.EnumerateRunes().All(MayStandInLines))
        {
            return Of(text, wanted);
        }

        string lines = text
            .Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace(LongMarks, "\"\"\\\"", StringComparison.Ordinal);
        string end = lines.EndsWith('"') ? string.Concat(lines.AsSpan(0, lines.Length - 1), "\\\"") : lines;
        return $"{LongMarks}\n{end}{LongMarks}";
    }

    private static bool IsBare(string text, Wanted wanted) => wanted switch
    {
        Wanted.Truth => text is "true" or "false",
        Wanted.Whole => Integer().IsMatch(text),
        Wanted.BareNumber => Integer().IsMatch(text) || (Decimal().IsMatch(text)
            && double.IsFinite(double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture))),
        _ => false,
    };

    private static bool MayBeLiteral(string text) =>
        text.EnumerateRunes().All(rune => rune.Value is not '\'' && rune != Rune.ReplacementChar && !TomlText.IsControl(rune));

    private static bool MayStandInLines(Rune rune) =>
        rune.Value == '\n' || (rune != Rune.ReplacementChar && !TomlText.IsControl(rune));

    // At most 18 digits: an integer of TOML has 64 bits.
    [GeneratedRegex(@"^[+-]?(0|[1-9][0-9]{0,17})\z", RegexOptions.CultureInvariant)]
    private static partial Regex Integer();

    [GeneratedRegex(@"^[+-]?(0|[1-9][0-9]*)(\.[0-9]+([eE][+-]?[0-9]+)?|[eE][+-]?[0-9]+)\z", RegexOptions.CultureInvariant)]
    private static partial Regex Decimal();
}
