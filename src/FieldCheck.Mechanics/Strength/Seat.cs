namespace FieldCheck.Mechanics.Strength;

/// <summary>What stands between the beam and what carries it at one support; null where it is not given.</summary>
/// <param name="Length">Length of the bearing along the beam [m]; greater than zero.</param>
/// <param name="Allowable">Allowable stress of what the beam bears on [N/m²], for service combinations; greater than zero.</param>
/// <param name="PadArea">Area of the pad below [m²]; greater than zero.</param>
/// <param name="AllowablePressure">Allowable pressure under the pad [N/m²], for service combinations; greater than zero.</param>
public sealed record Seat(double? Length, double? Allowable, double? PadArea, double? AllowablePressure);
