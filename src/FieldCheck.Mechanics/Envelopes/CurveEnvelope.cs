using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The envelope of one quantity along the beam.</summary>
internal sealed class CurveEnvelope
{
    private readonly StandingCurve[] _greatest;
    private readonly StandingCurve[] _least;
    private readonly CurveParts _parts;

    internal CurveEnvelope(CurveParts parts, ImmutableArray<int> combinations)
    {
        _parts = parts;
        _greatest = [.. combinations.Select(combination => new StandingCurve(parts, combination, 1))];
        _least = [.. combinations.Select(combination => new StandingCurve(parts, combination, -1))];
        Extremes = new GovernedExtremes(Governed(_greatest), Governed(_least));
    }

    internal GovernedExtremes Extremes { get; }

    internal EnvelopeCertainty Certainty { get; init; } = EnvelopeCertainty.Exact;

    internal ImmutableArray<EnvelopeBand> BandAt(ReadOnlySpan<double> places)
    {
        ImmutableArray<EnvelopeBand>.Builder bands = ImmutableArray.CreateBuilder<EnvelopeBand>(places.Length);
        foreach (double place in places)
        {
            bands.Add(new EnvelopeBand(At(_greatest, place), 0 - At(_least, place)));
        }

        return bands.MoveToImmutable();
    }

    private static GovernedExtreme Governed(StandingCurve[] curves)
    {
        Leader<StandingPlace> leader = StandingSearch.Greatest(curves);
        return new GovernedExtreme(
            0 + curves[0].Sense * leader.Value, leader.Position, leader.Situation.Situation());
    }

    private double At(StandingCurve[] curves, double place)
    {
        ImmutableArray<Piece> pieces = _parts.Pieces;
        if (!(place >= pieces[0].From && place <= pieces[^1].To))
        {
            throw new ArgumentOutOfRangeException(nameof(place), place, "Must lie on the beam.");
        }

        int piece = FirstTo(place);
        double most = Most(curves, piece, place);
        return place == pieces[piece].To && piece + 1 < pieces.Length
            ? Math.Max(most, Most(curves, piece + 1, place))
            : most;
    }

    private double Most(StandingCurve[] curves, int piece, double place)
    {
        Piece of = _parts.Pieces[piece];
        double share = place == of.To ? 1 : (place - of.From) / of.Length;
        double most = double.NegativeInfinity;
        foreach (StandingCurve curve in curves)
        {
            most = Math.Max(most, curve.At(piece, share));
        }

        return most;
    }

    /// <summary>The first piece that ends at or right of a place.</summary>
    private int FirstTo(double place)
    {
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
