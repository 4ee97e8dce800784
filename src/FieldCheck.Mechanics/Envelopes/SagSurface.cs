using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// The deflection by a train over all sections of one element and all its places in one interval: a polynomial in both,
/// and of each axle in the element its own part, which counts on its right only.
/// </summary>
internal sealed class SagSurface(TrainElement element, Span span)
{
    private const int Cubic = ForceInfluence.Cubic;

    private readonly double _length = element.To - element.From;
    private readonly double _bend = 1 / span.FlexuralRigidity;
    private readonly double _shear = span.ShearRigidity is double rigidity ? 1 / rigidity : 0;
    private readonly double[] _smooth = new double[Cubic * Cubic];
    private int _interval;

    /// <summary>Whether an axle is in the element in an interval.</summary>
    internal bool HasAxle(int interval)
    {
        bool has = false;
        for (int k = 0; k < element.Train.Offsets.Length; k++)
        {
            has |= element.IsInside(interval, k);
        }

        return has;
    }

    /// <summary>What the train cannot exceed in an interval in which no axle is in the element; quickly told.</summary>
    internal double SizeOn(int interval)
    {
        double turned = _length * _length / 2 * _bend;
        return element.SizeOn(4, interval)
            + _length * element.SizeOn(3, interval)
            + turned * element.SizeOn(2, interval)
            + (_length * turned / 3 + _length * _shear) * element.SizeOn(1, interval);
    }

    /// <summary>Goes to an interval.</summary>
    internal void Enter(int interval)
    {
        _interval = interval;
        ReadOnlySpan<double> shear = element.On(1, interval);
        ReadOnlySpan<double> moment = element.On(2, interval);
        ReadOnlySpan<double> turn = element.On(3, interval);
        ReadOnlySpan<double> rise = element.On(4, interval);
        for (int j = 0; j < Cubic; j++)
        {
            _smooth[j] = -rise[j];
            _smooth[Cubic + j] = _length * (_shear * shear[j] - turn[j]);
            _smooth[2 * Cubic + j] = -_length * _length * _bend / 2 * moment[j];
            _smooth[3 * Cubic + j] = -_length * _length * _length * _bend / 6 * shear[j];
        }
    }

    /// <summary>Bounds standing loads and a scale times the train over a box.</summary>
    /// <param name="standing">Standing loads, a polynomial in the share of the box's width; may be empty.</param>
    /// <param name="scale">What the train's deflection is multiplied by.</param>
    /// <param name="box">The box.</param>
    internal SagBound Bound(ReadOnlySpan<double> standing, double scale, in SagBox box)
    {
        Span<double> sum = stackalloc double[Math.Max(Cubic, standing.Length) * Cubic];
        sum.Clear();
        for (int i = 0; i < Cubic * Cubic; i++)
        {
            sum[i] = scale * _smooth[i];
        }

        Narrow(sum, Cubic, box);
        for (int i = 0; i < standing.Length; i++)
        {
            sum[i * Cubic] += standing[i];
        }

        Train train = element.Train;
        Passing passing = default;
        for (int k = 0; k < train.Offsets.Length; k++)
        {
            if (element.IsInside(_interval, k))
            {
                AddAxle(sum, scale * train.Forces[k], Distance(k, box), ref passing);
            }
        }

        return Bounded(sum, passing);
    }

    /// <summary>How far sections lie right of an axle, straight in both shares of the box.</summary>
    private Line Distance(int axle, in SagBox box)
    {
        Train train = element.Train;
        double at = train.StartOf(_interval) + train.Offsets[axle] - element.From;
        double way = train.LengthOf(_interval);
        return new Line(_length * box.From - at - way * box.Start, _length * box.Width, -way * box.Way);
    }

    /// <summary>
    /// An axle lets sections on its right sink by v³/6EI - v/GA. Where it passes sections of the box, what bends up lies
    /// below its chord, what bends down below its tangents, and a kink that points up below every straight line between
    /// its two branches.
    /// </summary>
    private void AddAxle(Span<double> sum, double force, in Line v, ref Passing passing)
    {
        (double least, double most) = (v.Constant + v.Way, v.Constant + v.Width);
        if (most <= 0)
        {
            return;
        }

        double bend = force * _bend / 6;
        double kink = -force * _shear;
        if (least >= 0)
        {
            v.AddCube(sum, bend);
            v.AddTo(sum, kink, 0);
            return;
        }

        double at = (least + most) / 2;
        double above = Math.Max(0, at);
        double rise = (Math.Max(0, bend) * most * most + Math.Max(0, kink)) * most / (most - least);
        double fall = 3 * Math.Min(0, bend) * above * above;
        double touch = 2 * above / 3;
        v.AddTo(sum, rise, least);
        v.AddTo(sum, fall, touch);
        double share = kink < 0 ? Math.Clamp(SteepnessAlongSections(sum) / (-kink * v.Width), 0, 1) : 0;
        v.AddTo(sum, share * kink, 0);
        passing.Middle += above * (bend * above * above + kink)
            - rise * (at - least) - fall * (at - touch) - share * kink * at;
        double unsure = Math.Abs(bend) * most * most * most - Math.Abs(kink) * most * least / (most - least);
        passing.AlongSections += unsure * v.Width / (v.Width - v.Way);
        passing.AlongPlaces -= unsure * v.Way / (v.Width - v.Way);
    }

    /// <summary>The derivative along the sections in the middle of the box.</summary>
    private static double SteepnessAlongSections(ReadOnlySpan<double> sum)
    {
        double steepness = 0;
        for (int i = sum.Length / Cubic - 1; i >= 1; i--)
        {
            steepness = steepness / 2 + i * Roots.Value(sum.Slice(i * Cubic, Cubic), 0.5);
        }

        return steepness;
    }

    private static SagBound Bounded(Span<double> sum, in Passing passing)
    {
        double middle = passing.Middle;
        int rows = sum.Length / Cubic;
        double power = 1;
        for (int i = 0; i < rows; i++)
        {
            middle += power * Roots.Value(sum.Slice(i * Cubic, Cubic), 0.5);
            power /= 2;
        }

        Bernstein.FromPowersInBoth(sum, rows, Cubic);
        double most = double.NegativeInfinity;
        double alongSections = 0;
        double alongPlaces = 0;
        for (int i = 0; i < rows; i++)
        {
            for (int j = 0; j < Cubic; j++)
            {
                double one = sum[i * Cubic + j];
                most = Math.Max(most, one);
                alongSections = Math.Max(alongSections, Math.Abs(one - sum[j]));
                alongPlaces = Math.Max(alongPlaces, Math.Abs(one - sum[i * Cubic]));
            }
        }

        return new SagBound(
            most, middle, alongSections + passing.AlongSections, alongPlaces + passing.AlongPlaces);
    }

    /// <summary>Takes a polynomial in the shares of element and interval as one in those of a box.</summary>
    private static void Narrow(Span<double> sum, int rows, in SagBox box)
    {
        for (int j = 0; j < Cubic; j++)
        {
            Narrow(sum[j..], rows, Cubic, box.From, box.Width);
        }

        for (int i = 0; i < rows; i++)
        {
            Narrow(sum[(i * Cubic)..], Cubic, 1, box.Start, box.Way);
        }
    }

    /// <summary>Takes a polynomial in s as one in u, s = start + step·u; coefficients lie a stride apart.</summary>
    internal static void Narrow(Span<double> polynomial, int count, int stride, double start, double step)
    {
        for (int i = 0; i < count - 1; i++)
        {
            for (int k = count - 2; k >= i; k--)
            {
                polynomial[k * stride] += start * polynomial[(k + 1) * stride];
            }
        }

        double power = 1;
        for (int i = 1; i < count; i++)
        {
            power *= step;
            polynomial[i * stride] *= power;
        }
    }

    /// <summary>What axles that pass sections of a box are apart from what is put in their place.</summary>
    private struct Passing
    {
        internal double Middle;
        internal double AlongSections;
        internal double AlongPlaces;
    }

    /// <summary>A distance that grows evenly along the sections of a box, and falls along its places.</summary>
    private readonly record struct Line(double Constant, double Width, double Way)
    {
        /// <summary>Adds a factor times what it has more than a number.</summary>
        internal void AddTo(Span<double> sum, double factor, double less)
        {
            sum[0] += factor * (Constant - less);
            sum[Cubic] += factor * Width;
            sum[1] += factor * Way;
        }

        internal void AddCube(Span<double> sum, double factor)
        {
            // The cube of the sum of three terms: 3!/(i!·j!·k!) for each product of their powers.
            (double c, double x, double t) = (Constant, Width, Way);
            sum[0] += factor * c * c * c;
            sum[1] += 3 * factor * c * c * t;
            sum[2] += 3 * factor * c * t * t;
            sum[3] += factor * t * t * t;
            sum[Cubic] += 3 * factor * c * c * x;
            sum[Cubic + 1] += 6 * factor * c * x * t;
            sum[Cubic + 2] += 3 * factor * x * t * t;
            sum[2 * Cubic] += 3 * factor * c * x * x;
            sum[2 * Cubic + 1] += 3 * factor * x * x * t;
            sum[3 * Cubic] += factor * x * x * x;
        }
    }
}
