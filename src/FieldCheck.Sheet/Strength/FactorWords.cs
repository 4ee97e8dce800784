using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Strength;

/// <summary>What a factor on a strength of timber is called.</summary>
/// <param name="Symbol">Its sign in the rules, as "C_D".</param>
/// <param name="Words">What it is for, as "load duration".</param>
public readonly record struct FactorWords(string Symbol, string Words)
{
    /// <summary>The sign and the words of a factor; plain ASCII.</summary>
    /// <param name="kind">Which factor.</param>
    public static FactorWords Of(FactorKind kind) => kind switch
    {
        FactorKind.Duration => new("C_D", "load duration"),
        FactorKind.WetService => new("C_M", "wet service"),
        FactorKind.Temperature => new("C_t", "temperature"),
        FactorKind.BeamStability => new("C_L", "beam stability"),
        FactorKind.Size => new("C_F", "size"),
        FactorKind.FlatUse => new("C_fu", "flat use"),
        FactorKind.Incising => new("C_i", "incising"),
        FactorKind.Repetitive => new("C_r", "repetitive member"),
        FactorKind.BearingArea => new("C_b", "bearing area"),
        FactorKind.Modification => new("k_mod", "load duration and moisture"),
        FactorKind.PartialFactor => new("gamma_M", "partial factor of the material"),
        FactorKind.Depth => new("k_h", "depth"),
        FactorKind.System => new("k_sys", "load sharing"),
        FactorKind.LateralStability => new("k_crit", "lateral stability"),
        FactorKind.Cracks => new("k_cr", "cracks"),
        FactorKind.CrossGrain => new("k_c90", "compression across the grain"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No words for it."),
    };
}
