namespace FieldCheck.Mechanics.Strength;

/// <summary>Section moduli about the axis of bending.</summary>
/// <param name="Plastic">Plastic [m³].</param>
/// <param name="Elastic">Elastic, of the farther edge [m³].</param>
internal readonly record struct Moduli(double Plastic, double Elastic);
