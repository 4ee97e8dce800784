namespace FieldCheck.Reporting.Tables;

/// <summary>Units written out, for reading aloud.</summary>
internal static class SpokenUnits
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
        ["psf"] = "pounds per square foot",
        ["psi"] = "pounds per square inch",
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
}
