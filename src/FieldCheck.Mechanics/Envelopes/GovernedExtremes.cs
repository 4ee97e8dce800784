namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The algebraic greatest and least of one quantity along the beam over all situations.</summary>
/// <param name="Max">The greatest.</param>
/// <param name="Min">The least.</param>
public sealed record GovernedExtremes(GovernedExtreme Max, GovernedExtreme Min);
