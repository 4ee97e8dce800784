using System.Collections.Immutable;
using System.Text;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Sheet.Strength;

/// <summary>What the factors on strengths of timber are called in a beam file, and which rules take them.</summary>
public static class FactorNames
{
    private static readonly ImmutableArray<Entry> Nds =
    [
        new(FactorKind.Duration, "duration", "C_D"),
        new(FactorKind.WetService, "wet_service", "C_M"),
        new(FactorKind.Temperature, "temperature", "C_t"),
        new(FactorKind.Size, "size", "C_F"),
        new(FactorKind.FlatUse, "flat_use", "C_fu"),
        new(FactorKind.Incising, "incising", "C_i"),
        new(FactorKind.Repetitive, "repetitive", "C_r"),
    ];

    private static readonly ImmutableArray<Entry> En1995 =
    [
        new(FactorKind.Modification, "modification", "k_mod"),
        new(FactorKind.PartialFactor, "partial", "gamma_M"),
        new(FactorKind.Depth, "depth", "k_h"),
        new(FactorKind.System, "system", "k_sys"),
        new(FactorKind.Cracks, "cracks", "k_cr"),
        new(FactorKind.CrossGrain, "cross_grain", "k_c90"),
    ];

    private static readonly ImmutableArray<Entry> Every = [.. Nds, .. En1995];

    /// <summary>The name of each factor, in the order of the rules.</summary>
    public static ImmutableArray<string> All { get; } = [.. Every.Select(entry => entry.Name)];

    /// <summary>The name of a factor; null: it is worked out and cannot be given.</summary>
    /// <param name="kind">Which factor.</param>
    public static string? Of(FactorKind kind) => Every.FirstOrDefault(entry => entry.Kind == kind)?.Name;

    /// <summary>The factor of a name or of its sign, as "kmod" or "C_D"; capitals and spaces do not count.</summary>
    /// <param name="name">As typed.</param>
    /// <returns>Null: no factor is called so.</returns>
    public static FactorKind? Find(string name)
    {
        string plain = Plain(name);
        return Every.FirstOrDefault(entry => plain == Plain(entry.Name) || plain == Plain(entry.Symbol))?.Kind;
    }

    /// <summary>The factors that rules take where they are given.</summary>
    /// <param name="rules">The rules; all but those on timber take none.</param>
    public static ImmutableArray<FactorKind> TakenBy(StrengthRules rules) => rules switch
    {
        StrengthRules.Nds => [.. Nds.Select(entry => entry.Kind)],
        StrengthRules.En1995 => [.. En1995.Select(entry => entry.Kind)],
        _ => [],
    };

    private static string Plain(string name)
    {
        StringBuilder plain = new(name.Length);
        foreach (char letter in name)
        {
            if (letter is not (' ' or '_' or '-' or ','))
            {
                plain.Append(char.ToLowerInvariant(letter));
            }
        }

        return plain.ToString();
    }

    private sealed record Entry(FactorKind Kind, string Name, string Symbol);
}
