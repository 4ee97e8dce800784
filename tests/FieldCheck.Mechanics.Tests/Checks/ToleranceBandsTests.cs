using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Bands that a pencil can follow; statics and textbook influence lines, worked here.</summary>
public sealed class ToleranceBandsTests
{
    private const double Close = 1e-9;

    private static readonly LoadIndex First = new(0, 0);

    [Fact]
    public void SimpleSpan_SizeAndPlace_IsTheSumOfThePoorestCorner()
    {
        ToleranceBands bands = Of(
            Simple(6, new Load.Point(2, 10_000)),
            new InputSpread.LoadSize(First, 0.1), new InputSpread.LoadPosition(First, 0.1));

        Band left = bands.Reaction(0, 0).Vertical;
        Band right = bands.Reaction(0, 1).Vertical;

        Assert.Equal(9_000 * (6 - 2.1) / 6, left.Low, Close);
        Assert.Equal(11_000 * (6 - 1.9) / 6, left.High, Close);
        Assert.Equal(9_000 * 1.9 / 6, right.Low, Close);
        Assert.Equal(11_000 * 2.1 / 6, right.High, Close);
        Assert.Equal(BandCertainty.Exact, left.Certainty);
    }

    [Fact]
    public void Ranking_NamesEachInputByItself_TheGreatestFirst()
    {
        ToleranceBands bands = Of(
            Simple(6, new Load.Point(2, 10_000)),
            new InputSpread.LoadPosition(First, 0.1), new InputSpread.LoadSize(First, 0.1));

        ImmutableArray<InputEffect> ranking = bands.Ranking(0, 0, ReactionPart.Vertical);

        Assert.Equal([1, 0], ranking.Select(effect => effect.Input));
        Assert.Equal(1_000.0 * 4 / 6, ranking[0].Size, Close);
        Assert.Equal(10_000 * 0.1 / 6, ranking[1].Size, Close);
        Assert.Equal(10_000.0 / 6, ranking[1].PerUnit, 1e-7);
    }

    /// <summary>
    /// Two equal spans, a load a from the far end of the one: the far reaction of the other is -P·a(L² - a²)/4L³, least
    /// at a = L/√3 (three moments). The corners of the range both miss it.
    /// </summary>
    [Fact]
    public void TwoSpans_PlaceRange_TakesTheExtremeInsideIt()
    {
        ToleranceBands bands = Of(
            TwoSpans(new Load.Point(10 - 5 * 0.57, 1_000)), new InputSpread.LoadPosition(First, 0.5));

        Assert.Equal(-1_000 / (6 * Math.Sqrt(3)), bands.Reaction(0, 0).Vertical.Low, Close);
    }

    /// <summary>A load on the first of two equal spans alone: 7/16·qL at the outer support; beyond, it lifts again.</summary>
    [Fact]
    public void TwoSpans_EndOfSpreadLoadPastTheSupport_TakesTheChangeOfSign()
    {
        ToleranceBands bands = Of(
            TwoSpans(new Load.Distributed(0, 4.9, 1_000, 1_000)), new InputSpread.LoadTo(First, 0.6));

        Assert.Equal(7.0 / 16 * 1_000 * 5, bands.Reaction(0, 0).Vertical.High, 1e-8);
    }

    [Fact]
    public void SimpleSpan_PeakMoment_IsUnderTheLoadWhereverItMayStand()
    {
        ToleranceBands bands = Of(
            Simple(6, new Load.Point(2.9, 10_000)),
            new InputSpread.LoadSize(First, 0.05), new InputSpread.LoadPosition(First, 0.3));

        Band greatest = bands.Peaks(0).Single(peak => peak.Curve == Curve.Moment).Greatest;

        Assert.InRange(greatest.High, 10_500 * 6 / 4.0, 10_500 * 6 / 4.0 * 1.0005);
        Assert.Equal(BandCertainty.Exact, greatest.Certainty);
        Assert.True(greatest.Low <= 9_500 * 2.6 * 3.4 / 6);
    }

    [Fact]
    public void SimpleSpan_UniformLoad_PeaksFollowTheFormulas()
    {
        ToleranceBands bands = Of(
            Simple(6, new Load.Distributed(0, 6, 2_000, 2_000)), new InputSpread.LoadSize(First, 0.1));

        ImmutableArray<PeakBand> peaks = bands.Peaks(0);

        Assert.Equal([Curve.Moment, Curve.Shear, Curve.Deflection], peaks.Select(peak => peak.Curve));
        Assert.Equal(2_200 * 36 / 8.0, peaks[0].Greatest.High, 2);
        Assert.Equal(0, peaks[0].Least.Low, Close);
        Assert.Equal(6_600, peaks[1].Greatest.High, Close);
        Assert.Equal(-6_600, peaks[1].Least.Low, Close);
        Assert.Equal(5 * 2_200 * Math.Pow(6, 4) / 384 / 1e7, peaks[2].Greatest.High, 1e-6);
    }

    [Fact]
    public void KeptTotal_ThinsOutAsItGrowsLonger()
    {
        BeamModel model = Simple(8, new Load.Distributed(0, 4, 1_000, 1_000));

        Band kept = Of(model, new InputSpread.LoadTo(First, 0.4, KeepsTotal: true)).Reaction(0, 0).Vertical;
        Band free = Of(model, new InputSpread.LoadTo(First, 0.4)).Reaction(0, 0).Vertical;

        // W(1 - b/2L) with W = 4 kN; and q·b(1 - b/2L).
        Assert.Equal(4_000 * (1 - 4.4 / 16), kept.Low, 0.2);
        Assert.Equal(4_000 * (1 - 3.6 / 16), kept.High, 0.2);
        Assert.Equal(4_400 * (1 - 4.4 / 16), free.High, Close);
    }

    [Fact]
    public void EndsOfAVaryingLoad_EachByItself_AreAsFarOffAsBothTogetherAtMost()
    {
        BeamModel model = Simple(6, new Load.Distributed(0, 6, 1_000, 3_000));

        ToleranceBands bands = Of(
            model, new InputSpread.StartIntensity(First, 100), new InputSpread.EndIntensity(First, 200));

        // Triangles: a third at the thin end, two thirds at the thick one.
        double nominal = 1_000 * 6 / 2.0 * 2 / 3 + 3_000 * 6 / 2.0 / 3;
        Assert.Equal(nominal + 100 * 2 + 200 * 1, bands.Reaction(0, 0).Vertical.High, Close);
        Assert.Equal(nominal - 100 * 2 - 200 * 1, bands.Reaction(0, 0).Vertical.Low, Close);
    }

    [Fact]
    public void OneScaleErrorForAll_MultipliesWhatIsLeft_AndLeavesSettlementAlone()
    {
        BeamModel still = TwoSpans(new Load.Point(2, 10_000));
        BeamModel model = still with
        {
            Supports = still.Supports.SetItem(1, still.Supports[1] with { Settlement = 0.01 }),
        };
        BeamModel loadsOnly = still;
        double nominal = Nominal(model);
        double loads = Nominal(loadsOnly);

        Band band = Of(model, new InputSpread.AllLoads(0.1)).Reaction(0, 0).Vertical;

        Assert.Equal(nominal - 0.1 * loads, band.Low, 1e-7);
        Assert.Equal(nominal + 0.1 * loads, band.High, 1e-7);
    }

    /// <summary>3EI·δ/L³ at the outer supports of two equal spans whose middle support settles by δ, halved twice.</summary>
    [Fact]
    public void Settlement_IsExact()
    {
        ToleranceBands bands = Of(
            TwoSpans(new Load.Point(2, 10_000)), new InputSpread.Settlement(1, 0.002));

        Band band = bands.Reaction(0, 0).Vertical;

        Assert.Equal(3 * 1e7 * 0.002 / 125, band.HalfWidth, 1e-7);
        Assert.Equal(BandCertainty.Exact, band.Certainty);
    }

    [Fact]
    public void SpanLength_IsAnEstimateFromItsCorners()
    {
        BeamModel model = Simple(6, new Load.Point(2, 10_000));
        ToleranceProblem problem = new(
            model,
            [new InputSpread.OfBeam(0.2), new InputSpread.LoadPosition(First, 0.1)],
            offsets => Simple(6 + offsets[0], new Load.Point(2, 10_000)));

        ToleranceBands bands = ToleranceBands.Find(problem, new BeamSolver())!;
        Band band = bands.Reaction(0, 0).Vertical;

        Assert.Equal(10_000 * (1 - 1.9 / 6.2), band.High, Close);
        Assert.Equal(10_000 * (1 - 2.1 / 5.8), band.Low, Close);
        Assert.Equal(BandCertainty.Estimate, band.Certainty);
        Assert.Equal([1, 0], bands.Ranking(0, 0, ReactionPart.Vertical).Select(effect => effect.Input));
        Assert.Equal(10_000 * (2 / 5.8 - 2 / 6.0), -bands.Ranking(0, 0, ReactionPart.Vertical)[1].Down, 1e-8);
    }

    [Fact]
    public void ManyUncertainSpans_AddUpTheirEffects()
    {
        ImmutableArray<InputSpread> inputs = [.. Enumerable.Repeat(new InputSpread.OfBeam(0.01), 7)];
        ToleranceProblem problem = new(
            Simple(7, new Load.Point(3, 10_000)), inputs, offsets => Simple(7 + offsets.Sum(), new Load.Point(3, 10_000)));

        Band band = ToleranceBands.Find(problem, new BeamSolver())!.Reaction(0, 0).Vertical;

        Assert.Equal(10_000 * 4 / 7.0 + 7 * 10_000 * (3 / 7.0 - 3 / 7.01), band.High, 1e-8);
        Assert.Equal(BandCertainty.Estimate, band.Certainty);
    }

    [Fact]
    public void SupportThatOnlyPushes_LetsGoInsideTheBand()
    {
        BeamModel model = Overhanging(new Load.Point(4.1, 1_000));

        Band band = ToleranceBands.Find(
            new ToleranceProblem(model, [new InputSpread.LoadPosition(First, 0.2)]), new BeamSolver())!
            .Reaction(0, 2).Vertical;

        Assert.Equal(BandCertainty.Estimate, band.Certainty);
        Assert.Equal(0, band.Low, Close);
        Assert.True(band.High > 0);
    }

    [Fact]
    public void NothingUncertain_IsABandOfNoWidth()
    {
        ToleranceBands bands = Of(Simple(6, new Load.Point(2, 10_000)), new InputSpread.LoadPosition(First, 0));

        Assert.Equal(new Band(10_000 * 4 / 6.0, 10_000 * 4 / 6.0, BandCertainty.Exact), bands.Reaction(0, 0).Vertical);
        Assert.Equal(0, bands.At(0, 2).Left.Moment.HalfWidth);
    }

    [Fact]
    public void LoadThatMayStandOnEitherSide_SpreadsTheShearByItsWholeSize()
    {
        ToleranceBands bands = Of(Simple(6, new Load.Point(2, 6_000)), new InputSpread.LoadPosition(First, 0.5));

        Band shear = bands.At(0, 2.2).Left.Shear;

        // Just right of the section: R_A; just left of it: R_A less the load.
        Assert.Equal(6_000 * (1 - 2.2 / 6), shear.High, Close);
        Assert.Equal(6_000 * (1 - 2.2 / 6) - 6_000, shear.Low, Close);
    }

    /// <summary>At the free end itself the load may stand just there: then it is felt just right of it.</summary>
    [Fact]
    public void LoadThatMayStandAtTheEnd_IsFeltThere()
    {
        BeamModel model = Beam([new Span(6, 1e7, 1e9)], [Support.Pin(1), Support.Roller(6)], new Load.Point(0, 6_000));
        ToleranceBands bands = Of(model, new InputSpread.LoadPosition(First, 0.5), new InputSpread.LoadSize(First, 0.1));

        Band shear = bands.At(0, 0).Right.Shear;
        Band least = bands.Peaks(0).Single(peak => peak.Curve == Curve.Shear).Least;

        Assert.Equal(-6_600, shear.Low, Close);
        Assert.Equal(0, shear.High, Close);
        Assert.Equal(-6_600, least.Low, Close);
    }

    /// <summary>C at a on a simple span: C·a/L just left of it, -C·(1 - a/L) just right.</summary>
    [Fact]
    public void CoupleThatMayMove_PeaksJustBesideIt()
    {
        ToleranceBands bands = Of(
            Simple(6, new Load.Couple(2, 6_000)), new InputSpread.LoadPosition(First, 0.5), new InputSpread.LoadSize(First, 0.1));

        PeakBand moment = bands.Peaks(0).Single(peak => peak.Curve == Curve.Moment);

        Assert.Equal(6_600 * 2.5 / 6, moment.Greatest.High, 1);
        Assert.Equal(-6_600 * (1 - 1.5 / 6), moment.Least.Low, 1);
        Assert.Equal(BandCertainty.Exact, moment.Greatest.Certainty);
    }

    [Fact]
    public void BeamThatCanMove_HasNoBands() => Assert.Null(ToleranceBands.Find(
        new ToleranceProblem(
            new BeamModel([new Span(6, 1, 1)], [], [], [], []), []),
        new BeamSolver()));

    private static ToleranceBands Of(BeamModel model, params ReadOnlySpan<InputSpread> inputs) =>
        ToleranceBands.Find(new ToleranceProblem(model, [.. inputs]), new BeamSolver())!;

    private static double Nominal(BeamModel model) =>
        ((BeamOutcome.Stands)new BeamSolver().Solve(model)).Combinations[0].Response.Reactions[0].Vertical;

    private static BeamModel Simple(double length, Load load) =>
        Beam([new Span(length, 1e7, 1e9)], [Support.Pin(0), Support.Roller(length)], load);

    private static BeamModel TwoSpans(Load load) => Beam(
        [new Span(5, 1e7, 1e9), new Span(5, 1e7, 1e9)],
        [Support.Pin(0), Support.Roller(5), Support.Roller(10)],
        load);

    private static BeamModel Overhanging(Load load) => Beam(
        [new Span(4, 1e7, 1e9), new Span(4, 1e7, 1e9)],
        [Support.Pin(0), Support.Roller(4), Support.Roller(8) with { Action = SupportAction.PushesOnly }],
        load);

    private static BeamModel Beam(ImmutableArray<Span> spans, ImmutableArray<Support> supports, Load load) => new(
        spans,
        supports,
        [],
        [new LoadCase("live", [load])],
        [new Combination("all", CombinationBasis.Service, [1])]);
}
