namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Between what a quantity lies at one place over all situations; at a jump, over both sides.</summary>
/// <param name="Max">The greatest, in the quantity's own SI unit [N, N·m, rad or m].</param>
/// <param name="Min">The least, in the same unit [N, N·m, rad or m].</param>
public readonly record struct EnvelopeBand(double Max, double Min);
