using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Tests.Drawing;

public sealed class BeamSketchTests
{
    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void TheTrenchBearer_IsThePicture(int width) =>
        Matches($"beam-trench-{width}", Bench.Trench(), width, new SketchStyle());

    [Fact]
    public void TheTrenchBearer_WithMarginAndReadingLine_IsThePicture() =>
        Matches("beam-trench-reading", Bench.Trench(), 80, new SketchStyle(Margin: 8, LabelRows: 1, Reading: 1.25));

    [Fact]
    public void EveryKindOfSupportAndLoad_IsThePicture() => Matches("beam-kinds", KindsOfAll(), 80, new SketchStyle());

    [Fact]
    public void EveryKindOfSupportAndLoad_InTwentyColumns_IsThePicture() =>
        Matches("beam-kinds-20", KindsOfAll(), 20, new SketchStyle());

    [Fact]
    public void SketchShearMomentAndDeflection_LineUp()
    {
        BuiltBeam beam = Bench.Trench();
        BeamResponse response = Bench.Answer(beam).Response;
        PlotStyle plot = new(Margin: 9);
        Picture.Matches(
            "beam-trench-page",
            [
                .. BeamSketch.Draw(beam, Bench.Answer(beam), 80, new SketchStyle(Margin: 9)),
                .. DiagramPlot.Draw(PlotCurve.Of(beam, response, Curve.Shear), 80, 7, plot),
                .. DiagramPlot.Draw(PlotCurve.Of(beam, response, Curve.Moment), 80, 7, plot),
                .. DiagramPlot.Draw(PlotCurve.Of(beam, response, Curve.Deflection), 80, 7, plot),
                .. DiagramPlot.PeakLines(PlotCurve.Of(beam, response, Curve.Deflection), 80),
            ]);
    }

    private static BuiltBeam KindsOfAll() => Bench.Beam(
        [4, 4, 4],
        [
            Support.Fixed(0),
            Support.Roller(4),
            Support.Spring(6.5, 2e5),
            Support.Roller(9, 0.2),
            Support.Guide(12),
        ],
        [
            new Load.Distributed(0, 12, 500, 500),
            new Load.Distributed(1, 3, 2000, 4000),
            new Load.Point(5, -3000),
            new Load.Couple(2, 5000),
            new Load.Couple(8, -2500),
            new Load.Point(10, 0, 1200),
            new Load.Distributed(10.5, 11.5, -1000, -1000),
            new Load.Point(11, 2500, -700),
        ],
        hinges: [7.5],
        units: UnitSystem.Si);

    private static void Matches(string name, BuiltBeam beam, int width, SketchStyle style)
    {
        ImmutableArray<string> rows = BeamSketch.Draw(beam, Bench.Answer(beam), width, style);
        Picture.Matches(name, rows);
    }
}
