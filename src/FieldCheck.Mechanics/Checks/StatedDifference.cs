using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Checks;

/// <summary>By how much stated figures differ from the computed ones, and where.</summary>
/// <param name="Each">Stated less computed for each figure [N or N·m].</param>
/// <param name="Vertical">
/// The vertical ones added up [N], positive: more is stated than acts; null where not all of them are stated.
/// </param>
/// <param name="Place">
/// Where a load of that size would balance the difference [m from the left end; may lie off the beam]; null where the
/// differences add up to nothing, or a vertical or a moment is not stated.
/// </param>
/// <param name="IsSplitOnly">True: all verticals are stated and add up to what acts, as they are rounded.</param>
public sealed record StatedDifference(
    ImmutableArray<double> Each, double? Vertical, double? Place, bool IsSplitOnly);
