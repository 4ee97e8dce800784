using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>The whole beam, or a part of it, as a printed greatest or least value speaks of it.</summary>
internal sealed class Stretch(BeamResponse response, double? from, double? to, double length)
{
    // Two places hold "the largest" of a symmetric beam; rounding must not choose between them.
    private const double Tie = 1e-9;

    private readonly bool _isWhole = from is null && to is null;

    internal Extreme Greatest(Curve curve) =>
        _isWhole ? response.ExtremesOf(curve).Max : Candidates(curve).MaxBy(extreme => extreme.Value);

    internal Extreme Least(Curve curve) =>
        _isWhole ? response.ExtremesOf(curve).Min : Candidates(curve).MinBy(extreme => extreme.Value);

    internal double LargestSize(Curve curve) => Math.Max(Math.Abs(Greatest(curve).Value), Math.Abs(Least(curve).Value));

    internal double PlaceOfLargestSize(Curve curve, double nearestTo)
    {
        double largest = LargestSize(curve);
        return Candidates(curve)
            .Where(extreme => Math.Abs(extreme.Value) >= largest * (1 - Tie))
            .MinBy(extreme => Math.Abs(extreme.Position - nearestTo))
            .Position;
    }

    private IEnumerable<Extreme> Candidates(Curve curve)
    {
        double start = from ?? 0;
        double end = to ?? length;
        return response.PeaksOf(curve)
            .Where(extreme => extreme.Position > start && extreme.Position < end)
            .Append(new Extreme(Answer.Of(curve, response.At(start).Right), start))
            .Append(new Extreme(Answer.Of(curve, response.At(end).Left), end));
    }
}
