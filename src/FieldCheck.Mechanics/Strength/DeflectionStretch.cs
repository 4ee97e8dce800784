using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>
/// A bay, measured from the chord between its supports, or an overhang, measured from the level of its support; or several of
/// them as one, past supports that give way or let go.
/// </summary>
/// <param name="Index">As <see cref="SectionCheck.Bay"/>: -1 and the number of bays are the overhangs.</param>
/// <param name="Last">The last of them; the same where it is one.</param>
/// <param name="From">Its left end [m from the left end of the beam].</param>
/// <param name="To">Its right end [m from the left end of the beam].</param>
/// <param name="IsHeldLeft">Whether a support holds its left end.</param>
/// <param name="IsHeldRight">Whether a support holds its right end.</param>
internal readonly record struct DeflectionStretch(
    int Index, int Last, double From, double To, bool IsHeldLeft, bool IsHeldRight)
{
    internal double Length => To - From;

    internal bool IsOverhang => !IsHeldLeft || !IsHeldRight;

    /// <summary>The overhangs and bays of a beam, left to right.</summary>
    internal static ImmutableArray<DeflectionStretch> Of(Bays bays) =>
    [
        .. bays.LeftOverhang is Bay left
            ? [new DeflectionStretch(-1, -1, left.From, left.To, false, true)]
            : Array.Empty<DeflectionStretch>(),
        .. bays.Between.Select((bay, i) => new DeflectionStretch(i, i, bay.From, bay.To, true, true)),
        .. bays.RightOverhang is Bay right
            ? [new DeflectionStretch(bays.Between.Length, bays.Between.Length, right.From, right.To, true, false)]
            : Array.Empty<DeflectionStretch>(),
    ];

    /// <summary>
    /// Bays as one past supports that give way or let go, left to right: a beam that hangs through there is not held by them.
    /// </summary>
    /// <param name="model">The beam.</param>
    /// <param name="reactions">Its supports' greatest and least reactions.</param>
    internal static ImmutableArray<DeflectionStretch> AsOne(BeamModel model, ImmutableArray<ReactionEnvelope> reactions)
    {
        (double At, bool LetsGo, bool IsFirm)[] held =
        [
            .. from pair in model.Supports.Zip(reactions)
               where pair.First.Across is not Restraint.None
               let letsGo = LetsGo(pair.First, pair.Second.Vertical)
               select (pair.First.Position, letsGo, !letsGo && pair.First.Across is not Restraint.Spring),
        ];
        int first = Array.FindIndex(held, one => !one.LetsGo);
        if (first < 0)
        {
            return [];
        }

        int last = Array.FindLastIndex(held, one => !one.LetsGo);
        int[] ends = [.. Enumerable.Range(0, held.Length).Where(i => i == first || i == last || held[i].IsFirm)];
        return
        [
            .. first > 0 ? [new DeflectionStretch(-1, first - 1, 0, held[first].At, false, true)] : Array.Empty<DeflectionStretch>(),
            .. ends.Zip(ends.Skip(1), (from, to) => new DeflectionStretch(from, to - 1, held[from].At, held[to].At, true, true))
                .Where(one => one.Last > one.Index),
            .. last < held.Length - 1
                ? [new DeflectionStretch(last, held.Length - 1, held[last].At, model.Length, true, false)]
                : Array.Empty<DeflectionStretch>(),
        ];
    }

    private static bool LetsGo(Support support, GovernedRange vertical) => support.Action switch
    {
        SupportAction.PushesOnly => vertical.Min.Value <= 0,
        SupportAction.HoldsDownOnly => vertical.Max.Value >= 0,
        _ => false,
    };

    /// <summary>The level that it is measured from, of the deflections at its two ends.</summary>
    internal double Level(double position, double atFrom, double atTo) =>
        !IsHeldLeft ? atTo
        : !IsHeldRight ? atFrom
        : atFrom + (atTo - atFrom) * (position - From) / Length;
}
