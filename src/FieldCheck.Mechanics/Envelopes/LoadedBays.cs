using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The bays and overhangs on which the loads of one case stand.</summary>
/// <param name="Bays">Indices in <see cref="Envelopes.Bays.Between"/>, increasing; may be empty.</param>
/// <param name="OnLeftOverhang">Whether they stand on the left overhang.</param>
/// <param name="OnRightOverhang">Whether they stand on the right overhang.</param>
public sealed record LoadedBays(ImmutableArray<int> Bays, bool OnLeftOverhang, bool OnRightOverhang)
{
    /// <summary>Whether the same bays are loaded: a list compares by what it is, not by what it holds.</summary>
    /// <param name="other">Other bays.</param>
    public bool Equals(LoadedBays? other) => other is not null
        && OnLeftOverhang == other.OnLeftOverhang
        && OnRightOverhang == other.OnRightOverhang
        && Bays.AsSpan().SequenceEqual(other.Bays.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() =>
        Bays.Aggregate(HashCode.Combine(OnLeftOverhang, OnRightOverhang), HashCode.Combine);
}
