namespace FieldCheck.Mechanics.Model;

/// <summary>Stresses that a material may be held against; null where one is not given.</summary>
/// <param name="Bending">At the edge, in bending [N/m²]; greater than zero.</param>
/// <param name="Shear">The greatest in shear [N/m²]; greater than zero.</param>
/// <param name="Bearing">Of a support on it, across the stick [N/m²]; greater than zero.</param>
public sealed record Strengths(double? Bending, double? Shear, double? Bearing);
