using System.Collections.Immutable;
using FieldCheck.Reporting.Drawing;

namespace FieldCheck.Reporting.Tests.Drawing;

public sealed class DiagramPlotTests
{
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
        Matches($"shear-points-{width}", SampleBeams.PointLoads.ShearCurve(), width, 10, new PlotStyle(IsFilled: false));

    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void MomentOfPointLoads_Outline_IsThePicture(int width) =>
        Matches($"moment-points-{width}", SampleBeams.PointLoads.MomentCurve(), width, 10, new PlotStyle(IsFilled: false));

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

    private static void Matches(
        string name, PlotCurve curve, int width, int height, PlotStyle style)
    {
        ImmutableArray<string> picture = DiagramPlot.Draw(curve, width, height, style);
        Picture.Matches(name, [.. picture, .. DiagramPlot.PeakLines(curve, width)]);
    }
}
