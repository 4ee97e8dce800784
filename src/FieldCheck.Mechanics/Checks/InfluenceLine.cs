using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Checks;

/// <summary>What a load of one at each place does to one figure, exact on every stretch.</summary>
internal sealed class InfluenceLine
{
    private readonly ImmutableArray<Stretch> _stretches;
    private readonly Target _target;
    private readonly InfluenceIntegral?[] _integrals = new InfluenceIntegral?[2];

    /// <param name="stretches">From left to right, without gaps.</param>
    /// <param name="target">The figure.</param>
    /// <param name="size">The greatest of the terms that it was summed up from.</param>
    internal InfluenceLine(ImmutableArray<Stretch> stretches, Target target, double size)
    {
        _stretches = stretches;
        _target = target;
        Size = size;
    }

    /// <summary>
    /// The greatest of the terms that it was summed up from: where it is nil, as the moment at a hinge, what is left of
    /// them is rounding.
    /// </summary>
    internal double Size { get; }

    /// <summary>Least and greatest of what a load that acts at one place does, wherever it stands in a range.</summary>
    internal (double Low, double High) RangeOf(Load load, double from, double to)
    {
        return load switch
        {
            Load.Point point => Range(from, to, point.Down, point.Right, 0, null),
            Load.Couple couple => Range(from, to, 0, 0, couple.Moment, couple.Side),
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>Least and greatest influence of a load of one in a range, across or along.</summary>
    internal (double Low, double High) RangeOfOne(double from, double to, bool along) =>
        along ? Range(from, to, 0, 1, 0, null) : Range(from, to, 1, 0, 0, null);

    /// <summary>
    /// The most that the influence of a load of one changes per metre that it moves in a range, jumps apart.
    /// </summary>
    /// <param name="part">Of which kind, as an index into <see cref="UnitLoads.Parts"/>.</param>
    /// <param name="from">Left end of the range.</param>
    /// <param name="to">Right end of the range.</param>
    internal double Steepness(int part, double from, double to)
    {
        double steepest = 0;
        Span<double> rate = stackalloc double[3];
        Span<double> turns = stackalloc double[3];
        foreach (Stretch stretch in _stretches)
        {
            if (stretch.From >= to || stretch.To <= from || stretch.From == stretch.To)
            {
                continue;
            }

            ReadOnlySpan<double> c = stretch.Coefficients.AsSpan(UnitLoads.Parts[part]);
            for (int k = 1; k < c.Length; k++)
            {
                rate[k - 1] = k * c[k];
            }

            ReadOnlySpan<double> slope = rate[..(c.Length - 1)];
            double size = Math.Max(
                Math.Abs(Roots.Value(slope, stretch.Share(Math.Max(stretch.From, from)))),
                Math.Abs(Roots.Value(slope, stretch.Share(Math.Min(stretch.To, to)))));
            int count = Roots.TurnsInside(slope, turns);
            for (int i = 0; i < count; i++)
            {
                // A turn beyond the range makes the bound no worse than safe.
                size = Math.Max(size, Math.Abs(Roots.Value(slope, turns[i])));
            }

            steepest = Math.Max(steepest, size / stretch.Unit);
        }

        return steepest;
    }

    /// <summary>How far the influence of a force of one jumps where it passes the section, if that lies in a range.</summary>
    /// <param name="along">Whether it acts along.</param>
    /// <param name="from">Left end of the range.</param>
    /// <param name="to">Right end of the range.</param>
    internal double JumpOf(bool along, double from, double to) =>
        !_target.IsReaction && _target.Curve == (along ? Curve.Axial : Curve.Shear)
            && _target.Position > from && _target.Position < to ? 1 : 0;

    /// <summary>The integral of it over the beam, for loads that are spread.</summary>
    internal InfluenceIntegral Integral(bool along) =>
        _integrals[along ? 1 : 0] ??= new InfluenceIntegral(_stretches, along);

    private (double Low, double High) Range(
        double from, double to, double down, double right, double turn, Side? side)
    {
        Span<double> polynomial = stackalloc double[4];
        Span<double> turns = stackalloc double[4];
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        // Rounding may put an end of the beam beyond it.
        from = Math.Min(from, _stretches[^1].To);
        to = Math.Max(to, _stretches[0].From);
        foreach (Stretch stretch in _stretches)
        {
            double start = Math.Max(stretch.From, from);
            double end = Math.Min(stretch.To, to);
            if (start > end || (start == end && from < to && IsOutOfSight(stretch, start, from, to, side)))
            {
                continue;
            }

            double[] c = stretch.Coefficients;
            polynomial[0] = down * c[0] + right * c[4] + turn * c[6];
            polynomial[1] = down * c[1] + right * c[5] + turn * c[7];
            polynomial[2] = down * c[2] + turn * c[8];
            polynomial[3] = down * c[3];
            Take(Roots.Value(polynomial, stretch.Share(start)), ref low, ref high);
            Take(Roots.Value(polynomial, stretch.Share(end)), ref low, ref high);
            int count = Roots.TurnsInside(polynomial, turns);
            for (int i = 0; i < count; i++)
            {
                if (turns[i] > stretch.Share(start) && turns[i] < stretch.Share(end))
                {
                    Take(Roots.Value(polynomial, turns[i]), ref low, ref high);
                }
            }
        }

        return (low, high);
    }

    /// <summary>
    /// A range that ends exactly where two stretches meet. At the section: just left of it a load there is not counted,
    /// just right of it it is; a stretch of no length is the load that stands just there. At a hinge a couple turns only
    /// the part that it is on; where two elements meet without one, either will do.
    /// </summary>
    private bool IsOutOfSight(Stretch stretch, double position, double from, double to, Side? side)
    {
        double share = stretch.Share(position);
        bool isAtEnd = position == _stretches[0].From || position == _stretches[^1].To;
        bool isOnOtherPart = side == Side.Left ? share == 0 && to == position
            : side == Side.Right && share == 1 && from == position;
        if (isOnOtherPart && !isAtEnd)
        {
            return true;
        }

        return !_target.IsReaction && position == _target.Position && stretch.From < stretch.To
            && (_target.Side == Side.Left ? stretch.To == position : stretch.From == position);
    }

    private static void Take(double value, ref double low, ref double high)
    {
        low = Math.Min(low, value);
        high = Math.Max(high, value);
    }
}
