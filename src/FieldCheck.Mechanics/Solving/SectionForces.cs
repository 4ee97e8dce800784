namespace FieldCheck.Mechanics.Solving;

/// <summary>Internal forces at a section.</summary>
/// <param name="Axial">N [N], tension.</param>
/// <param name="Shear">V [N], the upward forces to the left.</param>
/// <param name="Moment">M [N·m], sagging.</param>
internal readonly record struct SectionForces(DoubleDouble Axial, DoubleDouble Shear, DoubleDouble Moment);
