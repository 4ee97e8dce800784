namespace FieldCheck.Mechanics.Response;

/// <summary>The greatest or least value of one quantity along the beam, and where it stands.</summary>
/// <param name="Value">The value, in the quantity's own SI unit [N, N·m, rad or m].</param>
/// <param name="Position">The leftmost place where it stands [m from the left end].</param>
public readonly record struct Extreme(double Value, double Position);
