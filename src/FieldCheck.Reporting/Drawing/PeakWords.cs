using System.Collections.Immutable;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Peaks of a curve in words.</summary>
internal static class PeakWords
{
    // What stays before all where not everything fits, and what goes first.
    private const double Foremost = 2;
    private const double OfZeros = -1;
    private const double OfHidden = -2;

    /// <summary>One item for each peak, then the places of zero, then what the picture cannot show.</summary>
    internal static ImmutableArray<string> Items(PlotCurve curve) => [.. Weighted(curve).Select(item => item.Text)];

    /// <summary>The same with how much each item is missed where it is left out: above all the greatest of each sign.</summary>
    internal static ImmutableArray<(string Text, double Weight)> Weighted(PlotCurve curve)
    {
        return curve.Band is PlotBand band ? [.. Edges(curve, band), .. OfCurve(curve)] : OfCurve(curve);
    }

    // Both ends of the envelope come first, each with its own name, for the curve's peaks follow.
    private static IEnumerable<(string Text, double Weight)> Edges(PlotCurve curve, PlotBand band)
    {
        string estimate = band.IsEstimate ? " (estimate)" : "";
        return new[] { ("max", band.Max), ("min", band.Min) }
            .Where(edge => curve.Number(edge.Item2.Value) != curve.Number(0))
            .Select(edge => (
                $"{edge.Item1} {curve.Say(edge.Item2.Value)} at {curve.Place(edge.Item2.Position)}{estimate}", 2 * Foremost));
    }

    private static ImmutableArray<(string Text, double Weight)> OfCurve(PlotCurve curve)
    {
        PeakReading reading = new(curve);
        if (reading.Peaks.IsEmpty)
        {
            return [("zero all along", Foremost)];
        }

        ImmutableArray<PlotPeak> shown = [.. reading.Peaks.Where(peak => curve.Number(peak.Value) != curve.Number(0))];
        if (shown.IsEmpty)
        {
            return [($"none larger than {curve.Number(0)}", Foremost)];
        }

        PlotPeak[] greatest =
        [
            .. shown.GroupBy(peak => Math.Sign(peak.Value)).Select(side => side.MaxBy(peak => Math.Abs(peak.Value))!),
        ];
        ImmutableArray<double> zeros = reading.Zeros();
        (string, double)[] zero = zeros.IsEmpty
            ? []
            : [("zero at " + string.Join(", ", zeros.Select(curve.Place)), OfZeros)];
        double axis = PlotScale.OnAxis * reading.Largest;
        (string, double)[] hidden = shown.Any(peak => Math.Abs(peak.Value) <= axis)
            ? [($"(up to {curve.Number(axis).TrimStart('+')} lies on the axis)", OfHidden)]
            : [];
        return
        [
            .. shown.Select(peak => (
                $"{curve.Say(peak.Value)} {Where(curve.Place, peak)}",
                greatest.Contains(peak) ? Foremost : Math.Abs(peak.Value) / reading.Largest)),
            .. zero,
            .. hidden,
        ];
    }

    /// <summary>Where a peak stands.</summary>
    internal static string Where(Func<double, string> place, PlotPeak peak)
    {
        string from = place(peak.From);
        if (peak.IsStretch && place(peak.To) is string to && to != from)
        {
            return $"from {from} to {to}";
        }

        return peak.Side switch
        {
            PeakSide.LeftOf => $"left of {from}",
            PeakSide.RightOf => $"right of {from}",
            _ => $"at {from}",
        };
    }
}
