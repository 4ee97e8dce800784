using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Strength;

/// <summary>How far the tables of the rules go for a factor on a strength of timber.</summary>
/// <param name="Limit">The greatest that they have; of a factor that divides, the least [–].</param>
/// <param name="Source">Which table or clause.</param>
/// <param name="IsLeast">True: a factor that divides.</param>
internal sealed record FactorBounds(double Limit, string Source, bool IsLeast = false)
{
    /// <summary>The bounds of a factor; null: none, as of a yes or no, or of one that is worked out.</summary>
    /// <remarks>C_D, k_mod and gamma_M as in the shipped tables of factors; the others from memory.</remarks>
    /// <param name="kind">Which factor.</param>
    /// <param name="isGlulam">True: of glued laminated timber.</param>
    internal static FactorBounds? Of(FactorKind kind, bool isGlulam) => kind switch
    {
        FactorKind.Duration => new(2, "NDS Table 2.3.2"),
        FactorKind.Temperature => new(1, "NDS Table 2.3.3"),
        FactorKind.Size => new(1.5, "NDS Supplement Table 4A"),
        FactorKind.FlatUse => new(1.2, "NDS Supplement Table 4A"),
        FactorKind.Incising => new(1, "NDS Table 4.3.8"),
        FactorKind.Repetitive => new(1.15, "NDS 4.3.9"),
        FactorKind.Modification => new(1.1, "EN 1995-1-1 Table 3.1"),
        FactorKind.PartialFactor => new(1, "EN 1995-1-1 Table 2.3", IsLeast: true),
        FactorKind.Depth => isGlulam ? new(1.1, "EN 1995-1-1 3.3") : new(1.3, "EN 1995-1-1 3.2"),
        FactorKind.System => new(1.2, "EN 1995-1-1 6.6"),
        FactorKind.Cracks => new(1, "EN 1995-1-1 6.1.7"),
        FactorKind.CrossGrain => new(1.75, "EN 1995-1-1 6.1.5"),
        _ => null,
    };

    /// <summary>True: a factor of this value lets more than the tables do.</summary>
    /// <param name="value">The factor [–].</param>
    internal bool IsBeyond(double value) => IsLeast ? value < Limit * (1 - 1e-9) : value > Limit * (1 + 1e-9);
}
