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
        ["t/m"] = ["kg/m"],
        ["°"] = ["deg"],
        ["degree"] = ["deg"],
        ["degrees"] = ["deg"],
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenSet<string> Tons =
        FrozenSet.Create(StringComparer.OrdinalIgnoreCase, "ton", "tons", "tonf");

    internal static string Message(string run, double number, ReadOnlySpan<QuantityKind> wanted)
    {
        if (Tons.Contains(run))
        {
            return ReadingMessages.Ton(number, run);
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
