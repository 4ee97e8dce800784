using System.Text.RegularExpressions;

namespace FieldCheck.Reporting.Tables;

/// <summary>Units written out, for reading aloud.</summary>
internal static partial class SpokenUnits
{
    private static readonly Dictionary<string, string> Spoken = new()
    {
        ["m"] = "metres",
        ["mm"] = "millimetres",
        ["ft"] = "feet",
        ["in"] = "inches",
        ["N"] = "newtons",
        ["kN"] = "kilonewtons",
        ["lbf"] = "pounds",
        ["kip"] = "kips",
        ["kN/m"] = "kilonewtons per metre",
        ["N/m"] = "newtons per metre",
        ["lbf/ft"] = "pounds per foot",
        ["plf"] = "pounds per foot",
        ["kip/ft"] = "kips per foot",
        ["klf"] = "kips per foot",
        ["kNm"] = "kilonewton metres",
        ["kip-ft"] = "kip feet",
        ["kPa"] = "kilopascals",
        ["MPa"] = "megapascals",
        ["GPa"] = "gigapascals",
        ["psf"] = "pounds per square foot",
        ["psi"] = "pounds per square inch",
        ["ksi"] = "kips per square inch",
        ["cm2"] = "square centimetres",
        ["cm3"] = "cubic centimetres",
        ["cm4"] = "centimetres to the fourth",
        ["in2"] = "square inches",
        ["in3"] = "cubic inches",
        ["in4"] = "inches to the fourth",
        ["kg"] = "kilograms",
        ["deg"] = "degrees",
    };

    internal static bool IsUnit(string word) => Spoken.ContainsKey(word);

    /// <summary>A value with its unit, as "9.90 kilonewtons"; as it is where the unit is not known.</summary>
    internal static string In(string text)
    {
        int blank = text.LastIndexOf(' ');
        return blank >= 0 && Spoken.TryGetValue(text[(blank + 1)..], out string? words)
            ? $"{text[..blank]} {words}"
            : text;
    }

    /// <summary>A text in which every number with a unit behind it has that unit written out.</summary>
    internal static string Throughout(string text) =>
        AfterNumber().Replace(text, match => Spoken.GetValueOrDefault(match.Value, match.Value));

    // "in" is a word as well: it is a unit where the text stops behind it, or a direction follows.
    [GeneratedRegex(
        @"(?<=[0-9] )(?!in (?!up\b|down\b|from\b|to\b|wide\b|long\b))[A-Za-z][A-Za-z0-9/-]*(?![A-Za-z0-9/-])",
        RegexOptions.CultureInvariant)]
    private static partial Regex AfterNumber();
}
