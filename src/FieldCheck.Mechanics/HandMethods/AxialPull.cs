namespace FieldCheck.Mechanics.HandMethods;

/// <summary>A force along the beam that is known.</summary>
/// <param name="Force">The force, positive right.</param>
/// <param name="Place">Where it acts.</param>
/// <param name="At">The same [m].</param>
/// <param name="Actor">What it comes from.</param>
internal readonly record struct AxialPull(HandFormula Force, HandNumber Place, double At, HandActor Actor);
