using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>
/// Load, shear, moment, slope and deflection are each the integral of the one before. Between two places of one
/// stretch the integral of a polynomial is exact by quadrature, so no finite difference blurs the law.
/// </summary>
public sealed class DifferentialTests
{
    private const double Rounding = 1e-12;

    [Fact]
    public void ShearFallsByTheLoad() => Between((model, response, from, to, _) =>
    {
        double fall = response.At(from).Right.Shear - response.At(to).Left.Shear;
        return (Statics.SpreadBetween(model, from, to, along: false), fall, Curve.Shear);
    });

    [Fact]
    public void AxialForceFallsByTheLoadAlong() => Between((model, response, from, to, _) =>
    {
        double fall = response.At(from).Right.Axial - response.At(to).Left.Axial;
        return (Statics.SpreadBetween(model, from, to, along: true), fall, Curve.Axial);
    });

    [Fact]
    public void MomentGrowsByTheShear() => Between((_, response, from, to, _) =>
    {
        double growth = response.At(to).Left.Moment - response.At(from).Right.Moment;
        return (Quadrature.Integral(x => response.At(x).Right.Shear, from, to), growth, Curve.Moment);
    });

    [Fact]
    public void SectionTurnsByTheMomentOverTheFlexuralRigidity() => Between((_, response, from, to, span) =>
    {
        double turn = Bending.Rotation(span, response.At(to).Left) - Bending.Rotation(span, response.At(from).Right);
        double curvature = Quadrature.Integral(x => response.At(x).Right.Moment, from, to) / span.FlexuralRigidity;
        return (curvature, turn, Curve.Slope);
    });

    [Fact]
    public void DeflectionFallsByTheSlope() => Between((_, response, from, to, _) =>
    {
        double fall = response.At(from).Right.Deflection - response.At(to).Left.Deflection;
        return (Quadrature.Integral(x => response.At(x).Right.Slope, from, to), fall, Curve.Deflection);
    });

    private static void Between(
        Func<BeamModel, BeamResponse, double, double, Span, (double Expected, double Actual, Curve Curve)> law) =>
        Law.Holds(RandomBeam.Stable, model =>
        {
            BeamResponse response = Answer.To(model);
            Scale scale = new(model, response);
            foreach ((double start, double end, Span span) in Probes.Stretches(model, response))
            {
                // Ends that are not the stretch's own: a law that held only from end to end would be caught.
                double middle = start + (0.375 * (end - start));
                foreach ((double from, double to) in new[] { (start, middle), (middle, end) })
                {
                    (double expected, double actual, Curve curve) = law(model, response, from, to, span);
                    Law.Equal(expected, actual, Rounding * scale.Of(curve), $"{curve} from {from:R} to {to:R}");
                }
            }
        });
}
