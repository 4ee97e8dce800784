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

    internal InfluenceLine(ImmutableArray<Stretch> stretches, Target target)
    {
        _stretches = stretches;
        _target = target;
    }

    internal ImmutableArray<Stretch> Stretches => _stretches;

    /// <summary>Least and greatest of what a load that acts at one place does, wherever it stands in a range.</summary>
    internal (double Low, double High) RangeOf(Load load, double from, double to)
    {
        return load switch
        {
            Load.Point point => Range(from, to, point.Down, point.Right, 0),
            Load.Couple couple => Range(from, to, 0, 0, couple.Moment),
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>Least and greatest influence of a load of one in a range, across or along.</summary>
    internal (double Low, double High) RangeOfOne(double from, double to, bool along) =>
        along ? Range(from, to, 0, 1, 0) : Range(from, to, 1, 0, 0);

    /// <summary>The steepest that the influence of a couple of one changes with its place in a range, jumps apart.</summary>
    internal double SlopeOfCouple(double from, double to)
    {
        double steepest = 0;
        foreach (Stretch stretch in _stretches)
        {
            if (stretch.From < to && stretch.To > from)
            {
                double[] c = stretch.Coefficients;
                double start = c[7] + 2 * c[8] * stretch.Share(Math.Max(stretch.From, from));
                double end = c[7] + 2 * c[8] * stretch.Share(Math.Min(stretch.To, to));
                steepest = Math.Max(steepest, Math.Max(Math.Abs(start), Math.Abs(end)) / stretch.Unit);
            }
        }

        return steepest;
    }

    /// <summary>The integral of it over the beam, for loads that are spread.</summary>
    internal InfluenceIntegral Integral(bool along) =>
        _integrals[along ? 1 : 0] ??= new InfluenceIntegral(_stretches, along);

    private (double Low, double High) Range(double from, double to, double down, double right, double turn)
    {
        Span<double> polynomial = stackalloc double[4];
        Span<double> turns = stackalloc double[4];
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (Stretch stretch in _stretches)
        {
            double start = Math.Max(stretch.From, from);
            double end = Math.Min(stretch.To, to);
            if (start > end || (start == end && from < to && IsOutOfSight(stretch, start)))
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
    /// A range that ends exactly at the section: just left of it a load there is not counted, just right of it it is.
    /// At an end of the beam that leaves a stretch of no length.
    /// </summary>
    private bool IsOutOfSight(Stretch stretch, double position) =>
        !_target.IsReaction && position == _target.Position
        && stretch.From < stretch.To
        && (_target.Side == Side.Left ? stretch.To == position : stretch.From == position);

    private static void Take(double value, ref double low, ref double high)
    {
        low = Math.Min(low, value);
        high = Math.Max(high, value);
    }
}
