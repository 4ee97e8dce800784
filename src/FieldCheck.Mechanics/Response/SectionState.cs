namespace FieldCheck.Mechanics.Response;

/// <summary>Internal forces and movements on one side of one place.</summary>
/// <param name="Axial">N [N], positive in tension.</param>
/// <param name="Shear">V [N]: the sum of the upward forces to the left.</param>
/// <param name="Moment">M [N·m], positive sagging.</param>
/// <param name="Slope">Slope of the deflected line [rad], positive counter-clockwise.</param>
/// <param name="Deflection">Movement across the beam [m], positive down.</param>
public readonly record struct SectionState(double Axial, double Shear, double Moment, double Slope, double Deflection);
