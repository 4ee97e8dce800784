using System.Text.RegularExpressions;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Says what is wrong with a line that is no TOML, in the words of someone who writes beam files by hand.</summary>
internal static partial class TomlSlip
{
    /// <summary>Said where a character of the text was lost.</summary>
    internal const string LostCharacter =
        "a character was lost here, and U+FFFD stands for it; write it anew, or as \\uFFFD in \"…\"";

    private const string AfterValue = "after a value only a comment may stand, behind a #";
    private const string Missing = "expected a value after =";
    private const string NotClosed = "the closing quotation mark is missing";
    private const string NotBracketed = "a list or table is not closed, or a comma is missing in it";
    private const string InchMark = "an inch mark inside \"…\" is written \\\", as \"12'-6 1/2\\\"\"";
    private const string FootMark = "a foot mark cannot stand inside '…'; write \"12'-6 1/2\\\"\"";

    /// <summary>What is wrong with a line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="complaint">What the parser says of it.</param>
    internal static string Say(string line, string complaint) => OfCharacters(complaint)
        ?? (Pair().Match(line) is { Success: true } pair ? OfValue(pair.Groups["value"].Value.TrimEnd(), complaint) : null)
        ?? OfLine(line.TrimStart(), complaint);

    /// <summary>True: a list or a table in braces is broken; it may have begun on a line before.</summary>
    internal static bool IsOpen(string complaint) => Says(complaint, "array") || Says(complaint, "inline");

    /// <summary>True: a text of several lines is not closed.</summary>
    internal static bool IsLongText(string complaint) => Says(complaint, "multi-line");

    /// <summary>True: the text ends where more was expected.</summary>
    internal static bool IsAtEnd(string complaint) => Says(complaint, "<eof>");

    private static string? OfCharacters(string complaint) => complaint switch
    {
        _ when IsLongText(complaint) => "the three closing quotation marks are missing",
        _ when Says(complaint, "surrogate") => LostCharacter,
        _ when Says(complaint, "control character") || Says(complaint, "[\\u") =>
            "a control character stands here; in \"…\" it is written as \\u and four digits",
        _ when Says(complaint, "\\r not followed") =>
            "a carriage return stands alone; a line ends in a line feed, with or without one before it",
        _ when Says(complaint, "escape") || Says(complaint, "Unicode") =>
            "no such escape; in \"…\" a backslash is written \\\\",
        _ => null,
    };

    private static string OfValue(string value, string complaint) => value switch
    {
        "" or ['#', ..] => Missing,
        ['“' or '”' or '„' or '‘' or '’', ..] => "this is no quotation mark for a file; write \"…\"",
        ['"', .. string rest] => !rest.Contains('"') ? NotClosed : Inch().IsMatch(rest) ? InchMark : AfterValue,
        ['\'', .. string rest] => !rest.Contains('\'') ? NotClosed : Foot().IsMatch(rest) ? FootMark : AfterValue,
        _ when HasComma(value) => "a number is written with a point, as 1.25, not with a comma",
        ['[' or '{', ..] => IsOpen(complaint) ? NotBracketed : AfterValue,
        _ when Truth().IsMatch(value) => "true and false are written small, without quotation marks",
        _ when Number().IsMatch(value) => "this number does not read; write 0.5, not .5, 5. or 05",
        _ when Figure().IsMatch(value) => "a value with its unit is written in quotation marks, as \"12 ft 6 in\"",
        _ => "a text is written in quotation marks, as \"roller\"",
    };

    private static string OfLine(string line, string complaint) => line switch
    {
        _ when IsOpen(complaint) => NotBracketed,
        ['[', ..] => "a table is headed by its name in [ ], a row by its name in [[ ]], alone on the line",
        ['=', ..] => "expected a key before =",
        ['/', '/', ..] => "a comment stands behind a #",
        _ => "expected a key and its value, as length = \"3 m\"",
    };

    // In two steps, so that no hostile line takes longer than its length.
    private static bool HasComma(string value) => Comma().IsMatch(value)
        || (value.IndexOf('{', StringComparison.Ordinal) is >= 0 and int brace && CommaInside().IsMatch(value, brace));

    private static bool Says(string complaint, string words) => complaint.Contains(words, StringComparison.Ordinal);

    [GeneratedRegex(@"^\s*[\w-]+(\s*\.\s*[\w-]+)*\s*=\s*(?<value>.*)", RegexOptions.CultureInvariant)]
    private static partial Regex Pair();

    [GeneratedRegex("[0-9]\".*\"", RegexOptions.CultureInvariant)]
    private static partial Regex Inch();

    [GeneratedRegex("[0-9]'.*'", RegexOptions.CultureInvariant)]
    private static partial Regex Foot();

    [GeneratedRegex(@"^[+-]?\d+,\d", RegexOptions.CultureInvariant)]
    private static partial Regex Comma();

    [GeneratedRegex(@"=\s*[+-]?\d+,\d", RegexOptions.CultureInvariant)]
    private static partial Regex CommaInside();

    [GeneratedRegex(@"^(true|false|yes|no|on|off)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Truth();

    [GeneratedRegex(@"^[+-]?(\d|\.\d)[\d._:eETZ+-]*\s*(#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Number();

    [GeneratedRegex(@"^[+-]?\.?\d", RegexOptions.CultureInvariant)]
    private static partial Regex Figure();
}
