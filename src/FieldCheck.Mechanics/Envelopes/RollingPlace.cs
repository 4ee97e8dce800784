namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Where a rolling load stands.</summary>
/// <param name="Rolling">Index of the rolling load in <see cref="EnvelopeProblem.Rolling"/>.</param>
/// <param name="Position">Place of its first axle [m from the left end of the beam]; may be off the beam.</param>
/// <param name="IsReversed">
/// False: the other axles stand to the right of the first, at its place plus their offset; true: to the left, at its
/// place minus their offset.
/// </param>
public sealed record RollingPlace(int Rolling, double Position, bool IsReversed);
