namespace FieldCheck.Mechanics.Checks;

/// <summary>The bands of the internal forces and the movement on one side of one place.</summary>
/// <param name="Axial">N [N], positive in tension.</param>
/// <param name="Shear">V [N]: the sum of the upward forces to the left.</param>
/// <param name="Moment">M [N·m], positive sagging.</param>
/// <param name="Deflection">Movement across the beam [m], positive down.</param>
public sealed record SectionBand(Band Axial, Band Shear, Band Moment, Band Deflection);
