namespace FieldCheck.Mechanics.Envelopes;

/// <summary>A greatest or least value along the beam over all situations, where it stands, and what makes it so.</summary>
/// <param name="Value">The value, in the quantity's own SI unit [N, N·m, rad or m].</param>
/// <param name="Position">The leftmost place where it stands [m from the left end]; at a jump, the jump's place.</param>
/// <param name="Situation">A situation that gives it there.</param>
public sealed record GovernedExtreme(double Value, double Position, Situation Situation);
