using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Reporting.Tests.Tables;
using FieldCheck.Sheet;

namespace FieldCheck.Reporting.Tests.Drawing;

/// <summary>The envelope drawn round a curve: two bays of 4 m, 3 kN/m that may stand on either.</summary>
public sealed class PlotBandTests
{
    private static readonly Calculation TwoBays = Sheets.Run(EnvelopePanelTests.Bays(2, "3 kN/m"));

    [Theory]
    [InlineData(Curve.Moment, "band-moment")]
    [InlineData(Curve.Shear, "band-shear")]
    public void Envelope_IsDrawnWithStarsRoundTheCurve(Curve curve, string picture) => Picture.Matches(
        picture, [.. DiagramPlot.Draw(Drawn(curve), 60, 10, new PlotStyle()), .. PeakLines.Of([Drawn(curve)], 60, 9)]);

    [Fact]
    public void Legend_SaysWhichLineIsWhich() => Assert.Equal(
        "curve: all loads   * service envelope: live bay by bay",
        PlotBand.Legend(TwoBays.Beam!, TwoBays.Envelopes[0], 0));

    [Fact]
    public void BothEndsOfTheEnvelope_AreNamedBeforeThePeaksOfTheCurve() => Assert.StartsWith(
        "moment: max +4.59 at 1.75 m   min -6.00 at B",
        PeakLines.Of([Drawn(Curve.Moment)], 100, 9)[0],
        StringComparison.Ordinal);

    private static PlotCurve Drawn(Curve curve)
    {
        BeamOutcome.Stands stands = Assert.IsType<BeamOutcome.Stands>(TwoBays.Outcome);
        Envelope envelope = Assert.Single(TwoBays.Envelopes);
        return PlotCurve.Of(TwoBays.Beam!, stands.Combinations[0].Response, curve) with { Band = PlotBand.Of(envelope, curve) };
    }
}
