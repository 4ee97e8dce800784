using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Movement along the beam, toward the right end: from N over E·A and what the supports hold.</summary>
internal static class AlongMovement
{
    internal static bool IsKnownAt(Support support) =>
        support.Along is Restraint.Rigid || support.SurfaceSlope != 0;

    /// <summary>Movement at a support that holds along. On a slope: -sin·u + cos·v = -settlement, v up.</summary>
    internal static double KnownAt(Support support, BeamResponse response)
    {
        double up = -response.At(support.Position).Right.Deflection;
        return support.SurfaceSlope == 0
            ? 0
            : ((Math.Cos(support.SurfaceSlope) * up) + support.Settlement) / Math.Sin(support.SurfaceSlope);
    }

    internal static double At(BeamModel model, BeamResponse response, double x)
    {
        Support held = model.Supports.First(IsKnownAt);
        return KnownAt(held, response)
            + FromLeftEnd(model, response, x) - FromLeftEnd(model, response, held.Position);
    }

    internal static double FromLeftEnd(BeamModel model, BeamResponse response, double x) => Probes
        .Stretches(model, response)
        .Where(stretch => stretch.From < x)
        .Sum(stretch => Integral(response, axial => axial, stretch.From, Math.Min(stretch.To, x), stretch.Span));

    /// <summary>Sum of the sizes of what is added up: the scale of rounding.</summary>
    internal static double Size(BeamModel model, BeamResponse response) => Probes
        .Stretches(model, response)
        .Sum(stretch => Integral(response, Math.Abs, stretch.From, stretch.To, stretch.Span));

    private static double Integral(
        BeamResponse response, Func<double, double> taken, double from, double to, Span span) =>
        Quadrature.Integral(x => taken(response.At(x).Right.Axial), from, to) / span.AxialRigidity;
}
