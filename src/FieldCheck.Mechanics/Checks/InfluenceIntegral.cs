using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Checks;

/// <summary>
/// Integrals of an influence line η from the left end on: ∫η dξ and ∫ξη dξ, so that a load spread from a to b costs two
/// look-ups.
/// </summary>
internal sealed class InfluenceIntegral
{
    private readonly ImmutableArray<Stretch> _stretches;
    private readonly Range _part;
    private readonly double[] _zeroth;
    private readonly double[] _first;

    internal InfluenceIntegral(ImmutableArray<Stretch> stretches, bool along)
    {
        _stretches = stretches;
        _part = UnitLoads.Parts[along ? 1 : 0];
        _zeroth = new double[stretches.Length + 1];
        _first = new double[stretches.Length + 1];
        for (int i = 0; i < stretches.Length; i++)
        {
            (double zeroth, double first) = Inside(i, stretches[i].To);
            _zeroth[i + 1] = _zeroth[i] + zeroth;
            _first[i + 1] = _first[i] + first;
        }
    }

    /// <summary>Both integrals from the left end to a place.</summary>
    internal (double Zeroth, double First) To(double position)
    {
        int i = 0;
        while (i < _stretches.Length - 1 && position > _stretches[i].To)
        {
            i++;
        }

        (double zeroth, double first) = Inside(i, position);
        return (_zeroth[i] + zeroth, _first[i] + first);
    }

    /// <summary>Least and greatest of ∫η dξ up to any place in a range: at its ends or where η is nil.</summary>
    internal (double Low, double High) RangeTo(double from, double to)
    {
        (double low, double high) = (To(from).Zeroth, To(from).Zeroth);
        Take(To(to).Zeroth);
        Span<double> zeros = stackalloc double[4];
        foreach (Stretch stretch in _stretches)
        {
            if (stretch.From > to || stretch.To < from)
            {
                continue;
            }

            int count = Roots.Inside(stretch.Coefficients.AsSpan(_part), zeros);
            for (int k = 0; k < count; k++)
            {
                TakeAt(stretch.Origin + zeros[k] * stretch.Unit);
            }

            TakeAt(stretch.From);
        }

        return (low, high);

        void TakeAt(double position)
        {
            if (position > from && position < to)
            {
                Take(To(position).Zeroth);
            }
        }

        void Take(double value)
        {
            low = Math.Min(low, value);
            high = Math.Max(high, value);
        }
    }

    private (double Zeroth, double First) Inside(int index, double to)
    {
        Stretch stretch = _stretches[index];
        (double zeroth, double first) = Antiderivative(stretch, stretch.Share(to));
        (double zerothStart, double firstStart) = Antiderivative(stretch, stretch.Share(stretch.From));
        return (zeroth - zerothStart, first - firstStart);
    }

    /// <summary>With ξ = origin + unit·t.</summary>
    private (double Zeroth, double First) Antiderivative(Stretch stretch, double t)
    {
        ReadOnlySpan<double> c = stretch.Coefficients.AsSpan(_part);
        double zeroth = 0;
        double rest = 0;
        double power = t;
        for (int k = 0; k < c.Length; k++)
        {
            zeroth += c[k] * power / (k + 1);
            rest += c[k] * power * t / (k + 2);
            power *= t;
        }

        return (stretch.Unit * zeroth, stretch.Unit * (stretch.Origin * zeroth + stretch.Unit * rest));
    }
}
