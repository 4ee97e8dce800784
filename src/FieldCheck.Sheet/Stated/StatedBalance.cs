using FieldCheck.Mechanics.Checks;

namespace FieldCheck.Sheet.Stated;

/// <summary>Whether the figures stated for one combination or case carry its loads, all together.</summary>
/// <param name="Against">The combination or case.</param>
/// <param name="Source">Where they are stated; null where that is not told apart.</param>
/// <param name="About">Label of the support that moments are taken about.</param>
/// <param name="Balance">The sums.</param>
/// <param name="IsWithinBands">
/// Whether the plus or minus of the beam explains every figure that does not agree, and there is such a figure.
/// </param>
public sealed record StatedBalance(
    StatedAgainst Against, string? Source, string About, ReactionBalance Balance, bool IsWithinBands);
