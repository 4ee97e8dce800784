using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Reporting.Drawing;

namespace FieldCheck.Reporting.Pictures;

/// <summary>Where the edges of an envelope run: from break to break, both sides of a jump.</summary>
internal static class BandOutline
{
    private const int StepsBetweenBreaks = 24;
    private const int MostPlaces = 300;

    // Of the beam's length. At a break itself an edge is the more extreme of its two sides.
    private const double Beside = 1e-9;

    internal static IEnumerable<(double Place, EnvelopeBand Value)> Of(PlotCurve curve, PlotBand band)
    {
        ImmutableArray<double> breaks = curve.Breaks;
        int steps = Math.Max(1, Math.Min(StepsBetweenBreaks, MostPlaces / Math.Max(1, breaks.Length - 1)));
        double beside = Beside * curve.Length;
        (double Drawn, double Asked)[] places =
        [
            .. breaks.Skip(1).Zip(breaks).SelectMany(pair => Between(pair.Second, pair.First, steps, band)
                .Select(place => (place, Math.Clamp(place, pair.Second + beside, pair.First - beside)))),
        ];
        return places.Zip(band.At([.. places.Select(place => place.Asked)]), (place, value) => (place.Drawn, value));
    }

    private static IEnumerable<double> Between(double from, double to, int steps, PlotBand band) =>
        Enumerable.Range(0, steps + 1)
            .Select(step => step == steps ? to : from + (to - from) * step / steps)
            .Concat(new[] { band.Max.Position, band.Min.Position }.Where(place => place > from && place < to))
            .Order();
}
