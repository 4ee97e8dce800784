namespace FieldCheck.Mechanics.HandMethods;

/// <summary>A reaction found elsewhere, to be put to the proof.</summary>
/// <param name="Horizontal">Force along the beam [N], positive right.</param>
/// <param name="Vertical">Force across the beam [N], positive up.</param>
/// <param name="Couple">Couple [N·m], positive counter-clockwise.</param>
public readonly record struct GivenReaction(double Horizontal, double Vertical, double Couple);
