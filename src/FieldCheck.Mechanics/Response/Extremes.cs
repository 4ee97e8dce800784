namespace FieldCheck.Mechanics.Response;

/// <summary>The algebraic greatest and least of one quantity along the beam.</summary>
/// <param name="Max">The greatest value and its leftmost place.</param>
/// <param name="Min">The least value and its leftmost place.</param>
public readonly record struct Extremes(Extreme Max, Extreme Min);
