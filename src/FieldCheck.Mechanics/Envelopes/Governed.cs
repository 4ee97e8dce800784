namespace FieldCheck.Mechanics.Envelopes;

/// <summary>A greatest or least value, and what makes it so.</summary>
/// <param name="Value">The value [N, or N·m for a moment].</param>
/// <param name="Situation">A situation that gives it.</param>
public sealed record Governed(double Value, Situation Situation);
