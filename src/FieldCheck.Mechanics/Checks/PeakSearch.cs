using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Checks;

/// <summary>
/// The greatest of a quantity along the beam over all that the loads may be. Between two places where the band is known
/// the quantity cannot rise above the higher end by more than the loads between them bend it: so what comes out is never
/// less than the truth, and the search goes on until it is hardly more.
/// </summary>
internal sealed class PeakSearch
{
    /// <summary>How near the search comes, as a share of the greatest size along the beam [–].</summary>
    private const double Nearness = 1e-4;

    private const int MostPlaces = 400;

    private readonly SuperposedBands _bands;
    private readonly Curve _curve;
    private readonly double _sign;
    private readonly LoadBetween _loads;
    private readonly double _momentSize;
    private double _best = double.NegativeInfinity;
    private BandCertainty _certainty = BandCertainty.Exact;
    private double _innerBest = double.NegativeInfinity;

    private PeakSearch(SuperposedBands bands, Curve curve, double sign, LoadBetween loads, double momentSize)
    {
        _bands = bands;
        _curve = curve;
        _sign = sign;
        _loads = loads;
        _momentSize = momentSize;
    }

    /// <summary>Bands of the greatest and the least value.</summary>
    /// <param name="bands">The bands at a place.</param>
    /// <param name="curve">Moment, shear or deflection.</param>
    /// <param name="momentSize">The greatest size of the moment [N·m]; used for the deflection only.</param>
    internal static PeakBand Of(SuperposedBands bands, Curve curve, double momentSize = 0)
    {
        LoadBetween loads = new(bands);
        Band greatest = new PeakSearch(bands, curve, 1, loads, momentSize).Search();
        Band least = new PeakSearch(bands, curve, -1, loads, momentSize).Search();
        return new PeakBand(curve, greatest, new Band(-least.High, -least.Low, least.Certainty));
    }

    private Band Search()
    {
        double[] places = [.. _loads.Places];
        PriorityQueue<Gap, double> open = new();
        for (int i = 0; i + 1 < places.Length; i++)
        {
            Open(Between(places[i], places[i + 1]));
        }

        double scale = Math.Max(Math.Abs(_best), Math.Abs(Scale()));
        int count = places.Length;
        while (count++ < MostPlaces + places.Length && open.TryPeek(out Gap gap, out double bound))
        {
            if (-bound <= _best + Nearness * scale)
            {
                break;
            }

            open.Dequeue();
            double middle = (gap.From.Position + gap.To.Position) / 2;
            if (middle > gap.From.Position && middle < gap.To.Position)
            {
                (Station left, Station right) = (At(middle, Side.Left), At(middle, Side.Right));
                Open(new Gap(gap.From, left));
                Open(new Gap(right, gap.To));
            }
        }

        double high = open.TryPeek(out _, out double rest) ? Math.Max(_best, -rest) : _best;
        bool isNear = high <= _best + 10 * Nearness * scale;
        BandCertainty certainty = isNear ? BandCertainty.Exact : BandCertainty.Bound;
        double low = Math.Min(_innerBest, _best);
        return new Band(low, high, certainty).AtBest(_certainty);

        void Open(Gap gap) => open.Enqueue(gap, -Bound(gap));

        double Scale()
        {
            Extremes nominal = _bands.Nominal.ExtremesOf(_curve);
            return Math.Max(Math.Abs(nominal.Max.Value), Math.Abs(nominal.Min.Value));
        }
    }

    private Gap Between(double from, double to) => new(At(from, Side.Right), At(to, Side.Left));

    private Station At(double position, Side side)
    {
        Band band = _bands.Of(Target.At(position, side, _curve));
        _certainty = band.AtBest(_certainty).Certainty;
        (double low, double high) = Signed(band, _sign);
        _best = Math.Max(_best, high);
        _innerBest = Math.Max(_innerBest, low);
        return new Station(position, low, high);
    }

    private static (double Low, double High) Signed(Band band, double sign) =>
        sign > 0 ? (band.Low, band.High) : (-band.High, -band.Low);

    /// <summary>What the quantity cannot exceed between two places.</summary>
    private double Bound(Gap gap)
    {
        double length = gap.To.Position - gap.From.Position;
        (double against, double with) = _loads.Across(gap.From.Position, gap.To.Position, _sign);
        (double pointAgainst, double pointWith) = _loads.Points(gap.From.Position, gap.To.Position, _sign);
        double higher = Math.Max(gap.From.High, gap.To.High);
        switch (_curve)
        {
            case Curve.Shear:
                double plain = Math.Min(
                    gap.From.High + with * length + pointWith, gap.To.High + against * length + pointAgainst);
                double moved = Math.Min(gap.From.High + with * length, gap.To.High + against * length);
                double pushes = _loads.Pushing(gap.From.Position, gap.To.Position);
                return pointWith * pointAgainst == 0
                    ? plain
                    : Math.Min(plain, moved + Drift(gap, length, [pointWith + pointAgainst, pushes, 0]));
            case Curve.Moment:
                double couples = _loads.Turning(gap.From.Position, gap.To.Position);
                double chord = higher + against * length * length / 8 + pointAgainst * length / 4
                    + Drift(gap, length, [0, 0, couples]);
                return chord <= _best || pointAgainst + pointWith + couples > 0
                    ? chord
                    : Math.Min(chord, BySlope(gap, length, against, with));
            default:
                return higher + Sag(gap, length, against + with, pointAgainst + pointWith, higher);
        }
    }

    /// <summary>
    /// Loads that may stand between are moved to the ends of the gap, none of them past the section: this much a figure
    /// between changes at most. How steep its influence line is there is straight in the place of the section, whichever
    /// side the load is on: in that of a force for the shear, in that of a couple for the moment.
    /// </summary>
    /// <param name="gap">The two places.</param>
    /// <param name="length">How far they are apart.</param>
    /// <param name="sizes">Of the loads across, along and the couples that may stand between.</param>
    private double Drift(Gap gap, double length, ReadOnlySpan<double> sizes)
    {
        if (sizes.IndexOfAnyExcept(0) < 0)
        {
            return 0;
        }

        (double from, double to) = (gap.From.Position, gap.To.Position);
        InfluenceLine left = _bands.Line(Target.At(from, Side.Right, _curve));
        InfluenceLine right = _bands.Line(Target.At(to, Side.Left, _curve));
        double drift = 0;
        for (int part = 0; part < sizes.Length; part++)
        {
            drift += sizes[part] == 0
                ? 0
                : sizes[part] * Math.Max(left.Steepness(part, from, to), right.Steepness(part, from, to));
        }

        return drift * length;
    }

    /// <summary>How far a deflected line can leave its chord: by its curvature, and its kinks where shear deforms it.</summary>
    private double Sag(Gap gap, double length, double intensity, double force, double higher)
    {
        Span span = _bands.Model.Spans[SpanAt((gap.From.Position + gap.To.Position) / 2)];
        double bend = 1 / span.FlexuralRigidity;
        double shear = span.ShearRigidity is double rigidity ? 1 / rigidity : 0;
        double kinks = shear * (intensity * length * length / 8 + force * length / 4);
        double sag = _momentSize * bend * length * length / 8 + kinks;
        if (higher + sag <= _best || _loads.HasMovingCouple)
        {
            return sag;
        }

        double moment = Math.Max(Size(gap.From.Position, Side.Right), Size(gap.To.Position, Side.Left))
            + intensity * length * length / 8 + force * length / 4;
        return Math.Min(sag, moment * bend * length * length / 8 + kinks);

        double Size(double position, Side side)
        {
            Band band = _bands.Of(Target.At(position, side, Curve.Moment));
            return Math.Max(Math.Abs(band.Low), Math.Abs(band.High));
        }
    }

    private int SpanAt(double position)
    {
        int span = 0;
        while (_bands.Model.JointPositions[span + 1] < position)
        {
            span++;
        }

        return span;
    }

    /// <summary>Where the shear keeps its sign the moment is greatest at an end.</summary>
    private double BySlope(Gap gap, double length, double against, double with)
    {
        (double low, double high) = Signed(
            _bands.Of(Target.At(gap.From.Position, Side.Right, Curve.Shear)), _sign);
        (double lowEnd, double highEnd) = Signed(
            _bands.Of(Target.At(gap.To.Position, Side.Left, Curve.Shear)), _sign);
        double most = Math.Min(high + with * length, highEnd + against * length);
        double least = Math.Max(low - against * length, lowEnd - with * length);
        return Math.Min(gap.From.High + length * Math.Max(0, most), gap.To.High + length * Math.Max(0, -least));
    }

    private readonly record struct Station(double Position, double Low, double High);

    private readonly record struct Gap(Station From, Station To);
}
