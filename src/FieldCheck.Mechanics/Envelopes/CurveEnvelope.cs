using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// The envelope of one quantity along the beam: of the combinations under which answers add up, and of the answers to
/// situations in which a support may let go.
/// </summary>
internal sealed class CurveEnvelope
{
    private readonly StandingCurve[] _greatest;
    private readonly StandingCurve[] _least;
    private readonly CurveParts _parts;
    private readonly Traffic? _traffic;
    private readonly LiftedAnswers? _lifted;

    internal CurveEnvelope(CurveParts parts, ImmutableArray<int> combinations, LiftedAnswers? lifted)
    {
        _parts = parts;
        _traffic = parts.Superposition.Traffic;
        _lifted = lifted;
        _greatest = [.. combinations.Select(combination => new StandingCurve(parts, combination, 1))];
        _least = [.. combinations.Select(combination => new StandingCurve(parts, combination, -1))];
        Extremes = ExtremesOn(0, parts.Pieces[^1].To, out bool isSettled);
        Certainty = !isSettled || lifted is { Certainty: EnvelopeCertainty.Estimate }
            ? EnvelopeCertainty.Estimate
            : EnvelopeCertainty.Exact;
    }

    internal GovernedExtremes Extremes { get; }

    internal EnvelopeCertainty Certainty { get; }

    /// <summary>The greatest and least over a stretch that begins and ends where elements meet.</summary>
    internal GovernedExtremes ExtremesOn(double from, double to) => ExtremesOn(from, to, out _);

    private GovernedExtremes ExtremesOn(double from, double to, out bool isSettled)
    {
        isSettled = true;
        Range pieces = Between(from, to);
        GovernedExtremes? found = _greatest.Length == 0 ? null : Find(pieces, out isSettled);
        return _lifted is null ? found! : _lifted.Joined(found, _parts.Curve, from, to);
    }

    internal ImmutableArray<EnvelopeBand> BandAt(ReadOnlySpan<double> places)
    {
        Dictionary<int, TrainElement[]> trains = [];
        ImmutableArray<EnvelopeBand>.Builder bands = ImmutableArray.CreateBuilder<EnvelopeBand>(places.Length);
        foreach (double place in places)
        {
            bands.Add(new EnvelopeBand(At(_greatest, 1, place, trains), 0 - At(_least, -1, place, trains)));
        }

        return bands.MoveToImmutable();
    }

    /// <summary>The greatest and least at one place, at a jump over both sides, and what makes them so.</summary>
    internal GovernedRange GovernedAt(double place) =>
        new(GovernedAt(_greatest, 1, place), GovernedAt(_least, -1, place));

    private Governed GovernedAt(StandingCurve[] curves, int sense, double place)
    {
        int first = FirstAt(place);
        int last = place == _parts.Pieces[first].To && first + 1 < _parts.Pieces.Length ? first + 1 : first;
        double most = double.NegativeInfinity;
        Worst worst = default;
        for (int piece = first; piece <= last; piece++)
        {
            double share = ShareOf(piece, place);
            foreach (StandingCurve curve in curves)
            {
                (Train? train, RollingPeak peak) = RollingAt(curve, piece, place);
                double value = curve.At(piece, share) + (train is null ? 0 : peak.Value);
                if (value > most)
                {
                    most = value;
                    worst = new Worst(new StandingPlace(curve, piece, share), train, peak);
                }
            }
        }

        Governed? known = curves.Length == 0
            ? null
            : new Governed(0 + sense * most, worst.Situation(jumpsBesideAxle: _parts.Curve == Curve.Shear));
        return _lifted is null ? known! : _lifted.GovernedAt(known, _parts.Curve, place, sense);
    }

    /// <summary>The train that adds most and where; null where every one takes away.</summary>
    private (Train? Train, RollingPeak Peak) RollingAt(StandingCurve curve, int piece, double place)
    {
        (Train? Train, RollingPeak Peak) most = (null, RollingPeak.None);
        foreach (TrainElement element in _traffic?.On(piece) ?? [])
        {
            double scale = curve.Sense * _traffic!.Factor(curve.Combination, element.Train);
            RollingPeak peak = scale == 0 ? RollingPeak.None : element.Greatest(_parts.Curve, place, scale);
            most = peak.Value > Math.Max(0, most.Peak.Value) ? (element.Train, peak) : most;
        }

        return most;
    }

    private GovernedExtremes Find(Range pieces, out bool isSettled)
    {
        Leader<Worst> greatest = StandingSearch.Greatest(_greatest, pieces);
        Leader<Worst> least = StandingSearch.Greatest(_least, pieces);
        isSettled = _traffic?.Take(_greatest, _least, pieces, ref greatest, ref least) ?? true;
        return new GovernedExtremes(Governed(greatest, 1), Governed(least, -1));
    }

    private GovernedExtreme Governed(Leader<Worst> leader, int sense) => new(
        0 + sense * leader.Value,
        leader.Position,
        leader.Situation.Situation(jumpsBesideAxle: _parts.Curve == Curve.Shear));

    private double At(StandingCurve[] curves, int sense, double place, Dictionary<int, TrainElement[]> trains)
    {
        ImmutableArray<Piece> pieces = _parts.Pieces;
        int piece = FirstAt(place);
        double most = Most(curves, piece, place, trains);
        most = _lifted is null ? most : Math.Max(most, _lifted.MostAt(_parts.Curve, place, sense));
        return place == pieces[piece].To && piece + 1 < pieces.Length
            ? Math.Max(most, Most(curves, piece + 1, place, trains))
            : most;
    }

    private double Most(StandingCurve[] curves, int piece, double place, Dictionary<int, TrainElement[]> trains)
    {
        double share = ShareOf(piece, place);
        double most = double.NegativeInfinity;
        foreach (StandingCurve curve in curves)
        {
            most = Math.Max(most, curve.At(piece, share) + Rolling(curve, piece, place, trains));
        }

        return most;
    }

    /// <summary>The most that any train adds; nothing where every one takes away.</summary>
    private double Rolling(StandingCurve curve, int piece, double place, Dictionary<int, TrainElement[]> trains)
    {
        double most = 0;
        if (_traffic is null)
        {
            return most;
        }

        if (!trains.TryGetValue(piece, out TrainElement[]? here))
        {
            here = trains[piece] = _traffic.On(piece);
        }

        foreach (TrainElement element in here)
        {
            double scale = curve.Sense * _traffic.Factor(curve.Combination, element.Train);
            most = scale == 0 ? most : Math.Max(most, element.Greatest(_parts.Curve, place, scale).Value);
        }

        return most;
    }

    private Range Between(double from, double to)
    {
        ImmutableArray<Piece> pieces = _parts.Pieces;
        int last = FirstAt(to);
        int first = from == 0 ? 0 : FirstAt(from) + 1;
        return first <= last && pieces[first].From == from && pieces[last].To == to
            ? first..(last + 1)
            : throw new ArgumentOutOfRangeException(nameof(from), from, "A stretch must run from node to node.");
    }

    private double ShareOf(int piece, double place)
    {
        Piece of = _parts.Pieces[piece];
        return place == of.To ? 1 : (place - of.From) / of.Length;
    }

    /// <summary>The first piece that ends at or right of a place.</summary>
    private int FirstAt(double place)
    {
        if (!(place >= _parts.Pieces[0].From && place <= _parts.Pieces[^1].To))
        {
            throw new ArgumentOutOfRangeException(nameof(place), place, "Must lie on the beam.");
        }

        int low = 0;
        int high = _parts.Pieces.Length - 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = _parts.Pieces[middle].To < place ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
