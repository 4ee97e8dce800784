using System.Collections.Immutable;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Peaks of a curve in words.</summary>
internal static class PeakWords
{
    /// <summary>One item for each peak, then the places of zero, then what the picture cannot show.</summary>
    internal static ImmutableArray<string> Items(PlotCurve curve)
    {
        PeakReading reading = new(curve);
        if (reading.Peaks.IsEmpty)
        {
            return ["zero all along"];
        }

        ImmutableArray<PlotPeak> shown = [.. reading.Peaks.Where(peak => curve.Number(peak.Value) != curve.Number(0))];
        if (shown.IsEmpty)
        {
            return [$"none larger than {curve.Number(0)}"];
        }

        ImmutableArray<double> zeros = reading.Zeros();
        string[] zero = zeros.IsEmpty ? [] : ["zero at " + string.Join(", ", zeros.Select(curve.Place))];
        double axis = PlotScale.OnAxis * reading.Largest;
        string[] hidden = shown.Any(peak => Math.Abs(peak.Value) <= axis)
            ? [$"(up to {curve.Number(axis).TrimStart('+')} lies on the axis)"]
            : [];
        return [.. shown.Select(peak => $"{curve.Say(peak.Value)} {Where(curve.Place, peak)}"), .. zero, .. hidden];
    }

    /// <summary>Where a peak stands.</summary>
    internal static string Where(Func<double, string> place, PlotPeak peak)
    {
        string from = place(peak.From);
        if (peak.IsStretch)
        {
            return $"from {from} to {place(peak.To)}";
        }

        return peak.Side switch
        {
            PeakSide.LeftOf => $"left of {from}",
            PeakSide.RightOf => $"right of {from}",
            _ => $"at {from}",
        };
    }
}
