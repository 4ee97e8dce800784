namespace FieldCheck.Mechanics.Strength;

/// <summary>By what a nominal strength of AISC 360 is divided or multiplied.</summary>
/// <param name="Omega">Safety factor of allowable strength design [–].</param>
/// <param name="Phi">Resistance factor of load and resistance factor design [–].</param>
internal sealed record AiscFactors(double Omega, double Phi)
{
    /// <summary>Of most limit states.</summary>
    internal static AiscFactors Usual { get; } = new(1.67, 0.90);

    /// <summary>Of shear of stocky rolled webs and of yielding over a support.</summary>
    internal static AiscFactors Surest { get; } = new(1.50, 1.00);

    /// <summary>Of a web that cripples.</summary>
    internal static AiscFactors Crippling { get; } = new(2.00, 0.75);
}
