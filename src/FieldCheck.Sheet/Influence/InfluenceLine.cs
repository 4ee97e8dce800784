using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Sheet.Influence;

/// <summary>What a force of one, down, does to one figure wherever it stands: a cubic on every stretch between nodes.</summary>
/// <remarks>
/// Of the beam as it stands without loads: supports that act one way only are taken to hold, settlements are left out. Of a
/// reaction and a shear it is a number [–], of a moment a length [m].
/// </remarks>
public sealed class InfluenceLine
{
    // Far above the rounding of the solver, far below what could be seen.
    private const double Rounding = 1e-9;

    private readonly ImmutableArray<CubicStretch> _stretches;

    private InfluenceLine(ImmutableArray<CubicStretch> stretches)
    {
        _stretches = stretches;
        Breaks = [stretches[0].From, .. stretches.Select(stretch => stretch.To)];
        double largest = stretches.SelectMany(stretch => stretch.Extremes()).Max(extreme => Math.Abs(extreme.Value));
        Negligible = Rounding * largest;
        Peaks = [.. PeaksOf()];
        Zeros = [.. ZerosOf()];
    }

    /// <summary>A value of this size or less is rounding.</summary>
    public double Negligible { get; }

    /// <summary>Ends of the stretches [m from the left end], both ends of the beam among them.</summary>
    public ImmutableArray<double> Breaks { get; }

    /// <summary>Every local greatest and least value, left to right; both sides of a jump count.</summary>
    public ImmutableArray<Extreme> Peaks { get; }

    /// <summary>Places inside the beam where it passes through zero [m].</summary>
    public ImmutableArray<double> Zeros { get; }

    /// <summary>The influence line of a figure.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="figure">Which figure.</param>
    /// <returns>Null where the beam does not stand with all its supports holding.</returns>
    public static InfluenceLine? Of(BuiltBeam beam, InfluenceOf figure)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(figure);
        return UnitForces.Stretches(beam.Model, figure) is { } stretches ? new InfluenceLine(stretches) : null;
    }

    /// <summary>The value with the force just left and just right of a place [m from the left end].</summary>
    /// <param name="position">The place, on the beam; at its ends both are the same.</param>
    public (double Left, double Right) At(double position)
    {
        CubicStretch left = _stretches.LastOrDefault(stretch => stretch.From < position) ?? _stretches[0];
        CubicStretch right = _stretches.FirstOrDefault(stretch => stretch.To > position) ?? _stretches[^1];
        return (left.At(position), right.At(position));
    }

    private IEnumerable<Extreme> PeaksOf()
    {
        for (int index = 0; index < _stretches.Length; index++)
        {
            CubicStretch stretch = _stretches[index];
            CubicStretch? before = index == 0 ? null : _stretches[index - 1];
            double start = stretch.At(stretch.From);
            if (before is null || Math.Abs(before.At(before.To) - start) > Negligible)
            {
                if (before is not null)
                {
                    yield return new Extreme(before.At(before.To), before.To);
                }

                yield return new Extreme(start, stretch.From);
            }
            else if (before.SlopeAt(before.To) * stretch.SlopeAt(stretch.From) <= 0)
            {
                yield return new Extreme(start, stretch.From);
            }

            foreach (Extreme inside in stretch.Inside())
            {
                yield return inside;
            }
        }

        CubicStretch last = _stretches[^1];
        yield return new Extreme(last.At(last.To), last.To);
    }

    private IEnumerable<double> ZerosOf()
    {
        double end = Breaks[^1];
        foreach (CubicStretch stretch in _stretches)
        {
            foreach (double zero in stretch.Zeros(Negligible))
            {
                yield return zero;
            }

            (double left, double right) = At(stretch.To);
            bool isZero = Math.Abs(left) <= Negligible && Math.Abs(right) <= Negligible;
            if (isZero && stretch.To < end && stretch.To > 0)
            {
                yield return stretch.To;
            }
        }
    }
}
