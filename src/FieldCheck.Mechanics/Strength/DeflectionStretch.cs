using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;

namespace FieldCheck.Mechanics.Strength;

/// <summary>A bay, measured from the chord between its supports, or an overhang, measured from the level of its support.</summary>
/// <param name="Index">As <see cref="SectionCheck.Bay"/>: -1 and the number of bays are the overhangs.</param>
/// <param name="From">Its left end [m from the left end of the beam].</param>
/// <param name="To">Its right end [m from the left end of the beam].</param>
/// <param name="IsHeldLeft">Whether a support holds its left end.</param>
/// <param name="IsHeldRight">Whether a support holds its right end.</param>
internal readonly record struct DeflectionStretch(int Index, double From, double To, bool IsHeldLeft, bool IsHeldRight)
{
    internal double Length => To - From;

    internal bool IsOverhang => !IsHeldLeft || !IsHeldRight;

    /// <summary>The overhangs and bays of a beam, left to right.</summary>
    internal static ImmutableArray<DeflectionStretch> Of(Bays bays) =>
    [
        .. bays.LeftOverhang is Bay left
            ? [new DeflectionStretch(-1, left.From, left.To, false, true)]
            : Array.Empty<DeflectionStretch>(),
        .. bays.Between.Select((bay, i) => new DeflectionStretch(i, bay.From, bay.To, true, true)),
        .. bays.RightOverhang is Bay right
            ? [new DeflectionStretch(bays.Between.Length, right.From, right.To, true, false)]
            : Array.Empty<DeflectionStretch>(),
    ];

    /// <summary>The level that it is measured from, of the deflections at its two ends.</summary>
    internal double Level(double position, double atFrom, double atTo) =>
        !IsHeldLeft ? atTo
        : !IsHeldRight ? atFrom
        : atFrom + (atTo - atFrom) * (position - From) / Length;
}
