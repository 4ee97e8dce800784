using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Bands where loads lift, act with a negative factor or in cases of their own; worked apart.</summary>
public sealed class SuperposedBandsTests
{
    private const double Close = 1e-6;

    private static readonly LoadIndex First = new(0, 0);

    // Two spans of 5 m, 10 kN at 2 m from the far end: -P a (L² - a²) / 4L³ = -840 N at the first support. The middle one
    // settles by 10 mm: 3EI δ / L³ = 2400 N more there (three moments). A tenth on the loads leaves the movement alone.
    [Fact]
    public void OneScaleErrorForAll_WidensWhatLifts()
    {
        BeamModel still = Said.On([5, 5], [0, 5, 10], new Load.Point(8, 10_000));
        BeamModel moved = still with
        {
            Supports = still.Supports.SetItem(1, still.Supports[1] with { Settlement = 0.01 }),
        };
        Target reaction = Target.Of(0, ReactionPart.Vertical);

        Same((-840 * 1.1, -840 * 0.9), Of(still, new InputSpread.AllLoads(0.1)).Of(reaction));
        Same((2400 - 840 * 1.1, 2400 - 840 * 0.9), Of(moved, new InputSpread.AllLoads(0.1)).Of(reaction));
    }

    // Minus 1.5 times 10 kN at 2 ± 0.1 m of 6 m, within a tenth: worst where the load alone is greatest.
    [Fact]
    public void NegativeFactor_TurnsTheBandRound()
    {
        BeamModel model = Said.Simple(6, new Load.Point(2, 10_000)) with
        {
            Combinations = [new Combination("lifted", CombinationBasis.Service, [-1.5])],
        };

        SuperposedBands bands = Of(model, new InputSpread.LoadPosition(First, 0.1), new InputSpread.LoadSize(First, 0.1));

        Same((-1.5 * 11_000 * 4.1 / 6, -1.5 * 9_000 * 3.9 / 6), bands.Of(Target.Of(0, ReactionPart.Vertical)));
    }

    // Each of two cases alone, whatever the factors of the combination; the load of the other does not count.
    [Fact]
    public void CaseAlone_HasItsOwnLoadsOnly_WithFactorOne()
    {
        BeamModel model = Said.Simple(6) with
        {
            Cases = [new LoadCase("dead", [new Load.Point(2, 6_000)]), new LoadCase("live", [new Load.Point(3, 600)])],
            Combinations = [new Combination("both", CombinationBasis.Service, [1.2, 1.6])],
        };
        ToleranceBands bands = ToleranceBands.Find(
            new ToleranceProblem(model, [new InputSpread.LoadSize(First, 0.1), new InputSpread.LoadPosition(new LoadIndex(1, 0), 0.5)]),
            new BeamSolver())!;

        Same((3_600, 4_400), bands.ReactionOfCase(0, 0)!.Vertical);
        Same((250, 350), bands.ReactionOfCase(1, 0)!.Vertical);
        Same((1.2 * 1_800 + 1.6 * 250, 1.2 * 2_200 + 1.6 * 350), bands.Reaction(0, 1).Vertical);
    }

    [Fact]
    public void CaseAlone_HasNoBandWhereASupportActsOneWay()
    {
        BeamModel model = Said.On([5, 5], [0, 5, 10], new Load.Point(2, 6_000));
        BeamModel oneWay = model with
        {
            Supports = model.Supports.SetItem(2, model.Supports[2] with { Action = SupportAction.PushesOnly }),
        };

        Assert.Null(ToleranceBands.Find(new ToleranceProblem(oneWay, []), new BeamSolver())!.ReactionOfCase(0, 0));
        Assert.NotNull(ToleranceBands.Find(new ToleranceProblem(model, []), new BeamSolver())!.ReactionOfCase(0, 0));
    }

    // Two rollers hold nothing lengthways: loads along that no combination takes leave the bands of the others alone.
    [Fact]
    public void LoadsAlongThatNothingHolds_DoNotCount()
    {
        BeamModel model = Said.Simple(6) with
        {
            Supports = [Support.Roller(0), Support.Roller(6)],
            Cases =
            [
                new LoadCase("dead", [new Load.Point(2, 6_000)]),
                new LoadCase("braking", [new Load.Distributed(1, 3, 100, 200, ActsAlong: true), new Load.Point(3, 0, 50)]),
            ],
            Combinations = [new Combination("dead", CombinationBasis.Service, [1, 0])],
        };

        SuperposedBands bands = Of(
            model, new InputSpread.LoadPosition(First, 0.5), new InputSpread.LoadSize(new LoadIndex(1, 0), 0.5),
            new InputSpread.LoadPosition(new LoadIndex(1, 1), 0.5));

        Same((3_500, 4_500), bands.Of(Target.Of(0, ReactionPart.Vertical)));
        Same((0, 0), bands.Of(Target.Of(0, ReactionPart.Horizontal)));
    }

    // 2 m whose ends may each be a metre off could meet.
    [Theory]
    [InlineData(1, BandCertainty.Estimate)]
    [InlineData(0.9, BandCertainty.Exact)]
    public void EndsThatCouldMeet_GiveAnEstimate(double half, BandCertainty certainty)
    {
        SuperposedBands bands = Of(
            Said.Simple(10, Said.Spread(4, 6, 1)), new InputSpread.LoadFrom(First, half));

        Assert.Equal(certainty, bands.Of(Target.Of(0, ReactionPart.Vertical)).Certainty);
    }

    private static SuperposedBands Of(BeamModel model, params ImmutableArray<InputSpread> inputs) =>
        new(SuperposedAnswers.Solve(new BeamSolver(), model, inputs)!, new Loading(0));

    private static void Same((double Low, double High) expected, Band band)
    {
        Assert.Equal(expected.Low, band.Low, Close);
        Assert.Equal(expected.High, band.High, Close);
    }
}
