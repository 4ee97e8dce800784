using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Where, within what was measured, a beam has no answer; bands are without it.</summary>
/// <param name="Offsets">
/// How far each input is off there, in its own unit [m, N/m, rad or –]; zero for those that need not be off for it.
/// </param>
/// <param name="Outcome">Why: it tips, can move or has no answer; null where no beam is left.</param>
public sealed record ToleranceGap(ImmutableArray<double> Offsets, BeamOutcome? Outcome);
