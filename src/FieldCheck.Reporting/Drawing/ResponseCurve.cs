using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Makes a curve to draw of how a beam answers.</summary>
internal static class ResponseCurve
{
    // Far above the rounding of the solver, far below what could be seen.
    private const double RoundingShare = 1e-9;

    internal static PlotCurve Of(BuiltBeam beam, BeamResponse response, Curve curve, bool isSagDown)
    {
        BeamWords words = new(beam);
        CurveWords beside = CurveWords.Of(words, curve, isSagDown);
        return new PlotCurve
        {
            Length = beam.Model.Length,
            At = At(response, curve),
            Breaks = response.Breaks,
            Peaks = response.PeaksOf(curve),
            Zeros = response.ZerosOf(curve),
            Negligible = NegligibleOf(response, curve, beam.Model.Length),
            IsPositiveDown = curve is Curve.Deflection || (curve is Curve.Moment && isSagDown),
            Marks = [.. beam.Supports.Select(support => new PlotMark(support.Support.Position, support.Label))],
            Edge = beside.Edge,
            Heading = beside.Heading,
            Number = beside.Number,
            Say = beside.Say,
            Place = words.Place,
        };
    }

    private static Func<double, (double Left, double Right)> At(BeamResponse response, Curve curve) =>
        position =>
        {
            (SectionState left, SectionState right) = response.At(position);
            if (curve is not Curve.Deflection)
            {
                return (Of(left, curve), Of(right, curve));
            }

            // The beam does not end at zero deflection: past a free tip there is no curve to jump to.
            double inside = position <= 0 ? right.Deflection : left.Deflection;
            return (inside, inside);
        };

    private static double Of(SectionState state, Curve curve) => curve switch
    {
        Curve.Axial => state.Axial,
        Curve.Shear => state.Shear,
        Curve.Moment => state.Moment,
        Curve.Deflection => state.Deflection,
        _ => state.Slope,
    };

    /// <summary>What rounding may leave where exact arithmetic gives zero, from the forces that act.</summary>
    private static double NegligibleOf(BeamResponse response, Curve curve, double length)
    {
        double force = Math.Max(
            Math.Max(Largest(response, Curve.Axial), Largest(response, Curve.Shear)),
            Largest(response, Curve.Moment) / length);
        return curve switch
        {
            Curve.Deflection => RoundingShare * Largest(response, Curve.Deflection),
            Curve.Moment => RoundingShare * force * length,
            _ => RoundingShare * force,
        };
    }

    private static double Largest(BeamResponse response, Curve curve)
    {
        Extremes extremes = response.ExtremesOf(curve);
        return Math.Max(Math.Abs(extremes.Max.Value), Math.Abs(extremes.Min.Value));
    }
}
