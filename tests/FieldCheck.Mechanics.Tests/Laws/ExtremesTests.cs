using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Peaks, extremes and zeros are those of the curve itself, as looking along it shows.</summary>
public sealed class ExtremesTests
{
    private const double Rounding = 1e-12;

    // A root is found to some last digits of its place; the curve moves a little over that.
    private const double Found = 1e-9;

    [Fact]
    public void Extremes_BoundTheWholeCurve() => OnEveryCurve((model, response, curve, scale) =>
    {
        Extremes extremes = response.ExtremesOf(curve);
        double slack = Rounding * scale.Of(curve);
        foreach (double value in Dense(model, response).SelectMany(x => Both(model, response, curve, x)))
        {
            Assert.InRange(value, extremes.Min.Value - slack, extremes.Max.Value + slack);
        }
    });

    [Fact]
    public void Extremes_StandWhereTheyAreSaidToStand() => OnEveryCurve((model, response, curve, scale) =>
    {
        Extremes extremes = response.ExtremesOf(curve);
        Stands(extremes.Max, model, response, curve, scale);
        Stands(extremes.Min, model, response, curve, scale);
    });

    [Fact]
    public void Peaks_StandInOrderWhereTheyAreSaidToStand_AndHoldTheExtremes() =>
        OnEveryCurve((model, response, curve, scale) =>
        {
            Extreme[] peaks = [.. response.PeaksOf(curve)];
            Assert.Equal(peaks.Select(peak => peak.Position).Order(), peaks.Select(peak => peak.Position));
            Assert.All(peaks, peak => Assert.InRange(peak.Position, 0, model.Length));
            Assert.All(peaks, peak => Stands(peak, model, response, curve, scale));
            (Extreme max, Extreme min) = (response.ExtremesOf(curve).Max, response.ExtremesOf(curve).Min);
            double tie = Rounding * Math.Max(Math.Abs(max.Value), Math.Abs(min.Value));
            Law.Equal(max.Value, peaks.Max(peak => peak.Value), tie, "Greatest peak");
            Law.Equal(min.Value, peaks.Min(peak => peak.Value), tie, "Least peak");
        });

    [Fact]
    public void BetweenPeaks_TheCurveOnlyRisesOrOnlyFalls() => OnEveryCurve((model, response, curve, scale) =>
    {
        double slack = Rounding * scale.Of(curve);
        double[] turns = [0, .. response.PeaksOf(curve).Select(peak => peak.Position), model.Length];
        double[] places = Dense(model, response);
        foreach ((double from, double to) in turns.Pairwise().Where(pair => pair.First < pair.Second))
        {
            double[] values =
            [
                Answer.Of(curve, response.At(from).Right),
                .. places.Where(x => x > from && x < to).SelectMany(x => Both(model, response, curve, x)),
                Answer.Of(curve, response.At(to).Left),
            ];
            double[] steps = [.. values.Pairwise().Select(pair => pair.Second - pair.First)];
            Assert.True(
                steps.All(step => step >= -slack) || steps.All(step => step <= slack),
                $"{curve} turns between {from:R} and {to:R}.");
        }
    });

    [Fact]
    public void Zeros_AreNilOrJumpOverNil_AndTheSignHoldsBetween() => OnEveryCurve((model, response, curve, scale) =>
    {
        double slack = Found * scale.Of(curve);
        double[] zeros = [.. response.ZerosOf(curve)];
        Assert.Equal(zeros.Order(), zeros);
        foreach (double zero in zeros)
        {
            Assert.True(zero > 0 && zero < model.Length, $"{zero:R} is not inside.");
            double[] both = Both(model, response, curve, zero);
            bool spansNil = both.Min() <= slack && both.Max() >= -slack;
            Assert.True(spansNil, $"{curve} at {zero:R} is {both[0]:R}, {both[^1]:R}");
        }

        foreach ((double from, double to) in ((double[])[0, .. zeros, model.Length]).Pairwise())
        {
            double[] signed =
            [
                .. Dense(model, response)
                    .Where(x => x > from && x < to)
                    .SelectMany(x => Both(model, response, curve, x))
                    .Where(value => Math.Abs(value) > slack),
            ];
            Assert.True(
                signed.All(value => value > 0) || signed.All(value => value < 0),
                $"{curve} changes sign unseen between {from:R} and {to:R}.");
        }
    });

    [Fact]
    public void MomentPeakWhereNothingStands_HasNoShear() => Law.Holds(RandomBeam.Stable, model =>
    {
        BeamResponse response = Answer.To(model);
        Scale scale = new(model, response);
        foreach (Extreme peak in response.PeaksOf(Curve.Moment))
        {
            if (!Probes.Of(model, response).Contains(peak.Position))
            {
                Law.Equal(0, response.At(peak.Position).Left.Shear, Found * scale.Force, $"V at {peak.Position:R}");
            }
        }
    });

    private static void Stands(Extreme extreme, BeamModel model, BeamResponse response, Curve curve, Scale scale)
    {
        double nearest = Both(model, response, curve, extreme.Position).MinBy(value => Math.Abs(value - extreme.Value));
        Law.Equal(extreme.Value, nearest, Rounding * scale.Of(curve), $"{curve} at {extreme.Position:R}");
    }

    // Beyond the ends there is no beam, and what is said of it there is no part of the curve.
    private static double[] Both(BeamModel model, BeamResponse response, Curve curve, double x)
    {
        double left = Answer.Of(curve, response.At(x).Left);
        double right = Answer.Of(curve, response.At(x).Right);
        return x == 0 ? [right] : x == model.Length ? [left] : [left, right];
    }

    private static double[] Dense(BeamModel model, BeamResponse response) => Probes.Dense(model, response, inEach: 7);

    private static void OnEveryCurve(Action<BeamModel, BeamResponse, Curve, Scale> law) =>
        Law.Holds(RandomBeam.Stable, model =>
        {
            BeamResponse response = Answer.To(model);
            Scale scale = new(model, response);
            foreach (Curve curve in Enum.GetValues<Curve>())
            {
                law(model, response, curve, scale);
            }
        });
}
