using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Beams that are not known themselves: statics and P L³ / 3EI, worked apart.</summary>
public sealed class ToleranceBandsOfTheBeamTests
{
    private const double Close = 1e-6;
    private const double Force = 12_000;

    // 12 kN at 2 m of 6 ± 0.2 ± 0.1 m: 12 (1 - 2 / L) kN, with both off the same way.
    [Fact]
    public void TwoLengths_AreTakenAtTheirCorners()
    {
        ToleranceBands bands = Spans(2, 0.2, 0.1);

        Band left = bands.Reaction(0, 0).Vertical;

        Assert.Equal(Force * (1 - 2 / 5.7), left.Low, Close);
        Assert.Equal(Force * (1 - 2 / 6.3), left.High, Close);
        Assert.Equal(BandCertainty.Estimate, left.Certainty);
    }

    [Fact]
    public void EachInputByItself_LeavesTheOthersAsMeasured()
    {
        ImmutableArray<InputEffect> ranking = Spans(2, 0.1, 0.2, 0).Ranking(0, 0, ReactionPart.Vertical);

        Assert.Equal([1, 0, 2], ranking.Select(effect => effect.Input));
        Assert.Equal(Force * (2 / 6.0 - 2 / 6.2), ranking[0].Up, Close);
        Assert.Equal(Force * (2 / 6.0 - 2 / 5.8), ranking[0].Down, Close);
        Assert.Equal(Force * (2 / 5.8 - 2 / 6.0) / 0.2, ranking[0].PerUnit, 1e-5);
        Assert.Equal(Force * (2 / 6.0 - 2 / 6.1), ranking[1].Up, Close);
        Assert.Equal(Force * (2 / 6.0 - 2 / 5.9), ranking[1].Down, Close);
        Assert.Equal(new InputEffect(2, 0, 0, 0), ranking[2]);
    }

    // P a (L - a) / L under the load at a = 2 m; shear P (1 - a / L) and -P a / L.
    [Fact]
    public void Peaks_AreThoseOfTheWorstCorner()
    {
        ImmutableArray<PeakBand> peaks = Spans(2, 0.2, 0.1).Peaks(0);

        Assert.Equal(Force * 2 * 4.3 / 6.3, peaks[0].Greatest.High, 3);
        Assert.Equal(Force * (1 - 2 / 6.3), peaks[1].Greatest.High, Close);
        Assert.Equal(-Force * 2 / 5.7, peaks[1].Least.Low, Close);
        Assert.All(peaks, peak => Assert.Equal(BandCertainty.Estimate, peak.Greatest.Certainty));
    }

    // Seven are too many for all corners: what each does alone adds up.
    [Fact]
    public void ManyLengths_AddUpTheirEffects_OnFiguresAndPeaks()
    {
        ToleranceBands bands = Spans(2, [.. Enumerable.Repeat(0.01, 7)]);
        ImmutableArray<PeakBand> peaks = bands.Peaks(0);

        Assert.Equal(Force * (1 - 2 / 6.0 + 7 * (2 / 6.0 - 2 / 5.99)), bands.Reaction(0, 0).Vertical.Low, Close);
        Assert.Equal(Force * (1 - 2 / 6.0 + 7 * (2 / 6.0 - 2 / 6.01)), bands.Reaction(0, 0).Vertical.High, Close);
        Assert.Equal(Force * (2 * 4 / 6.0 + 7 * (2 * 4.01 / 6.01 - 2 * 4 / 6.0)), peaks[0].Greatest.High, 2);
        Assert.Equal(0, peaks[0].Least.Low, Close);
        Assert.Equal(Force * (1 - 2 / 6.0 + 7 * (2 / 6.0 - 2 / 6.01)), peaks[1].Greatest.High, Close);
        Assert.Equal(-Force * (2 / 6.0 + 7 * (2 / 5.99 - 2 / 6.0)), peaks[1].Least.Low, Close);
    }

    // The tip of a cantilever of 2 m is on every beam that is altered in its stiffness only: EI = 1e7 N·m² ± a tenth.
    [Fact]
    public void EndOfTheBeam_IsOnEveryBeamOfThatLength()
    {
        ToleranceProblem problem = new(Cantilever(1e7), [new InputSpread.OfBeam(1e6)], offsets => Cantilever(1e7 + offsets[0]));

        Band tip = ToleranceBands.Find(problem, new BeamSolver())!.At(0, 2).Left.Deflection;

        Assert.Equal(Force * 8 / 3 / 1.1e7, tip.Low, 1e-12);
        Assert.Equal(Force * 8 / 3 / 0.9e7, tip.High, 1e-12);

        static BeamModel Cantilever(double stiffness) => new(
            [new Span(2, stiffness, 1e9)], [Support.Fixed(0)], [], [new LoadCase("live", [new Load.Point(2, Force)])],
            [new Combination("service", CombinationBasis.Service, [1])]);
    }

    [Fact]
    public void EachCombination_HasItsOwnBands()
    {
        BeamModel model = Said.Simple(6, new Load.Point(2, Force)) with
        {
            Combinations =
            [
                new Combination("once", CombinationBasis.Service, [1]),
                new Combination("twice", CombinationBasis.Service, [2]),
                new Combination("thrice", CombinationBasis.Service, [3]),
            ],
        };
        ToleranceBands bands = ToleranceBands.Find(
            new ToleranceProblem(model, [new InputSpread.LoadSize(new LoadIndex(0, 0), 0.1)]), new BeamSolver())!;

        Assert.Equal(2 * 1.1 * Force * 4 / 6, bands.Reaction(1, 0).Vertical.High, Close);
        Assert.Equal(2 * 0.9 * Force * 2 / 6, bands.Reaction(1, 1).Vertical.Low, Close);
        Assert.Equal(3 * 1.1 * Force * 4 / 6, bands.Reaction(2, 0).Vertical.High, Close);
        Assert.Equal(3 * 1.1 * Force * 2 / 6, bands.Reaction(2, 1).Vertical.High, Close);
    }

    [Theory]
    [InlineData(SupportAction.Both)]
    [InlineData(SupportAction.PushesOnly)]
    public void BeamThatIsNoneWhereItIsOff_IsLeftOut_AndTold(SupportAction action)
    {
        BeamModel model = Said.Simple(6, new Load.Point(2, Force));
        BeamModel held = model with
        {
            Supports = model.Supports.SetItem(1, model.Supports[1] with { Action = action }),
        };

        ToleranceBands bands = ToleranceBands.Find(
            new ToleranceProblem(held, [new InputSpread.OfBeam(7)], _ => null), new BeamSolver())!;

        Assert.Equal(BandCertainty.Partial, bands.Certainty);
        Assert.Equal<double>([-7], bands.Gap!.Offsets);
        Assert.Null(bands.Gap.Outcome);
        Assert.Equal(Force * 4 / 6, bands.Reaction(0, 0).Vertical.High, Close);
        Assert.Equal(Force * 4 / 6, bands.Reaction(0, 0).Vertical.Low, Close);
    }

    // Without stiffness there is no deflection to tell.
    [Theory]
    [InlineData(true, new[] { Curve.Moment, Curve.Shear, Curve.Deflection })]
    [InlineData(false, new[] { Curve.Moment, Curve.Shear })]
    public void Peaks_AreOfDeflectionOnlyWhereStiffnessIsKnown(bool isKnown, Curve[] curves)
    {
        BeamModel model = Said.Simple(6, new Load.Point(2, Force)) with { HasAbsoluteStiffness = isKnown };

        ToleranceBands bands = ToleranceBands.Find(
            new ToleranceProblem(model, [new InputSpread.LoadPosition(new LoadIndex(0, 0), 0.5)]), new BeamSolver())!;

        Assert.Equal(curves, bands.Peaks(0).Select(peak => peak.Curve));
    }

    [Fact]
    public void WithoutTheAlteredBeam_ThereIsNothingToFind()
    {
        ToleranceProblem problem = new(Said.Simple(6, new Load.Point(2, Force)), [new InputSpread.OfBeam(0.1)]);

        ArgumentException fault = Assert.Throws<ArgumentException>(
            "problem", () => ToleranceBands.Find(problem, new BeamSolver()));

        Assert.StartsWith("An input that changes the beam itself needs the altered beam.", fault.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>("problem", () => ToleranceBands.Find(null!, new BeamSolver()));
        Assert.Throws<ArgumentNullException>("solver", () => ToleranceBands.Find(problem, null!));
    }

    private static ToleranceBands Spans(double at, params double[] halves) => ToleranceBands.Find(
        new ToleranceProblem(
            Said.Simple(6, new Load.Point(at, Force)),
            [.. halves.Select(half => new InputSpread.OfBeam(half))],
            offsets => Said.Simple(6 + offsets.Sum(), new Load.Point(at, Force))),
        new BeamSolver())!;
}
