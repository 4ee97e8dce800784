using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Tables;

/// <summary>The greatest and least value of one quantity in words.</summary>
/// <param name="Curve">The quantity.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Items">The values with their places, larger size first; empty when it is zero all along.</param>
internal sealed record PeakRow(Curve Curve, string Name, ImmutableArray<string> Items)
{
    internal bool IsNothing => Items.IsEmpty;

    internal static PeakRow Of(BuiltBeam beam, BeamResponse response, Curve curve, bool isSpoken = false)
    {
        BeamWords words = new(beam, isSpoken);
        PlotCurve plot = ResponseCurve.Of(beam, response, curve, isSagDown: false);
        PeakReading reading = new(plot);
        Extremes extremes = response.ExtremesOf(curve);
        IEnumerable<Extreme> shown = new[] { extremes.Max, extremes.Min }
            .Where((extreme, i) => i == 0 ? extreme.Value > 0 : extreme.Value < 0)
            .Where(extreme => Math.Abs(extreme.Value) > plot.Negligible)
            .OrderByDescending(extreme => Math.Abs(extreme.Value));
        return new PeakRow(
            curve,
            NameOf(curve),
            [.. shown.Select(extreme => $"{Say(words, curve, extreme.Value)} {Where(words, reading.Read(extreme))}")]);
    }

    internal static string NameOf(Curve curve) => curve switch
    {
        Curve.Axial => "axial force",
        Curve.Shear => "shear",
        Curve.Moment => "moment",
        Curve.Slope => "slope",
        Curve.Deflection => "deflection",
        _ => throw new UnreachableException(),
    };

    /// <summary>A value with its unit and, for a deflection, its direction.</summary>
    internal static string Say(BeamWords words, Curve curve, double value) => curve switch
    {
        Curve.Moment => words.SaySigned(value, QuantityKind.Moment),
        Curve.Deflection => words.Movement(value),
        _ => words.SaySigned(value, QuantityKind.Force),
    };

    private static string Where(BeamWords words, PlotPeak peak) => PeakWords.Where(words.Place, peak);
}
