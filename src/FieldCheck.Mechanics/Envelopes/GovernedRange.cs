namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The algebraic greatest and least of one figure over all situations.</summary>
/// <param name="Max">The greatest.</param>
/// <param name="Min">The least.</param>
public sealed record GovernedRange(Governed Max, Governed Min);
