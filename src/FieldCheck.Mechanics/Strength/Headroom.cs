using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Strength;

/// <summary>How far a load may grow.</summary>
/// <param name="Most">
/// The greatest that still holds: a factor on loads that stand [–], or a force [N]; null: there is no greatest, or none
/// holds.
/// </param>
/// <param name="End">What ends it.</param>
/// <param name="First">The check that is over first beyond it, or that is then not judged; null where none is.</param>
public sealed record Headroom(double? Most, HeadroomEnd End, SectionCheck? First)
{
    /// <summary>The least that holds [N, m or –], where less does not hold either; null: every less does, or none was tried.</summary>
    public double? Least { get; init; }

    /// <summary>
    /// Where none of the sizes tried holds: the one that is used up least [N, m or –], by <see cref="First"/>; null: none is judged.
    /// </summary>
    public double? Nearest { get; init; }

    /// <summary>Index of the support that would have to hold the beam down beyond it; null where that does not end it.</summary>
    public int? Support { get; init; }

    /// <summary>The supports that only push and let go before it is reached, though they carry at the size that stands.</summary>
    public ImmutableArray<SupportLetGo> LetGo { get; init; } = [];
}
