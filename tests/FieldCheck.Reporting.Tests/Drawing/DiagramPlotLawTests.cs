using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;

namespace FieldCheck.Reporting.Tests.Drawing;

/// <summary>What holds for every diagram, whatever the curve.</summary>
public sealed class DiagramPlotLawTests
{
    private const int Many = 600;

    private static readonly Gen<(BrokenLine Line, int Width, int Height, PlotStyle Style)> AnyPlot = Gen.Select(
        BrokenLine.Any,
        Gen.Int[20, 200],
        Gen.Int[3, 20],
        Gen.Select(Gen.Bool, Gen.Int[0, 10], (isFilled, margin) => new PlotStyle(IsFilled: isFilled, Margin: margin)));

    [Fact]
    public void EveryPicture_HasItsRows_AndKeepsItsWidth() => AnyPlot.Sample(plot =>
    {
        ImmutableArray<string> rows = DiagramPlot.Draw(plot.Line.Curve(), plot.Width, plot.Height, plot.Style);

        Assert.Equal(plot.Height, rows.Length);
        Assert.All(rows, row => Assert.InRange(row.Length, 0, plot.Width));
        Assert.Contains(rows, row => row.Length == plot.Width);
    });

    [Fact]
    public void EveryAsciiPicture_IsPrintableAscii() => AnyPlot.Sample(plot => Assert.All(
        DiagramPlot.Draw(plot.Line.Curve(), plot.Width, plot.Height, plot.Style)
            .AddRange(DiagramPlot.PeakLines(plot.Line.Curve(), plot.Width))
            .SelectMany(row => row),
        c => Assert.InRange(c, ' ', '~')));

    [Fact]
    public void ALabel_NeverStandsOnAGlyph_AndKeepsABlankEachSide() => AnyPlot.Sample(plot =>
    {
        char[][] bare = Cells(plot, isLabelled: false);
        char[][] labelled = Cells(plot, isLabelled: true);
        for (int row = 0; row < bare.Length; row++)
        {
            for (int column = 0; column < bare[row].Length; column++)
            {
                char under = bare[row][column];
                char over = labelled[row][column];
                Assert.True(under == over || under is ' ' or ':', $"'{over}' stands on '{under}'");
                if (under != over && over != ' ')
                {
                    Assert.True(IsLabelOrBlank(bare, labelled, row, column - 1));
                    Assert.True(IsLabelOrBlank(bare, labelled, row, column + 1));
                }
            }
        }
    }, iter: Many);

    [Fact]
    public void EveryPeakOverOneAndAHalfPerCent_LeavesAMarkOnItsOwnSide() => AnyPlot.Sample(plot =>
    {
        char[][] cells = Cells(plot, isLabelled: false);
        int zero = Array.FindIndex(cells, row => row[0] == 'A');
        BeamColumns columns = new(plot.Line.Length, cells[0].Length);
        foreach (Extreme peak in plot.Line.Peaks().Where(peak => Math.Abs(peak.Value) > 0.015001 * plot.Line.Largest))
        {
            int at = columns.Of(peak.Position);
            char[][] side = peak.Value > 0 ? cells[..zero] : cells[(zero + 1)..];
            Assert.Contains(
                Enumerable.Range(at - 1, 3).Where(column => column >= 0 && column < cells[0].Length),
                column => side.Any(row => row[column] != ' '));
        }
    }, iter: Many);

    [Fact]
    public void EveryPeak_StandsInTheLineOfPeaks() => AnyPlot.Sample(plot =>
    {
        PlotCurve curve = plot.Line.Curve();
        string said = string.Join(' ', DiagramPlot.PeakLines(curve, plot.Width).Select(line => line.Trim()));
        foreach (Extreme peak in plot.Line.Peaks().Where(peak => curve.Number(peak.Value) != curve.Number(0)))
        {
            Assert.Contains(curve.Say(peak.Value), said, StringComparison.Ordinal);
        }
    });

    [Fact]
    public void EveryLineOfPeaks_KeepsItsWidth() => AnyPlot.Sample(plot => Assert.All(
        DiagramPlot.PeakLines(plot.Line.Curve(), plot.Width),
        line => Assert.InRange(line.Length, 1, plot.Width)));

    [Fact]
    public void DrawnTheOtherWayUp_SignsChangeSides_AndNumbersDoNot() => AnyPlot.Sample(plot =>
    {
        PlotCurve down = plot.Line.Curve() with { IsPositiveDown = true };
        ImmutableArray<string> rows = DiagramPlot.Draw(down, plot.Width, plot.Height, plot.Style with { Margin = 0 });
        int zero = rows.IndexOf(rows.First(row => row.StartsWith('A')));

        Assert.DoesNotContain(rows[..zero], row => row.Contains('+', StringComparison.Ordinal));
    });

    [Fact]
    public void HalfBlocks_KeepEverySignToo() => AnyPlot.Sample(plot =>
    {
        PlotStyle blocks = new(PlotGlyphs.HalfBlocks);
        ImmutableArray<string> rows =
            DiagramPlot.Draw(plot.Line.Curve(isLabelled: false), plot.Width, plot.Height, blocks);
        int zero = rows.IndexOf(rows.First(row => row.StartsWith('A')));
        bool isHigh = plot.Line.Peaks().Any(peak => peak.Value > 0.015001 * plot.Line.Largest);
        bool isLow = plot.Line.Peaks().Any(peak => peak.Value < -0.015001 * plot.Line.Largest);

        Assert.Equal(isHigh, rows[..zero].Any(row => row.Length > 0));
        Assert.Equal(isLow, rows[(zero + 1)..].Any(row => row.Length > 0));
    });

    private static char[][] Cells((BrokenLine Line, int Width, int Height, PlotStyle Style) plot, bool isLabelled) =>
    [
        .. DiagramPlot.Draw(plot.Line.Curve(isLabelled), plot.Width, plot.Height, plot.Style with { Margin = 0 })
            .Select(row => row.PadRight(plot.Width).ToCharArray()),
    ];

    private static bool IsLabelOrBlank(char[][] bare, char[][] labelled, int row, int column) =>
        column < 0
        || column >= bare[row].Length
        || labelled[row][column] == ' '
        || labelled[row][column] != bare[row][column];
}
