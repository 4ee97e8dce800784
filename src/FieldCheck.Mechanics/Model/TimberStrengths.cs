namespace FieldCheck.Mechanics.Model;

/// <summary>Strengths of timber as its grade gives them, before the factors of the rules they belong to.</summary>
/// <param name="Basis">Which rules they belong to; never held against others.</param>
/// <param name="Bending">In bending [N/m²]; greater than zero.</param>
/// <param name="Shear">In shear along the grain [N/m²]; greater than zero.</param>
/// <param name="Bearing">In compression across the grain [N/m²]; greater than zero.</param>
/// <param name="MinimumModulus">Modulus for lateral stability, Emin or E0.05 [N/m²]; greater than zero; null: not given.</param>
public sealed record TimberStrengths(
    TimberBasis Basis, double Bending, double Shear, double Bearing, double? MinimumModulus)
{
    /// <summary>In tension along the grain [N/m²]; greater than zero; null: not given.</summary>
    public double? Tension { get; init; }

    /// <summary>True: the size factor of dimension lumber goes with it (grades of the NDS Supplement, Table 4A).</summary>
    public bool TakesSizeFactor { get; init; }

    /// <summary>The pieces that they are for; null: any.</summary>
    public PieceSizes? Sizes { get; init; }

    /// <summary>True: of glued laminated timber, as the GL classes of EN 14080; false: of solid timber.</summary>
    public bool IsGlulam { get; init; }
}
