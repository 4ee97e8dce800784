namespace FieldCheck.Mechanics.Strength;

/// <summary>Where a support stands on the stick, for rules on bearing.</summary>
/// <param name="Position">Its place [m from the left end].</param>
/// <param name="ToEnd">From it to the nearer end of the beam [m].</param>
/// <param name="ShortestBay">The shortest bay beside it [m]; infinite where there is none.</param>
internal readonly record struct SeatPlace(double Position, double ToEnd, double ShortestBay);
