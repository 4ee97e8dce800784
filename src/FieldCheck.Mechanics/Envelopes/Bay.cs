namespace FieldCheck.Mechanics.Envelopes;

/// <summary>A stretch between neighbouring supports that hold across, or from a free end to the nearest of them.</summary>
/// <param name="From">Its left end [m from the left end of the beam].</param>
/// <param name="To">Its right end [m from the left end of the beam].</param>
public readonly record struct Bay(double From, double To);
