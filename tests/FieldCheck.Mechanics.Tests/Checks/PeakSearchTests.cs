using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Peaks at places that no halving of the beam meets: never less than the formula, and a ten-thousandth more at most.</summary>
public sealed class PeakSearchTests
{
    private static readonly LoadIndex First = new(0, 0);
    private static readonly LoadIndex Second = new(0, 1);

    // w x (L² - x²) / 6L for a load that grows to w: w L² / 9√3 at L / √3; shear w L / 6 and -w L / 3 at the ends.
    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void GrowingLoad_OnASimpleBeam(int sense)
    {
        SuperposedBands bands = Of([new Load.Distributed(0, 6, 0, sense * 600)], new InputSpread.LoadSize(First, 0.1));
        double moment = 600 * 36 / (9 * Math.Sqrt(3));

        PeakBand moments = PeakSearch.Of(bands, Curve.Moment);
        PeakBand shears = PeakSearch.Of(bands, Curve.Shear);

        Band worst = sense > 0 ? moments.Greatest : Turned(moments.Least);
        Near(1.1 * moment, worst);
        Assert.InRange(worst.Low, 0.9 * moment * (1 - 1e-3), 0.9 * moment);
        Near(1.1 * (sense > 0 ? 600 : 1200), shears.Greatest);
        Near(1.1 * (sense > 0 ? 1200 : 600), Turned(shears.Least));
        Assert.Equal(0, sense > 0 ? moments.Least.Low : moments.Greatest.High, 1e-9);
    }

    // Lifted by 300 N/m at the left end, pressed by 600 N/m at the right: no reaction at the left, 300 x - 75 x² N there,
    // most where the load changes its sense, 300 N at 2 m; -900 N at the right end.
    [Fact]
    public void Shear_IsGreatestWhereTheLoadChangesItsSense()
    {
        SuperposedBands bands = Of([new Load.Distributed(0, 6, -300, 600)], new InputSpread.LoadSize(First, 0.1));
        SuperposedBands turned = Of([new Load.Distributed(0, 6, 300, -600)], new InputSpread.LoadSize(First, 0.1));

        Nearly(330, PeakSearch.Of(bands, Curve.Shear).Greatest);
        Nearly(330, Turned(PeakSearch.Of(turned, Curve.Shear).Least));
        Near(990, PeakSearch.Of(turned, Curve.Shear).Greatest);
    }

    // Lifted by 3000 N/m at the left end: -5700 + 3000 x - 275 x², most at 60 / 11 m; D and U as below add D there.
    [Theory]
    [InlineData(0)]
    [InlineData(1000)]
    public void Shear_IsBoundedFromTheEndWhereItChangesLess(double force)
    {
        SuperposedBands bands = Of(
            [new Load.Point(5, force), new Load.Point(5, -force), new Load.Distributed(0, 6, -3000, 300)],
            new InputSpread.LoadPosition(First, 0.9), new InputSpread.LoadPosition(Second, 0.9));

        Near(90_000 / 11.0 - 5_700 + force, PeakSearch.Of(bands, Curve.Shear).Greatest, 5_700);
    }

    // The same mirrored: most where the load changes its sense at 4 m.
    [Fact]
    public void Shear_IsGreatestWhereTheLoadChangesItsSense_FromTheOtherEnd()
    {
        SuperposedBands bands = Of([new Load.Distributed(0, 6, 600, -300)], new InputSpread.LoadSize(First, 0.1));

        Nearly(330, Turned(PeakSearch.Of(bands, Curve.Shear).Least));
    }

    // Besides, D down and U up anywhere from 1 to 4 m: D just right and U just left of a section there add
    // D (1 - x / 6) + U x / 6, and the sum is greatest where 300 - 150 x = (D - U) / 6.
    [Theory]
    [InlineData(500, 500)]
    [InlineData(800, 500)]
    [InlineData(500, 800)]
    public void Shear_WithForcesBothWaysThatMayMove(double down, double up)
    {
        SuperposedBands bands = Of(
            [new Load.Point(2.5, down), new Load.Point(2.5, -up), new Load.Distributed(0, 6, -300, 600)],
            new InputSpread.LoadPosition(First, 1.5), new InputSpread.LoadPosition(Second, 1.5));
        double place = 2 - (down - up) / 900;

        Nearly(
            300 * place - 75 * place * place + down - (down - up) * place / 6, PeakSearch.Of(bands, Curve.Shear).Greatest);
    }

    // P L / 4 under a load that may stand in the middle, which no halving of its range meets.
    [Theory]
    [InlineData(2.3, 1)]
    [InlineData(3.5, 0.7)]
    public void MomentUnderAForceThatMayStandInTheMiddle(double position, double half)
    {
        SuperposedBands bands = Of([new Load.Point(position, 1_000)], new InputSpread.LoadPosition(First, half));
        SuperposedBands lifted = Of([new Load.Point(position, -1_000)], new InputSpread.LoadPosition(First, half));

        Near(1_500, PeakSearch.Of(bands, Curve.Moment).Greatest);
        Near(1_500, Turned(PeakSearch.Of(lifted, Curve.Moment).Least));
    }

    // A couple of 900 N·m anywhere from 1 to 5 m adds 900 x / 6 left of it to q x (6 - x) / 2 with q = 600 N/m: most just
    // left of it, where 3q - q x + 150 = 0.
    [Fact]
    public void MomentBesideACoupleThatMayMove()
    {
        SuperposedBands bands = Of(
            [new Load.Couple(3, 900), new Load.Distributed(0, 6, 600, 600)], new InputSpread.LoadPosition(First, 2));
        double place = 3 + 150 / 600.0;

        Near(300 * place * (6 - place) + 150 * place, PeakSearch.Of(bands, Curve.Moment).Greatest);
    }

    // The beam lifted at the left end as above: 150 x² - 150 x³ / L, most at 2L / 3: 200 L² / 9.
    [Theory]
    [InlineData(0.6)]
    [InlineData(6)]
    [InlineData(60)]
    public void MomentUnderALoadThatChangesItsSense(double length)
    {
        InputSpread size = new InputSpread.LoadSize(First, 0.1);
        BeamModel lifted = Said.Simple(length, new Load.Distributed(0, length, -300, 600));
        BeamModel turned = Said.Simple(length, new Load.Distributed(0, length, 300, -600));

        Near(220 * length * length / 9, PeakSearch.Of(Of(lifted, [size]), Curve.Moment).Greatest);
        Near(220 * length * length / 9, Turned(PeakSearch.Of(Of(turned, [size]), Curve.Moment).Least));
    }

    // Both ends fixed, a couple C at t = a / L: C (1 - t) (6 t² - 3 t + 1) just left of it, 5C / 9 at t = 2 / 3, where its
    // own slope is nil: no end of the range is as bad.
    [Fact]
    public void MomentBesideACoupleThatMayMove_BetweenFixedEnds()
    {
        BeamModel model = Said.Simple(6, new Load.Couple(3.9, 900)) with { Supports = [Support.Fixed(0), Support.Fixed(6)] };

        PeakBand moment = PeakSearch.Of(Of(model, [new InputSpread.LoadPosition(First, 1.5)]), Curve.Moment);

        Nearly(500, moment.Greatest);
    }

    // A cantilever is bent at its fixed end only: the greatest moment is nothing, at the free end.
    [Fact]
    public void Cantilever_HasItsGreatestMomentAtTheFreeEnd()
    {
        BeamModel model = Said.Simple(6, new Load.Distributed(0, 6, 200, 400)) with { Supports = [Support.Fixed(0)] };

        PeakBand moment = PeakSearch.Of(Of(model, [new InputSpread.LoadSize(First, 0.1)]), Curve.Moment);

        Assert.Equal(0, moment.Greatest.High, 1e-6);
        Near(1.1 * (200 * 18 + 200 * 6 * 2), Turned(moment.Least)); // 3600 and the triangle of 600 N at 4 m
    }

    // As many peaks as spans, all alike: simple beams in a row, hinged over the supports.
    [Fact]
    public void ManySpansAlike_AreAllSearched()
    {
        PeakBand peak = PeakSearch.Of(Of(Row(60, _ => 600), [new InputSpread.AllLoads(0.1)]), Curve.Moment);

        Near(660 * 36 / (9 * Math.Sqrt(3)), peak.Greatest, 1e4);
    }

    internal static BeamModel Row(int spans, Func<int, double> intensity) => new(
        [.. Enumerable.Range(0, spans).Select(_ => new Span(6, 1e7, 1e9))],
        [Support.Pin(0), .. Enumerable.Range(1, spans).Select(i => Support.Roller(6 * i))],
        [.. Enumerable.Range(1, spans - 1).Select(i => 6.0 * i)],
        [new LoadCase("live", [.. Enumerable.Range(0, spans).Select(i => new Load.Distributed(6 * i, 6 * i + 6, 0, intensity(i)))])],
        [new Combination("service", CombinationBasis.Service, [1])]);

    // What is bounded by a slope only comes as near as the number of places allows: to a thousandth.
    private static void Nearly(double expected, Band band) => Near(expected, band, 10 * expected);

    internal static void Near(double expected, Band band, double? scale = null)
    {
        Assert.InRange(band.High, expected * (1 - 1e-9), expected + 1.01e-4 * (scale ?? expected));
        Assert.Equal(BandCertainty.Exact, band.Certainty);
    }

    internal static Band Turned(Band band) => new(-band.High, -band.Low, band.Certainty);

    private static SuperposedBands Of(Load[] loads, params InputSpread[] inputs) => Of(Said.Simple(6, loads), [.. inputs]);

    internal static SuperposedBands Of(BeamModel model, ImmutableArray<InputSpread> inputs) =>
        new(SuperposedAnswers.Solve(new BeamSolver(), model, inputs)!, new Loading(0));
}
