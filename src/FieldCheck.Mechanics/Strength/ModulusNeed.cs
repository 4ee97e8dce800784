namespace FieldCheck.Mechanics.Strength;

/// <summary>A section modulus that a check needs.</summary>
/// <param name="Kind">The kind of the check: bending, or bending with a force along.</param>
/// <param name="Modulus">The modulus [m³]; infinite where none is enough.</param>
/// <param name="IsPlastic">True: it is the plastic one.</param>
public sealed record ModulusNeed(CheckKind Kind, double Modulus, bool IsPlastic);
