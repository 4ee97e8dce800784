using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// The greatest moment between axles, on a stretch of a piece where a standing load bends the line of moments: there it is
/// S(v) + A(u) + v·B(u), v the place and u the train's, both as shares, S the standing part and A and B cubics.
/// </summary>
internal ref struct BetweenAxles
{
    private const int Cubic = ForceInfluence.Cubic;

    private readonly TrainElement _element;
    private readonly Train _train;
    private readonly StandingCurve _standing;
    private readonly int _piece;
    private readonly double _scale;
    private readonly double _bound;
    private readonly Piece _of;

    internal BetweenAxles(TrainElement element, StandingCurve standing, int piece, double scale)
    {
        _element = element;
        _train = element.Train;
        _standing = standing;
        _piece = piece;
        _scale = scale;
        _bound = standing.BoundOn(piece);
        _of = standing.Parts.Pieces[piece];
    }

    /// <summary>Takes in one stretch.</summary>
    internal readonly void Take(ReadOnlySpan<double> standing, double from, double to, ref Leader<Worst> leader)
    {
        double bendAtStart = 2 * standing[2] + 6 * standing[3] * from;
        double bendAtEnd = 2 * standing[2] + 6 * standing[3] * to;
        if (bendAtStart >= 0 && bendAtEnd >= 0)
        {
            return;
        }

        (int first, int end) = _element.IntervalsOf(Curve.Moment);
        for (int i = first; i < end; i++)
        {
            for (int left = -1; left < _train.Offsets.Length; left++)
            {
                if (left < 0 || _element.IsInside(i, left))
                {
                    Take(standing, from, to, i, left, ref leader);
                }
            }
        }
    }

    /// <summary>Right of one axle, or of the start of the element, and left of the next.</summary>
    private readonly void Take(
        ReadOnlySpan<double> standing, double from, double to, int interval, int left, ref Leader<Worst> leader)
    {
        int right = left + 1;
        while (right < _train.Offsets.Length && !_element.IsInside(interval, right))
        {
            right++;
        }

        double least = left < 0 ? from : Math.Max(from, ShareOf(interval, left, 0));
        double most = right == _train.Offsets.Length ? to : Math.Min(to, ShareOf(interval, right, 1));
        if (!(least < most))
        {
            return;
        }

        Span<double> constant = stackalloc double[Cubic];
        Span<double> rate = stackalloc double[Cubic];
        Fill(interval, left, constant, rate);
        double train = Math.Max(BoundAt(constant, rate, least), BoundAt(constant, rate, most));
        if (leader.CouldBeat(_bound + train))
        {
            Gap gap = new(interval, left, right, from, to);
            TakeWithTrainAt(standing, constant, rate, gap, 0, ref leader);
            TakeWithTrainAt(standing, constant, rate, gap, 1, ref leader);
            TakeWhereTrainTurns(standing, constant, rate, gap, ref leader);
            TakeInside(standing, constant, rate, gap, ref leader);
        }
    }

    /// <summary>
    /// A and B that rise and fall together, as where the train is in another bay, leave a double root, which no change of
    /// sign shows: so the places at which either turns are looked at too.
    /// </summary>
    private readonly void TakeWhereTrainTurns(
        ReadOnlySpan<double> standing,
        ReadOnlySpan<double> constant,
        ReadOnlySpan<double> rate,
        in Gap gap,
        ref Leader<Worst> leader)
    {
        Span<double> turns = stackalloc double[Cubic];
        for (int part = 0; part < 2; part++)
        {
            int count = Roots.TurnsInside(part == 0 ? constant : rate, turns);
            for (int k = 0; k < count; k++)
            {
                TakeWithTrainAt(standing, constant, rate, gap, turns[k], ref leader);
            }
        }
    }

    /// <summary>The train stands still, the section is where the sum of both turns.</summary>
    private readonly void TakeWithTrainAt(
        ReadOnlySpan<double> standing,
        ReadOnlySpan<double> constant,
        ReadOnlySpan<double> rate,
        in Gap gap,
        double at,
        ref Leader<Worst> leader)
    {
        Span<double> sum = stackalloc double[Cubic];
        standing.CopyTo(sum);
        sum[0] += Roots.Value(constant, at);
        sum[1] += Roots.Value(rate, at);
        Span<double> turns = stackalloc double[Cubic];
        int count = Roots.TurnsInside(sum, turns);
        for (int k = 0; k < count; k++)
        {
            TakeAt(Roots.Value(sum, turns[k]), gap, turns[k], at, ref leader);
        }
    }

    /// <summary>Both are where neither rises nor falls: S' + B = 0 and A' + v·B' = 0, v eliminated.</summary>
    private readonly void TakeInside(
        ReadOnlySpan<double> standing,
        ReadOnlySpan<double> constant,
        ReadOnlySpan<double> rate,
        in Gap gap,
        ref Leader<Worst> leader)
    {
        Span<double> equation = stackalloc double[Elimination.MostCoefficients];
        int count = Elimination.Fill(standing, constant, rate, equation);
        Span<double> roots = stackalloc double[Elimination.MostCoefficients];
        count = Roots.Inside(equation[..count], roots);
        for (int k = 0; k < count; k++)
        {
            double at = roots[k];
            double share = Elimination.Place(standing, constant, rate, at);
            double value = Roots.Value(standing, share) + Roots.Value(constant, at) + share * Roots.Value(rate, at);
            TakeAt(value, gap, share, at, ref leader);
        }
    }

    private readonly void TakeAt(double value, in Gap gap, double share, double at, ref Leader<Worst> leader)
    {
        bool isIn = share >= gap.From && share <= gap.To
            && (gap.Left < 0 || share >= ShareOf(gap.Interval, gap.Left, at))
            && (gap.Right == _train.Offsets.Length || share <= ShareOf(gap.Interval, gap.Right, at));
        if (isIn && leader.CouldBeat(value))
        {
            int lean = at == 0 ? 1 : at == 1 ? -1 : 0;
            leader.Take(
                value,
                _of.From + share * _of.Length,
                new Worst(
                    new StandingPlace(_standing, _piece, share), _train, new RollingPeak(value, gap.Interval, at, lean)));
        }
    }

    /// <summary>Where an axle stands, as a share of the piece.</summary>
    private readonly double ShareOf(int interval, int axle, double at) =>
        (_train.StartOf(interval) + at * _train.LengthOf(interval) + _train.Offsets[axle] - _of.From) / _of.Length;

    private readonly void Fill(int interval, int left, Span<double> constant, Span<double> rate)
    {
        double distance = _of.From - _element.From;
        for (int k = 0; k < Cubic; k++)
        {
            double shear = _scale * _element.Shear(interval)[k];
            constant[k] = _scale * _element.Moment(interval)[k] + distance * shear;
            rate[k] = _of.Length * shear;
        }

        for (int j = 0; j <= left; j++)
        {
            if (_element.IsInside(interval, j))
            {
                double force = _scale * _train.Forces[j];
                constant[0] -= force * (_of.From - _train.StartOf(interval) - _train.Offsets[j]);
                constant[1] += force * _train.LengthOf(interval);
                rate[0] -= force * _of.Length;
            }
        }
    }

    private static double BoundAt(ReadOnlySpan<double> constant, ReadOnlySpan<double> rate, double share)
    {
        Span<double> sum = stackalloc double[Cubic];
        for (int k = 0; k < Cubic; k++)
        {
            sum[k] = constant[k] + share * rate[k];
        }

        return Bernstein.Most(sum, 1);
    }

    private readonly record struct Gap(int Interval, int Left, int Right, double From, double To);
}
