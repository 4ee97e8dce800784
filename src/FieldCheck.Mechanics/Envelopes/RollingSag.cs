using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// The greatest deflection of standing loads and a train together, in one element: exact at each section, the
/// section found by steps and then by golden section.
/// </summary>
internal sealed class RollingSag
{
    /// <summary>Steps an element.</summary>
    private const int Steps = 8;

    private const double Golden = 0.6180339887498949;

    private readonly TrainElement _element;
    private readonly RollingPeak[] _least = new RollingPeak[Steps + 1];
    private readonly RollingPeak[] _greatest = new RollingPeak[Steps + 1];

    internal RollingSag(TrainElement element)
    {
        _element = element;
        for (int i = 0; i <= Steps; i++)
        {
            _greatest[i] = element.Greatest(Curve.Deflection, PositionOf(i), 1);
            _least[i] = element.Greatest(Curve.Deflection, PositionOf(i), -1);
        }

        element.Forget();
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

        _element.Forget();
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
