using System.Collections.Frozen;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Reading;

/// <summary>What to say to a unit that is not in the table.</summary>
internal static class UnknownUnit
{
    private static readonly FrozenDictionary<string, string[]> Meant = new Dictionary<string, string[]>
    {
        ["feet"] = ["ft"],
        ["foot"] = ["ft"],
        ["inch"] = ["in"],
        ["inches"] = ["in"],
        ["meter"] = ["m"],
        ["meters"] = ["m"],
        ["metre"] = ["m"],
        ["metres"] = ["m"],
        ["pound"] = ["lbf"],
        ["pounds"] = ["lbf"],
        ["lbs"] = ["lb"],
        ["#"] = ["lb"],
        ["k"] = ["kip", "kN"],
        ["kips"] = ["kip"],
        ["tonne"] = ["t"],
        ["tonnes"] = ["t"],
        ["°"] = ["deg"],
        ["degree"] = ["deg"],
        ["degrees"] = ["deg"],
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    // Units of everyday speech that the table leaves out: near spellings would be of quite another size.
    private static readonly FrozenDictionary<string, (string Unit, double Factor)> Elsewhere = new Dictionary<string, (string, double)>
    {
        ["kg/m2"] = ("kN/m2", 0.00980665),
        ["kgf/m2"] = ("kN/m2", 0.00980665),
        ["t/m2"] = ("kN/m2", 9.80665),
        ["kg/cm2"] = ("kPa", 98.0665),
        ["bar"] = ("kPa", 100),
        ["t/m"] = ("kg/m", 1000),
        ["kg/cm"] = ("kg/m", 100),
        ["pli"] = ("plf", 12),
        ["in*lb"] = ("lb-ft", 1.0 / 12),
        ["lb*in"] = ("lb-ft", 1.0 / 12),
        ["in*lbf"] = ("lbf-ft", 1.0 / 12),
        ["lbf*in"] = ("lbf-ft", 1.0 / 12),
        ["kg*m"] = ("N*m", 9.80665),
        ["kgf*m"] = ("N*m", 9.80665),
        ["t*m"] = ("kN*m", 9.80665),
        ["MN*m"] = ("kN*m", 1000),
        ["MNm"] = ("kN*m", 1000),
        ["daN"] = ("N", 10),
        ["yd"] = ("ft", 3),
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenSet<string> Tons =
        FrozenSet.Create(StringComparer.OrdinalIgnoreCase, "ton", "tons", "tonf");

    internal static string Message(string run, double number, ReadOnlySpan<QuantityKind> wanted)
    {
        if (Tons.Contains(run))
        {
            return ReadingMessages.Ton(number, run);
        }

        if (Elsewhere.TryGetValue(UnitGrammar.Plain(run), out (string Unit, double Factor) other))
        {
            return ReadingMessages.UnitElsewhere(number, run, number * other.Factor, other.Unit);
        }

        IReadOnlyList<string> near = Meant.TryGetValue(run, out string[]? meant) ? meant : Near(run, wanted);
        return near.Count > 0
            ? ReadingMessages.UnitMisspelt(run, near)
            : ReadingMessages.UnitUnknown(run, wanted);
    }

    private static IReadOnlyList<string> Near(string run, ReadOnlySpan<QuantityKind> wanted)
    {
        HashSet<Dimension> fitting = [];
        foreach (QuantityKind kind in wanted)
        {
            fitting.Add(Dimension.Of(kind));
        }

        string[] known = [.. UnitTable.All
            .OrderBy(unit => fitting.Contains(unit.Dimension) ? 0 : 1)
            .ThenBy(unit => unit.Spelling, StringComparer.Ordinal)
            .Select(unit => unit.Spelling)];

        // The same letters otherwise joined, "m-kN" or "Nm/rad", come before a letter more: that letter can be 1000.
        string[] rejoined = [.. known.Where(unit => Letters(unit) == Letters(run)).Take(NearSpelling.MostOffered)];
        IReadOnlyList<string> near = rejoined.Length > 0 ? rejoined : NearSpelling.Of(run, known);
        string[] fit = [.. near.Where(unit => fitting.Contains(UnitTable.Of(unit).Dimension))];
        return fit.Length > 0 ? fit : near;
    }

    private static string Letters(string unit) =>
        string.Concat(UnitGrammar.Plain(unit).ToUpperInvariant().Where(char.IsLetterOrDigit).Order());
}
