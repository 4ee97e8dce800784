using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Beams that stand as typed and, somewhere within what was measured, tip or let a support go; worked here.</summary>
public sealed class ToleranceGapTests
{
    // 4 m and an overhang of 1.5 m, 1.2 kN/m between the supports: 9.6 kNm about B hold it down, so it tips beyond 6.4 kN at the tip.
    private const double Holding = 9_600;
    private const double Arm = 1.5;

    [Fact]
    public void BeamThatTipsWithinTheSizeOfALoad_HasNoBandThere()
    {
        ToleranceBands bands = Of(Overhang(SupportAction.PushesOnly, 6_000), Size(1, 0.12));

        Assert.Equal<double>([0.12], bands.Gap!.Offsets);
        Assert.Equal<int>([0], Assert.IsType<BeamOutcome.Tips>(bands.Gap.Outcome).LiftedOff);
        Band a = bands.Reaction(0, 0).Vertical;
        Assert.Equal((Holding - 6_000 * Arm) / 4, a.Low, 1e-9);
        Assert.Equal((Holding - 6_000 * 0.88 * Arm) / 4, a.High, 1e-9);
        Assert.Equal(BandCertainty.Partial, a.Certainty);
        Assert.Equal(BandCertainty.Partial, bands.Peaks(0)[0].Least.Certainty);
    }

    [Fact]
    public void BeamThatStandsAtEveryCorner_HasNoGap()
    {
        ToleranceBands bands = Of(Overhang(SupportAction.PushesOnly, 6_000), Size(1, 0.06));

        Assert.Null(bands.Gap);
        Assert.Equal(BandCertainty.Estimate, bands.Certainty);
    }

    // 6.24 kN alone, and 97 % of what holds alone, stand: 9.36 < 9.6 and 9.0 < 9.312. Together 9.36 > 9.312. What stands on B does nothing.
    [Fact]
    public void OnlyInputsThatItTakes_AreOffInTheGap()
    {
        BeamModel model = Overhang(SupportAction.PushesOnly, 6_000, new Load.Point(4, 1_000));

        ToleranceBands bands = Of(model, Size(2, 0.1), Size(1, 0.04), Size(0, 0.03));

        Assert.Equal<double>([0, 0.04, -0.03], bands.Gap!.Offsets);
    }

    // Eight inputs are too many for all corners. Each share of the tip alone stands; seven of the eight are 6.42 kN.
    [Theory]
    [InlineData(SupportAction.PushesOnly, 750, 0.08)]
    [InlineData(SupportAction.HoldsDownOnly, 875, -0.09)]
    public void ManyInputsThatTipItOnlyTogether_AreFound(SupportAction action, double each, double share)
    {
        BeamModel model = Overhang(action, each, [.. Enumerable.Repeat(new Load.Point(5.5, each), 7)]);
        InputSpread[] inputs = [.. Enumerable.Range(1, 8).Select(load => Size(load, Math.Abs(share)))];

        ToleranceGap gap = Of(model, inputs).Gap!;

        Assert.IsType<BeamOutcome.Tips>(gap.Outcome);
        int needed = (int)Math.Floor(((Holding / Arm) - 8 * each) / (each * share)) + 1;
        Assert.Equal(needed, gap.Offsets.Count(offset => offset == share));
        Assert.Equal(8 - needed, gap.Offsets.Count(offset => offset == 0));
    }

    // Two spans of 4 m, 7 kN/m and q: the far end gives 7/16·q·4 - 7·4/16, more than nothing while q is over 1 kN/m (three moments).
    [Theory]
    [InlineData(1_050, 0.1, true)]
    [InlineData(1_050, 0.04, false)]
    [InlineData(950, 0.1, false)] // It is loose as typed.
    public void SupportThatLetsGoOnlyWithinThePlusOrMinus_IsTold(double intensity, double share, bool isTold)
    {
        BeamModel both = Said.On(
            [4, 4], [0, 4, 8], new Load.Distributed(0, 4, 7_000, 7_000), new Load.Distributed(4, 8, intensity, intensity));
        BeamModel model = both with { Supports = both.Supports.SetItem(2, both.Supports[2] with { Action = SupportAction.PushesOnly }) };

        ToleranceBands bands = Of(model, Size(1, share));

        Assert.Equal<double>(isTold ? [-share] : [], bands.LetsGo(0, 2) ?? []);
        Assert.Null(bands.LetsGo(0, 1));
        Assert.Null(bands.Gap);
    }

    // Where it tips comes before where no beam is left, whichever is found first.
    [Fact]
    public void OfSeveralGaps_TheGravestIsTold()
    {
        ToleranceProblem problem = new(
            Overhang(SupportAction.PushesOnly, 6_000), [new InputSpread.OfBeam(1), Size(1, 0.12)],
            offsets => offsets[0] == 0 ? Overhang(SupportAction.PushesOnly, 6_000) : null);

        ToleranceGap gap = ToleranceBands.Find(problem, new BeamSolver())!.Gap!;

        Assert.Equal<double>([0, 0.12], gap.Offsets);
    }

    private static InputSpread.LoadSize Size(int load, double share) => new(new LoadIndex(0, load), share);

    private static ToleranceBands Of(BeamModel model, params InputSpread[] inputs) =>
        ToleranceBands.Find(new ToleranceProblem(model, [.. inputs]), new BeamSolver())!;

    private static BeamModel Overhang(SupportAction left, double tip, params Load[] others)
    {
        BeamModel model = Said.On(
            [4, 1.5], [0, 4], [new Load.Distributed(0, 4, 1_200, 1_200), new Load.Point(5.5, tip), .. others]);
        return model with { Supports = model.Supports.SetItem(0, model.Supports[0] with { Action = left }) };
    }
}
