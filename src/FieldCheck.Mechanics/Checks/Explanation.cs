using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Checks;

/// <summary>A slip that gives the stated figures, every one within what it was rounded by.</summary>
/// <param name="Slip">The slip.</param>
/// <param name="Predicted">What it gives for each figure [N or N·m].</param>
/// <param name="WorstResidual">The greatest of stated less predicted, over what is allowed [–]; at most 1.</param>
/// <param name="Cost">
/// 1 (own weight), 2 (one plain slip with everything), 3 (with one thing), 4 (two at once, or fitted).
/// </param>
public sealed record Explanation(Slip Slip, ImmutableArray<double> Predicted, double WorstResidual, int Cost)
{
    /// <summary>
    /// Indices of the other explanations that the figures cannot tell from this one: they give the same, or have the same
    /// load in another unit by size, place or length.
    /// </summary>
    public ImmutableArray<int> TiedWith { get; init; } = [];

    /// <summary>True: a number was fitted to the figures, so that it would explain many others as well.</summary>
    public bool IsFitted => Slip is Slip.SupportMoved or Slip.LoadMissing;
}
