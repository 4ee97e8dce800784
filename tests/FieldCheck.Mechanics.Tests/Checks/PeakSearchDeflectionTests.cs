using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Greatest deflections by textbook formulas, at places that no halving of the beam meets; worked apart.</summary>
public sealed class PeakSearchDeflectionTests
{
    private const double Length = 6;
    private const double Stiff = 1e7;

    private static readonly LoadIndex First = new(0, 0);
    private static readonly LoadIndex Second = new(0, 1);

    /// <summary>Of a load that grows to w: w L⁴ / EI times this, 0.5193 L from the thin end.</summary>
    private static readonly double Growing = GrowingAt(Math.Sqrt(1 - Math.Sqrt(8 / 15.0)));

    [Theory]
    [InlineData(1, 0.1, 6)]
    [InlineData(-1, 0.1, 6)]
    [InlineData(1, 1, 6)]
    [InlineData(1, 0.1, 60)]
    public void GrowingLoad(int sense, double share, double length)
    {
        BeamModel model = Said.Simple(length, new Load.Distributed(0, length, 0, sense * 600));

        PeakBand peak = Of(model, 600 * (1 + share) * length * length / (9 * Math.Sqrt(3)), new InputSpread.LoadSize(First, share));

        Near((1 + share) * 600 * Growing * Math.Pow(length, 4) / Stiff, sense > 0 ? peak.Greatest : PeakSearchTests.Turned(peak.Least));
    }

    // Shear alone bends it to the shape of the moments: w L² / 9√3 over GA.
    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void GrowingLoad_OnABeamThatOnlyShears(int sense)
    {
        double moment = 660 * 36 / (9 * Math.Sqrt(3));

        PeakBand peak = Of(
            Beam(1e12, 1e4, new Load.Distributed(0, 6, 0, sense * 600)), moment, new InputSpread.LoadSize(First, 0.1));

        Near(moment / 1e4, sense > 0 ? peak.Greatest : PeakSearchTests.Turned(peak.Least), 1e-6);
    }

    // Bending and shear together: w x (7L⁴ - 10L²x² + 3x⁴) / 360LEI and w x (L² - x²) / 6L over GA.
    [Fact]
    public void GrowingLoad_OnABeamThatShearsBesides()
    {
        double expected = Enumerable.Range(0, 6001).Max(i =>
            660 * (GrowingAt(i / 6000.0) * 1296 / 1e4 + i / 6000.0 * (1 - i / 6000.0 * i / 6000.0) * 6 / 1e3));

        PeakBand peak = Of(
            Beam(1e4, 1e3, new Load.Distributed(0, 6, 0, 600)), 660 * 36 / (9 * Math.Sqrt(3)), new InputSpread.LoadSize(First, 0.1));

        Near(expected, peak.Greatest, 1e-6);
    }

    // 300 N/m up at the left end, 600 N/m down at the right: EI w'' = -M with M = 150 x² - 25 x³, w = 0 at both ends, so
    // EI w = 1.25 x⁵ - 12.5 x⁴ + 1080 x.
    [Fact]
    public void LoadThatChangesItsSense()
    {
        BeamModel model = Said.Simple(Length, new Load.Distributed(0, 6, -300, 600));
        double expected = Enumerable.Range(0, 60_001).Select(i => i / 1e4).Max(x =>
            1.25 * Math.Pow(x, 5) - 12.5 * Math.Pow(x, 4) + 1080 * x);

        Near(1.1 * expected / Stiff, Of(model, 880, new InputSpread.LoadSize(First, 0.1)).Greatest, 1e-7);
    }

    // 600 N/m up at the left end, down at the right: half a wave up and half a wave down, EI w = 100 / 3 times
    // x⁵ / 20 - 3x⁴ / 4 + 3x³ - 10.8 x.
    [Fact]
    public void LoadThatTurnsTheBeamBothWays()
    {
        BeamModel model = Said.Simple(Length, new Load.Distributed(0, 6, -600, 600));
        double expected = 100 / 3.0 * Enumerable.Range(0, 60_001).Select(i => i / 1e4).Max(x =>
            Math.Pow(x, 5) / 20 - 0.75 * Math.Pow(x, 4) + 3 * Math.Pow(x, 3) - 10.8 * x);

        PeakBand peak = Of(model, 380, new InputSpread.LoadSize(First, 0.1));

        Near(1.1 * expected / Stiff, peak.Greatest, 1e-7);
        Near(1.1 * expected / Stiff, PeakSearchTests.Turned(peak.Least), 1e-7);
    }

    // P b (L² - b²)^1.5 / 9√3LEI with the load at 2.3 m, as near to the middle as it comes.
    [Fact]
    public void ForceThatMayMove()
    {
        BeamModel model = Said.Simple(Length, new Load.Point(1.6, 1_000));

        PeakBand peak = Of(model, 1_000 * 2.3 * 3.7 / 6, new InputSpread.LoadPosition(First, 0.7));

        Near(1_000 * 2.3 * Math.Pow(36 - 2.3 * 2.3, 1.5) / (9 * Math.Sqrt(3) * 6 * Stiff), peak.Greatest);
    }

    // P L³ / 48EI where it may stand in the middle.
    [Theory]
    [InlineData(6, 3.35, 2.15)]
    [InlineData(60, 33.5, 21.5)]
    public void ForceThatMayStandInTheMiddle(double length, double position, double half)
    {
        BeamModel model = Said.Simple(length, new Load.Point(position, 1_000));

        PeakBand peak = Of(model, 1_000 * length / 4, new InputSpread.LoadPosition(First, half));

        Near(1_000 * Math.Pow(length, 3) / 48 / Stiff, peak.Greatest);
    }

    // P L / 4GA: a kink under the load that stands in the middle.
    [Fact]
    public void ForceThatMayMove_OnABeamThatOnlyShears()
    {
        PeakBand peak = Of(Beam(1e12, 1e4, new Load.Point(2.3, 1_000)), 1_500, new InputSpread.LoadPosition(First, 1));

        Near(0.15, peak.Greatest, 1e-6);
    }

    // P down and P up anywhere from 1 to 5.2 m: down at the section, up at 5.2 m: x (6 - x) / 6 - 0.8 x / 6, most at 2.6 m.
    [Fact]
    public void ForcesBothWaysThatMayMove_OnABeamThatOnlyShears()
    {
        PeakBand peak = Of(
            Beam(1e12, 1e4, new Load.Point(3.1, 1_000), new Load.Point(3.1, -1_000)), 1_500,
            new InputSpread.LoadPosition(First, 2.1), new InputSpread.LoadPosition(Second, 2.1));

        Near(0.1 * 2.6 * 2.6 / 6, peak.Greatest, 1e-6, 1e-3);
    }

    // A couple at the right end: C L² / 9√3EI, L / √3 from the left.
    [Fact]
    public void CoupleThatMayMoveToTheEnd()
    {
        BeamModel model = Said.Simple(Length, new Load.Couple(5.5, 1_000));

        PeakBand peak = Of(model, 1_000, new InputSpread.LoadPosition(First, 0.5));

        Near(1_000 * 36 / (9 * Math.Sqrt(3) * Stiff), peak.Greatest);
    }

    // Hinged over the middle supports: a stiff span with a thousand times the load, then soft ones, all alike.
    [Theory]
    [InlineData(1)]
    [InlineData(36)]
    public void SoftSpans_BesideAStiffOneWithFarGreaterMoments(int soft)
    {
        BeamModel row = PeakSearchTests.Row(soft + 1, span => span == 0 ? 600_000 : 600);
        BeamModel model = new(
            [new Span(6, 1e14, 1e9), .. row.Spans[1..]], row.Supports, row.Hinges, row.Cases, row.Combinations);

        PeakBand peak = Of(model, 660_000 * 36 / (9 * Math.Sqrt(3)), new InputSpread.AllLoads(0.1));

        Near(660 * Growing * 1296 / Stiff, peak.Greatest, above: 1e-3);
    }

    // So many peaks that not all are searched to the end: then the band says that it may be farther out than need be.
    [Fact]
    public void MorePeaksThanAreSearched_GiveABound()
    {
        double expected = 660 * Growing * 1296 / Stiff;

        Band greatest = Of(PeakSearchTests.Row(60, _ => 600), 660 * 36 / (9 * Math.Sqrt(3)), new InputSpread.AllLoads(0.1)).Greatest;

        Assert.InRange(greatest.High, expected, 1.05 * expected);
        Assert.Equal(BandCertainty.Bound, greatest.Certainty);
    }

    private static double GrowingAt(double share) =>
        share * (7 - 10 * share * share + 3 * Math.Pow(share, 4)) / 360;

    private static BeamModel Beam(double bending, double shear, params Load[] loads) => new(
        [new Span(Length, bending, 1e9, shear)],
        [Support.Pin(0), Support.Roller(Length)],
        [],
        [new LoadCase("live", [.. loads])],
        [new Combination("service", CombinationBasis.Service, [1])]);

    private static PeakBand Of(BeamModel model, double momentSize, params InputSpread[] inputs) =>
        PeakSearch.Of(PeakSearchTests.Of(model, [.. inputs]), Curve.Deflection, momentSize);

    private static void Near(double expected, Band band, double below = 1e-9, double above = 1.01e-4)
    {
        Assert.InRange(band.High, expected * (1 - below), expected * (1 + above));
        Assert.Equal(BandCertainty.Exact, band.Certainty);
    }
}
