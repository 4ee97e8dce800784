using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// The greatest deflection of standing loads and a train together, in one element: exact at each section, the
/// section found by steps and then by golden section; then bounds tell whether any other gives more.
/// </summary>
internal sealed class RollingSag
{
    /// <summary>Steps an element.</summary>
    private const int Steps = 8;

    private const double Golden = 0.6180339887498949;

    private readonly TrainElement _element;
    private readonly RollingPeak[] _least = new RollingPeak[Steps + 1];
    private readonly RollingPeak[] _greatest = new RollingPeak[Steps + 1];
    private readonly SagProof _proof;
    private readonly double _between;
    private readonly bool _keepsRows;

    internal RollingSag(TrainElement element, bool keepsRows, SagBudget budget)
    {
        _element = element;
        _keepsRows = keepsRows;
        for (int i = 0; i <= Steps; i++)
        {
            _greatest[i] = element.Greatest(Curve.Deflection, PositionOf(i), 1);
            _least[i] = element.Greatest(Curve.Deflection, PositionOf(i), -1);
        }

        _proof = new SagProof(element, budget);
        _between = Between();
        Forget();
    }

    /// <summary>Takes in the steps.</summary>
    internal void Take(StandingCurve standing, Range pieces, double scale, ref Leader<Worst> leader)
    {
        for (int i = 0; i <= Steps; i++)
        {
            leader.Widen(Math.Abs(scale) * Math.Max(_greatest[i].Value, _least[i].Value));
        }

        for (int i = 0; i <= Steps; i++)
        {
            RollingPeak peak = At(i, scale);
            StandingPlace place = PlaceAt(standing, pieces, PositionOf(i));
            leader.Take(
                standing.At(place.Piece, place.Share) + peak.Value, PositionOf(i), new Worst(place, _element.Train, peak));
        }
    }

    /// <summary>Goes on where what lies between steps could take the lead.</summary>
    internal void Polish(StandingCurve standing, Range pieces, double scale, ref Leader<Worst> leader)
    {
        Span<double> values = stackalloc double[Steps + 1];
        for (int i = 0; i <= Steps; i++)
        {
            StandingPlace place = PlaceAt(standing, pieces, PositionOf(i));
            values[i] = standing.At(place.Piece, place.Share) + At(i, scale).Value;
        }

        for (int i = 0; i <= Steps; i++)
        {
            int low = Math.Max(0, i - 1);
            int high = Math.Min(Steps, i + 1);
            bool isHump = values[i] >= values[low] && values[i] >= values[high];
            double more = Math.Abs(values[low] - values[i]) + Math.Abs(values[high] - values[i]);
            if (isHump && leader.CouldBeat(values[i] + more))
            {
                Polish(standing, pieces, scale, PositionOf(low), PositionOf(high), ref leader);
            }
        }

        Forget();
    }

    /// <summary>Goes on until no section can raise the lead.</summary>
    /// <returns>Whether that is settled.</returns>
    internal bool Prove(StandingCurve standing, Range pieces, double scale, ref Leader<Worst> leader)
    {
        double most = Math.Abs(scale) * ((scale > 0 ? _greatest : _least).Max(peak => peak.Value) + _between);
        bool isSettled = true;
        for (int piece = pieces.Start.Value; piece < pieces.End.Value; piece++)
        {
            if (leader.CouldRaise(standing.BoundOn(piece) + most))
            {
                isSettled &= ProveOn(standing, pieces, piece, scale, ref leader);
            }
        }

        Forget();
        return isSettled;
    }

    /// <summary>
    /// How much more than at two neighbouring steps the train's deflection can be between them: it bends by M/EI, M being
    /// straight but for the axles, and has a kink below each of them where shear deforms the element.
    /// </summary>
    private double Between()
    {
        double length = _element.To - _element.From;
        double moment = 0;
        foreach (double end in new[] { _element.From, _element.To })
        {
            moment = Math.Max(moment, _element.Greatest(Curve.Moment, end, 1).Value);
            moment = Math.Max(moment, _element.Greatest(Curve.Moment, end, -1).Value);
        }

        double force = _element.MostInside();
        return _element.Between(length / Steps, moment + force * length / 4, force);
    }

    private void Forget()
    {
        if (!_keepsRows)
        {
            _element.Forget();
        }
    }

    private bool ProveOn(StandingCurve standing, Range pieces, int piece, double scale, ref Leader<Worst> leader)
    {
        Piece of = standing.Parts.Pieces[piece];
        double length = _element.To - _element.From;
        PieceCuts cuts = new();
        standing.Cut(piece, cuts);
        Span<double> own = stackalloc double[cuts.Coefficients];
        for (int i = 0; i < cuts.Count; i++)
        {
            (double start, double width) = (cuts.StartOf(i), cuts.EndOf(i) - cuts.StartOf(i));
            cuts.On(i).CopyTo(own);
            SagSurface.Narrow(own, own.Length, 1, start, width);
            double from = (of.From + start * of.Length - _element.From) / length;
            double before;
            do
            {
                before = leader.Value;
                SagFinding found = _proof.Search(own, from, width * of.Length / length, scale, leader);
                if (found.Kind == SagFindingKind.Greater)
                {
                    double aside = found.To - found.From;
                    Polish(
                        standing,
                        pieces,
                        scale,
                        _element.From + length * Math.Max(0, found.From - aside),
                        Math.Min(_element.To, _element.From + length * (found.To + aside)),
                        ref leader);
                }

                if (found.Kind == SagFindingKind.Unsettled)
                {
                    return false;
                }
            }
            while (leader.Value > before);
        }

        return true;
    }

    private void Polish(
        StandingCurve standing, Range pieces, double scale, double low, double high, ref Leader<Worst> leader)
    {
        double left = high - Golden * (high - low);
        double right = low + Golden * (high - low);
        double atLeft = Take(standing, pieces, scale, left, ref leader);
        double atRight = Take(standing, pieces, scale, right, ref leader);
        while (high - low > 1e-8 * (_element.To - _element.From))
        {
            if (atLeft > atRight)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - Golden * (high - low);
                atLeft = Take(standing, pieces, scale, left, ref leader);
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + Golden * (high - low);
                atRight = Take(standing, pieces, scale, right, ref leader);
            }
        }
    }

    private double Take(
        StandingCurve standing, Range pieces, double scale, double position, ref Leader<Worst> leader)
    {
        RollingPeak peak = _element.Greatest(Curve.Deflection, position, scale);
        StandingPlace place = PlaceAt(standing, pieces, position);
        double value = standing.At(place.Piece, place.Share) + peak.Value;
        leader.Take(value, position, new Worst(place, _element.Train, peak));
        return value;
    }

    private RollingPeak At(int step, double scale)
    {
        RollingPeak peak = scale > 0 ? _greatest[step] : _least[step];
        return peak with { Value = Math.Abs(scale) * peak.Value };
    }

    private double PositionOf(int step) => step == Steps
        ? _element.To
        : _element.From + (_element.To - _element.From) * step / Steps;

    private static StandingPlace PlaceAt(StandingCurve standing, Range pieces, double position)
    {
        int piece = pieces.Start.Value;
        while (piece < pieces.End.Value - 1 && standing.Parts.Pieces[piece].To < position)
        {
            piece++;
        }

        Piece of = standing.Parts.Pieces[piece];
        double share = position == of.To ? 1 : Math.Clamp((position - of.From) / of.Length, 0, 1);
        return new StandingPlace(standing, piece, share);
    }
}
