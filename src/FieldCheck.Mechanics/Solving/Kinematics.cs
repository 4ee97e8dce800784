using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Decides from its supports and hinges alone, not from stiffness, whether a beam can move and how.</summary>
/// <remarks>
/// The parts between hinges are taken as rigid; unknown are one shift along the beam and the rises of the ends and
/// hinges. A sweep from left to right keeps, per part, what ties its left end; a rise that nothing ties is free, and
/// gives one motion. Springs count as restraints. docs/methods.md, "Can it move".
/// </remarks>
internal sealed class Kinematics
{
    private double[] _ends = [];
    private RestraintTriangle[] _parts = [];
    private ImmutableArray<Support> _supports = [];
    private int _partCount;
    private bool _shiftMatters;

    /// <summary>How many independent motions there are, a free slide along the beam among them.</summary>
    internal int FreeCount { get; private set; }

    /// <summary>True: nothing holds the beam lengthways, and sliding moves nothing else.</summary>
    internal bool SlidesFreely => !_shiftMatters;

    /// <summary>True: it can move in another way than sliding along its own axis.</summary>
    internal bool CanMoveAcross => FreeCount > (SlidesFreely ? 1 : 0);

    /// <summary>The smallest restraint that a verdict hung on [–]: 1 is a full one.</summary>
    internal double LeastPivot { get; private set; }

    private bool IsShiftFree => _parts[_partCount - 1].Third.Along == 0;

    /// <summary>Examines a beam on the supports that touch.</summary>
    internal void Examine(BeamModel model, ReadOnlySpan<bool> touching)
    {
        _supports = model.Supports;
        LayParts(model);
        _shiftMatters = false;
        FreeCount = 0;
        LeastPivot = 1;
        int support = 0;
        for (int i = 0; i < _partCount; i++)
        {
            ref RestraintTriangle part = ref _parts[i];
            part = default;
            if (i > 0)
            {
                CarryOver(_parts[i - 1], ref part);
            }

            for (; support < model.Supports.Length && model.Supports[support].Position <= _ends[i + 1]; support++)
            {
                if (touching[support])
                {
                    Support held = model.Supports[support];
                    TakeIn(ref part, held, _ends[i], _ends[i + 1]);
                    _shiftMatters |= MattersAlong(held);
                }
            }

            Count(part.First.Left);
        }

        Count(_parts[_partCount - 1].Second.Right);
        Count(_parts[_partCount - 1].Third.Along);
    }

    /// <summary>Whether a support ties the shift along the beam to anything.</summary>
    internal static bool MattersAlong(Support support) =>
        support.Along is not Restraint.None || (support.SurfaceSlope != 0 && support.Across is not Restraint.None);

    /// <summary>Takes in all that a support on a part forbids.</summary>
    internal static void TakeIn(ref RestraintTriangle part, Support support, double from, double to)
    {
        if (support.Across is not Restraint.None)
        {
            part.Take(RestraintRow.OfAcross(support, (support.Position - from) / (to - from)));
        }

        if (support.Rotation is not Restraint.None)
        {
            part.Take(RestraintRow.OfRotation);
        }

        if (support.Along is not Restraint.None)
        {
            part.Take(RestraintRow.OfAlong);
        }
    }

    /// <summary>Every independent motion: sliding first, then from left to right.</summary>
    internal ImmutableArray<FreeMotion> Motions()
    {
        ImmutableArray<FreeMotion>.Builder motions = ImmutableArray.CreateBuilder<FreeMotion>(FreeCount);
        double[] rises = new double[_partCount + 1];
        if (IsShiftFree)
        {
            motions.Add(Motion(rises, _partCount, 0, 1));
        }

        for (int i = 0; i < _partCount; i++)
        {
            if (_parts[i].First.Left == 0)
            {
                motions.Add(IsBare ? WholeBeamRises() : Motion(rises, i, 1, 0));
            }
        }

        if (_parts[_partCount - 1].Second.Right == 0)
        {
            motions.Add(Motion(rises, _partCount, 1, 0));
        }

        return motions.MoveToImmutable();
    }

    /// <summary>
    /// A single part that nothing holds across: moving bodily says more than turning about its right end.
    /// </summary>
    private bool IsBare => _partCount == 1 && _parts[0].First.Left == 0 && _parts[0].Second.Right == 0;

    private FreeMotion WholeBeamRises() => RigidMotion.Of(_supports, _ends.AsSpan(0, 2), [1, 1], 0);

    private void LayParts(BeamModel model)
    {
        _partCount = model.Hinges.Length + 1;
        Workspace.Grow(ref _ends, _partCount + 1);
        Workspace.Grow(ref _parts, _partCount);
        _ends[0] = 0;
        model.Hinges.AsSpan().CopyTo(_ends.AsSpan(1));
        _ends[_partCount] = model.Length;
    }

    /// <summary>What the parts so far forbid to the left end of the next one, again as rows of unit size.</summary>
    /// <remarks>
    /// The size is that of a restraint passed on over hinges; kept, it would die away along a sound chain.
    /// </remarks>
    private static void CarryOver(in RestraintTriangle from, ref RestraintTriangle to)
    {
        RestraintRow tie = from.Second;
        if (tie.Right != 0)
        {
            double size = double.Hypot(tie.Right, tie.Along);
            to.Take(new RestraintRow(tie.Right / size, 0, tie.Along / size));
        }

        if (from.Third.Along != 0)
        {
            to.Take(RestraintRow.OfAlong);
        }
    }

    private void Count(double pivot)
    {
        if (pivot == 0)
        {
            FreeCount++;
        }
        else
        {
            LeastPivot = Math.Min(LeastPivot, Math.Abs(pivot));
        }
    }

    /// <summary>The motion in which one free movement is 1 and every other free one is 0.</summary>
    private FreeMotion Motion(double[] rises, int from, double rise, double shift)
    {
        Array.Clear(rises);
        rises[from] = rise;
        if (from == _partCount && _parts[from - 1].Second.Right != 0)
        {
            RestraintRow tie = _parts[from - 1].Second;
            rises[from] = -tie.Along * shift / tie.Right;
        }

        for (int i = from - 1; i >= 0 && (shift != 0 || rises[i + 1] != 0); i--)
        {
            RestraintRow tie = _parts[i].First;
            rises[i] = tie.Left == 0 ? 0 : -(tie.Right * rises[i + 1] + tie.Along * shift) / tie.Left;
        }

        return RigidMotion.Of(_supports, _ends.AsSpan(0, _partCount + 1), rises, shift);
    }
}
