using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>
/// Figures with loads changed and on other beams, mostly on two spans of 4 m: a load in the middle of one gives 13/32, 22/32
/// and -3/32 of it.
/// </summary>
public sealed class ExplanationBeamTests
{
    private const double More = 1000;

    // 12 kN in the left span would lift C by 1.125 kN, more than the 0.8125 kN of 2 kN in the right span. Without C, 2 kN hang
    // over by 2 m: A 6 - 1, B 6 + 3.
    [Fact]
    public void SupportThatPushesOnly_LetsGoUnderOneLoadMore()
    {
        ExplanationBeam beam = Beam(Two(SupportAction.PushesOnly, Said.Point(6, 2)));

        Assert.Equal([5, 9, 0], Kilo(beam.WithMore(new LoadChange(Said.Point(2, 12), 1))));
    }

    // 6 kN in the left span pull C up by 0.5625 kN; 4 kN in the right one push it down by 1.625.
    [Fact]
    public void SupportThatHoldsDownOnly_GoesSlackUnderOneLoadMore()
    {
        ExplanationBeam beam = Beam(Two(SupportAction.HoldsDownOnly, Said.Point(2, 6)));

        Assert.Equal([1, 9, 0], Kilo(beam.WithMore(new LoadChange(Said.Point(6, 4), 1))));
        Assert.Equal([4.875, 8.25, -1.125], Kilo(beam.WithMore(new LoadChange(Said.Point(2, 6), 1))));
    }

    [Fact]
    public void LoadsThatCannotAddUp_AreNotSolvedFor()
    {
        ExplanationBeam beam = Rough.Beam(
            Said.Verticals(Two(SupportAction.PushesOnly, Said.Point(2, 12), Said.Point(6, 2)), "5.00", "9.00", "0.00"));

        Assert.NotNull(beam.With([new LoadChange(Said.Point(2, 12), 0)]));
        Assert.Null(beam.With([new LoadChange(Said.Point(2, 12), 1)]));
    }

    // On another beam, with 12 kN for 6 kN in the left span, whether only C lets go or all supports would.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void OnAnotherBeam_SupportsLetGoToo(bool isEverySupportOneWay)
    {
        ExplanationBeam beam = Beam(Pushing(Said.Point(2, 6), Said.Point(6, 2)));
        BeamModel other = Pushing(Said.Point(2, 12), Said.Point(6, 2));

        Assert.Equal([5, 9, 0], Kilo(beam.On(other)));
        Assert.Equal([5, 9, 0], Kilo(beam.OnIfItStands(other)));

        BeamModel Pushing(params Load[] loads)
        {
            BeamModel model = Two(SupportAction.PushesOnly, loads);
            return isEverySupportOneWay
                ? model with { Supports = [.. model.Supports.Select(one => one with { Action = SupportAction.PushesOnly })] }
                : model;
        }
    }

    // A simple beam with a hinge in it cannot stand.
    [Fact]
    public void OnABeamThatNothingHolds_ThereAreNoFigures()
    {
        BeamModel model = Said.Simple(6, Said.Point(2, 12));

        Assert.Null(Beam(model).On(model with { Hinges = [3] }));
    }

    [Fact]
    public void OnABeamLoadedBeyondTheNumbers_ThereAreNoFigures()
    {
        BeamModel model = Said.Simple(6, Said.Point(2, 12));
        Load vast = new Load.Point(3, 1.7e308);

        Assert.Null(Beam(model).OnIfItStands(model with { Cases = [new LoadCase("vast", [vast, vast, vast])] }));
    }

    // One case acts across, the other along: 12 kN at 2 m, and 3 kN to the right that the pin at A takes.
    [Fact]
    public void OnAnotherBeam_EveryCaseActsItsOwnWay()
    {
        BeamModel model = Said.Simple(6, Said.Point(2, 12));
        model = model with { Cases = [.. model.Cases, new LoadCase("along", [new Load.Point(4, 0, 3000)])] };
        ExplanationBeam beam = Rough.Beam(Rough.Set(model, More, ReactionPart.Vertical, ReactionPart.Horizontal));

        Assert.Equal([8, -3, 4, 0], Kilo(beam.OnIfItStands(model)));
    }

    // On rollers nothing holds it along.
    [Fact]
    public void BeamOnRollers_CarriesALoadAcrossAndNoneAlong()
    {
        ExplanationBeam beam = Beam(
            Said.Simple(6, Said.Point(2, 12)) with { Supports = [Support.Roller(0), Support.Roller(6)] });

        Assert.Equal([11, 7], Kilo(beam.WithMore(new LoadChange(Said.Point(3, 6), 1))));
        Assert.Null(beam.WithMore(new LoadChange(new Load.Point(3, 6000, 1000), 1)));
        Assert.Null(beam.WithMore(new LoadChange(new Load.Distributed(1, 3, 6000, 6000, ActsAlong: true), 1)));
    }

    // Wind that pushes it along as well cannot be meant where nothing holds it, though the verticals would be those: 8 + 3 and
    // 4 + 3.
    [Fact]
    public void CombinationThatPushesABeamOffItsRollers_IsNoExplanation()
    {
        BeamModel model = Said.Simple(6, Said.Point(2, 12)) with { Supports = [Support.Roller(0), Support.Roller(6)] };
        model = model with
        {
            Cases = [.. model.Cases, new LoadCase("wind", [new Load.Point(3, 6000, 1000)])],
            Combinations = [new Combination("wind too", CombinationBasis.Service, [1, 1])],
        };

        Assert.DoesNotContain(
            Said.Explanations(Said.Verticals(model, "11.0", "7.00") with { Factors = [1, 0] }), one => one.Slip is Slip.OtherCombination);
    }

    [Fact]
    public void LoadOfNothingAlong_AsksForNothing()
    {
        ExplanationBeam beam = Beam(
            Said.Simple(6, Said.Point(2, 12)) with { Supports = [Support.Roller(0), Support.Roller(6)] });

        Assert.Equal([8, 4], Kilo(beam.WithMore(new LoadChange(new Load.Distributed(1, 3, 0, 0, ActsAlong: true), 1))));
    }

    // Built in at 0, hinged at 4 m, on a roller at 8 m. 8 kNm on the left part are held by the wall alone; on the right part the
    // roller pulls with 2 kN, so that the wall pushes with 2 kN, and about the wall 8 - 16 kNm are left for it to hold.
    [Theory]
    [InlineData(Side.Left, 0, -8, 0)]
    [InlineData(Side.Right, 2, 8, -2)]
    public void CoupleAtAHinge_TurnsItsOwnPart(Side side, double vertical, double moment, double roller)
    {
        BeamModel model = Said.On([4, 4], [0, 8]) with { Supports = [Support.Fixed(0), Support.Roller(8)], Hinges = [4] };
        ExplanationBeam beam = Rough.Beam(Rough.Set(model, More, ReactionPart.Vertical, ReactionPart.Moment));

        Assert.Equal([vertical, moment, roller, 0], Kilo(beam.WithMore(new LoadChange(new Load.Couple(4, 8000, side), 1))));
    }

    [Fact]
    public void SmallBeam_IsSolvedForAllThatIsAsked()
    {
        ExplanationBeam beam = Beam(Two(SupportAction.PushesOnly, Said.Point(6, 2)));

        beam.WithMore(new LoadChange(Said.Point(2, 12), 1));

        Assert.True(beam.IsAllSolved);
    }

    private static BeamModel Two(SupportAction last, params Load[] loads)
    {
        BeamModel model = Said.On([4, 4], [0, 4, 8], loads);
        return model with { Supports = model.Supports.SetItem(2, model.Supports[2] with { Action = last }) };
    }

    private static ExplanationBeam Beam(BeamModel model) => Rough.Beam(Rough.Set(model, More, ReactionPart.Vertical));

    private static double[] Kilo(double[]? figures) => Rough.Kilo(Assert.IsType<double[]>(figures));
}
