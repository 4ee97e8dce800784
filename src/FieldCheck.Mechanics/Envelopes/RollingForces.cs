using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// The greatest N, V or M of standing loads and a train together, in one element: at a section that stays while the train
/// passes, beside an axle, or between axles where a standing load bends the line of moments.
/// </summary>
internal sealed class RollingForces(TrainElement element, Curve curve)
{
    private const int Cubic = ForceInfluence.Cubic;

    private readonly Train _train = element.Train;
    private readonly double[] _most = [double.NaN, double.NaN];
    private readonly PieceCuts _cuts = new();

    /// <summary>Takes in all of an element's pieces that could take the lead.</summary>
    internal void Take(StandingCurve standing, Range pieces, double scale, ref Leader<Worst> leader)
    {
        double most = Math.Abs(scale) * Most(Math.Sign(scale));
        leader.Widen(Math.Max(most, Math.Abs(scale) * Most(-Math.Sign(scale))));
        if (most <= 0)
        {
            return;
        }

        (int first, int count) = pieces.GetOffsetAndLength(standing.PieceCount);
        for (int piece = first; piece < first + count; piece++)
        {
            if (leader.CouldBeat(standing.BoundOn(piece) + most))
            {
                TakeOn(standing, piece, scale, ref leader);
            }
        }
    }

    private void TakeOn(StandingCurve standing, int piece, double scale, ref Leader<Worst> leader)
    {
        TakeAt(standing, piece, 0, scale, ref leader);
        TakeAt(standing, piece, 1, scale, ref leader);
        standing.Cut(piece, _cuts);
        BetweenAxles between = new(element, standing, piece, scale);
        Span<double> stretch = stackalloc double[Cubic];
        for (int i = 0; i < _cuts.Count; i++)
        {
            stretch.Clear();
            _cuts.On(i).CopyTo(stretch);
            (double from, double to) = (_cuts.StartOf(i), _cuts.EndOf(i));
            if (curve != Curve.Axial)
            {
                TakeBesideAxles(standing, piece, stretch, (from, to), scale, ref leader);
            }

            if (curve == Curve.Moment)
            {
                between.Take(stretch, from, to, ref leader);
            }
            else
            {
                TakeWhereItTurns(standing, piece, stretch, (from, to), scale, ref leader);
            }
        }
    }

    /// <summary>
    /// The train adds the same on both sides of a section but for its axles, so V and N can peak where the standing part
    /// does.
    /// </summary>
    private void TakeWhereItTurns(
        StandingCurve standing,
        int piece,
        ReadOnlySpan<double> stretch,
        (double From, double To) shares,
        double scale,
        ref Leader<Worst> leader)
    {
        Span<double> turns = stackalloc double[Cubic];
        int count = Roots.TurnsInside(stretch, turns);
        for (int k = 0; k < count; k++)
        {
            if (turns[k] > shares.From && turns[k] < shares.To)
            {
                TakeAt(standing, piece, turns[k], scale, ref leader);
            }
        }
    }

    private void TakeAt(StandingCurve standing, int piece, double share, double scale, ref Leader<Worst> leader)
    {
        Piece of = standing.Parts.Pieces[piece];
        double position = share == 1 ? of.To : of.From + share * of.Length;
        RollingPeak peak = element.Greatest(curve, position, scale);
        leader.Take(
            standing.At(piece, share) + peak.Value,
            position,
            new Worst(new StandingPlace(standing, piece, share), _train, peak));
    }

    /// <summary>The section rolls along with an axle, over one stretch of a piece.</summary>
    private void TakeBesideAxles(
        StandingCurve standing,
        int piece,
        ReadOnlySpan<double> stretch,
        (double From, double To) shares,
        double scale,
        ref Leader<Worst> leader)
    {
        Piece of = standing.Parts.Pieces[piece];
        Span<double> sum = stackalloc double[Cubic + 1];
        for (int i = element.Own.First; i < element.Own.End; i++)
        {
            for (int k = 0; k < _train.Offsets.Length; k++)
            {
                if (!element.IsInside(i, k))
                {
                    continue;
                }

                double start = (_train.StartOf(i) + _train.Offsets[k] - of.From) / of.Length;
                double step = _train.LengthOf(i) / of.Length;
                double from = Math.Max(0, (shares.From - start) / step);
                double to = Math.Min(1, (shares.To - start) / step);

                // An axle that only comes to the end of the stretch is not over it: beyond, V may be another.
                bool isOver = _train.IsPlace(i)
                    ? start * of.Length > _train.Nearness && (1 - start) * of.Length > _train.Nearness && from < to
                    : (to - from) * _train.LengthOf(i) > _train.Nearness;
                for (int side = 0; isOver && side < (curve == Curve.Shear ? 2 : 1); side++)
                {
                    if (curve == Curve.Shear && _train.StopOf(i, k) == (side == 0 ? 1 : -1))
                    {
                        continue;
                    }

                    FillBeside(i, k, side == 1, scale, sum);
                    TrainRow.AddShifted(sum, stretch, 1, start, step);
                    RollingPeak peak = new(leader.Floor, -1, 0, 0);
                    RollingScan.Take(sum, i, from, to, ref peak);
                    if (peak.Interval >= 0)
                    {
                        double share = Math.Clamp(start + step * peak.Share, 0, 1);
                        double position = _train.StartOf(i) + peak.Share * _train.LengthOf(i) + _train.Offsets[k];
                        leader.Take(
                            peak.Value, position, new Worst(new StandingPlace(standing, piece, share), _train, peak));
                    }
                }
            }
        }
    }

    /// <summary>The greatest that the train alone gives anywhere in the element: at its ends or beside an axle.</summary>
    private double Most(int sign)
    {
        ref double most = ref _most[sign > 0 ? 1 : 0];
        if (!double.IsNaN(most))
        {
            return most;
        }

        RollingPeak peak = element.Greatest(curve, element.From, sign);
        peak = new RollingPeak(Math.Max(peak.Value, element.Greatest(curve, element.To, sign).Value), 0, 0, 0);
        Span<double> sum = stackalloc double[Cubic + 1];
        for (int i = element.Own.First; curve != Curve.Axial && i < element.Own.End; i++)
        {
            for (int k = 0; k < _train.Offsets.Length; k++)
            {
                for (int side = 0; element.IsInside(i, k) && side < (curve == Curve.Shear ? 2 : 1); side++)
                {
                    FillBeside(i, k, side == 1, sign, sum);
                    RollingScan.Take(sum, i, 0, 1, ref peak);
                }
            }
        }

        return most = peak.Value;
    }

    /// <summary>
    /// What the train gives just left of an axle, or just right of it, in its place: a cubic for V, of the fourth degree
    /// for M.
    /// </summary>
    private void FillBeside(int interval, int axle, bool isRight, double scale, Span<double> to)
    {
        ReadOnlySpan<double> shear = element.Shear(interval);
        to.Clear();
        double distance = _train.StartOf(interval) + _train.Offsets[axle] - element.From;
        for (int k = 0; k < Cubic; k++)
        {
            if (curve == Curve.Shear)
            {
                to[k] = scale * shear[k];
                continue;
            }

            to[k] += scale * (element.Moment(interval)[k] + distance * shear[k]);
            to[k + 1] += scale * _train.LengthOf(interval) * shear[k];
        }

        for (int j = 0; j <= axle; j++)
        {
            bool isLeft = j < axle || isRight;
            if (isLeft && element.IsInside(interval, j))
            {
                double arm = curve == Curve.Shear ? 1 : _train.Offsets[axle] - _train.Offsets[j];
                to[0] -= scale * _train.Forces[j] * arm;
            }
        }
    }
}
