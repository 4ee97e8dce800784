namespace FieldCheck.Mechanics.Envelopes;

/// <summary>A greatest or least value, and what makes it so.</summary>
/// <param name="Value">The value, in its own SI unit [N, N·m or m].</param>
/// <param name="Situation">A situation that gives it.</param>
public sealed record Governed(double Value, Situation Situation);
