namespace FieldCheck.Mechanics.Strength;

/// <summary>A limit on the deflection under one case alone, with the factor 1.</summary>
/// <param name="Case">Index of the case in the model.</param>
/// <param name="Ratio">Length over deflection [–]; greater than zero.</param>
public sealed record CaseDeflectionLimit(int Case, double Ratio);
