using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tests.Drawing;

public sealed class DiagramPlotTests
{
    private static readonly PlotStyle Outline = new(IsFilled: false);

    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void ShearOfTheTrenchBearer_Filled_IsThePicture(int width) =>
        Matches($"shear-trench-{width}", SampleBeams.Trench.ShearCurve(), width, 10, new PlotStyle());

    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void MomentOfTheTrenchBearer_Filled_IsThePicture(int width) =>
        Matches($"moment-trench-{width}", SampleBeams.Trench.MomentCurve(), width, 10, new PlotStyle());

    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void ShearOfPointLoads_Outline_IsThePicture(int width) =>
        Matches($"shear-points-{width}", SampleBeams.PointLoads.ShearCurve(), width, 10, Outline);

    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void MomentOfPointLoads_Outline_IsThePicture(int width) =>
        Matches($"moment-points-{width}", SampleBeams.PointLoads.MomentCurve(), width, 10, Outline);

    [Fact]
    public void MomentOfTheTrenchBearer_SagDown_IsThePicture() =>
        Matches("moment-trench-sag-down", SampleBeams.Trench.MomentCurve(isSagDown: true), 60, 10, new PlotStyle());

    [Fact]
    public void MomentOfTheTrenchBearer_HalfBlocks_IsThePicture() => Matches(
        "moment-trench-blocks",
        SampleBeams.Trench.MomentCurve(),
        60,
        10,
        new PlotStyle(PlotGlyphs.HalfBlocks));

    [Fact]
    public void ShearOfTheTrenchBearer_WithMarginAndReadingLine_IsThePicture() => Matches(
        "shear-trench-reading", SampleBeams.Trench.ShearCurve(), 80, 6, new PlotStyle(Margin: 8, Reading: 1.25));

    [Fact]
    public void AxialForce_IsThePicture()
    {
        BuiltBeam beam = Bench.Beam(
            [4],
            [Support.Pin(0), Support.Roller(4)],
            [new Load.Point(1, 0, 3000), new Load.Distributed(2, 4, -2000, -2000, ActsAlong: true)]);
        Matches(
            "axial-60",
            PlotCurve.Of(beam, Bench.Answer(beam).Response, Curve.Axial),
            60,
            7,
            new PlotStyle(Margin: 8));
    }

    [Fact]
    public void AFreeTip_DoesNotCloseTheDeflection_AndABuiltInEnd_ClosesTheMoment()
    {
        BuiltBeam beam = Bench.Beam([2], [Support.Fixed(0)], [new Load.Point(2, 1000)]);
        BeamResponse response = Bench.Answer(beam).Response;
        Picture.Matches(
            "cantilever-40",
            [
                .. BeamSketch.Draw(beam, Bench.Answer(beam), 40, new SketchStyle()),
                .. DiagramPlot.Draw(PlotCurve.Of(beam, response, Curve.Moment), 40, 6, new PlotStyle()),
                .. DiagramPlot.Draw(PlotCurve.Of(beam, response, Curve.Deflection), 40, 6, new PlotStyle()),
            ]);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(10)]
    public void WithoutLoads_OnlyTheAxisIsDrawn(int height)
    {
        BuiltBeam beam = Bench.Beam([4], [Support.Pin(0), Support.Roller(4)], []);
        PlotCurve curve = PlotCurve.Of(beam, Bench.Answer(beam).Response, Curve.Moment);

        IEnumerable<string> rows = DiagramPlot.Draw(curve, 20, height, new PlotStyle()).Where(row => row.Length > 0);

        Assert.Equal(["A------------------B"], rows);
        Assert.Equal("peaks: zero all along", Assert.Single(DiagramPlot.PeakLines(curve, 40)));
    }

    [Fact]
    public void ASmallSignInThreeRows_IsStillToBeSeen() => Matches(
        "moment-trench-3-rows", SampleBeams.Trench.MomentCurve(), 60, 3, new PlotStyle());

    private static void Matches(
        string name, PlotCurve curve, int width, int height, PlotStyle style)
    {
        ImmutableArray<string> picture = DiagramPlot.Draw(curve, width, height, style);
        Picture.Matches(name, [.. picture, .. DiagramPlot.PeakLines(curve, width)]);
    }
}
