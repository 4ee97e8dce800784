using System.Collections.Immutable;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Draws shear, moment, axial force and deflection as rows of text.</summary>
/// <remarks>How the pictures are to be read: docs/sketches.md.</remarks>
public static class DiagramPlot
{
    private const int LeastColumns = 10;

    // Quantity and unit stand at the edge at any height; the convention only where all of it does.
    private const int LeastEdge = 2;

    /// <summary>The picture of a curve.</summary>
    /// <param name="curve">What to draw.</param>
    /// <param name="width">Columns in all, the margin among them; 20 to 200.</param>
    /// <param name="height">Rows; 3 to 20.</param>
    /// <param name="style">How to draw it.</param>
    /// <returns>Exactly <paramref name="height"/> rows, none longer than <paramref name="width"/>.</returns>
    public static ImmutableArray<string> Draw(PlotCurve curve, int width, int height, PlotStyle style)
    {
        ArgumentNullException.ThrowIfNull(curve);
        ArgumentNullException.ThrowIfNull(style);
        int margin = Math.Clamp(style.Margin, 0, Math.Max(width - LeastColumns, 0));
        BeamColumns columns = new(curve.Length, width - margin);
        PlotInk ink = PlotInk.Of(style);
        PlotScale scale = ScaleOf(curve, height, ink);
        PlotColumn[] trace = PlotTrace.Of(curve, columns, scale);

        Canvas canvas = new(columns.Width, height);
        canvas.Write(scale.ZeroRow, 0, new string(ink.Axis, columns.Width));
        for (int column = 0; column < trace.Length; column++)
        {
            DrawColumn(canvas, trace[column], column, scale, ink);
        }

        PlotEdges.Draw(canvas, curve, columns, scale, ink);
        DrawReading(canvas, style.Reading, columns, scale, ink);
        ZeroLine.Write(canvas, scale.ZeroRow, curve.Marks, columns);
        PlotLabels.Write(canvas, curve, trace, columns, scale, ink);
        ImmutableArray<string> edge = curve.Edge.Length <= height ? curve.Edge : curve.Edge[..LeastEdge];
        return [.. canvas.Lines(margin).Select((line, row) => AtEdge(edge, row, margin, line))];
    }

    /// <summary>All peaks and zeros of a curve in words, broken into lines.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="width">Columns of a line; 20 or more.</param>
    public static ImmutableArray<string> PeakLines(PlotCurve curve, int width)
    {
        ArgumentNullException.ThrowIfNull(curve);
        ImmutableArray<string> items = PeakWords.Items(curve);
        return TextFlow.Join(["peaks: " + items[0], .. items.Skip(1)], "   ", width, indent: 2);
    }

    private static PlotScale ScaleOf(PlotCurve curve, int height, PlotInk ink)
    {
        IEnumerable<double> edges = curve.Band is PlotBand band ? [band.Max.Value, band.Min.Value] : [];
        double[] heights =
            [0, .. curve.Peaks.Select(peak => peak.Value).Concat(edges).Select(value => PlotTrace.Up(curve, value))];
        return PlotScale.Fit(heights.Max(), -heights.Min(), height, ink.LevelsPerRow);
    }

    private static void DrawColumn(Canvas canvas, PlotColumn column, int at, PlotScale scale, PlotInk ink)
    {
        if (column.IsJump && !ink.IsSolid)
        {
            Fill(canvas, at, scale.RowOf(column.Low > 0 ? column.Low : Math.Min(column.High, 0)), scale, ink);
            for (int row = scale.RowOf(column.High); row <= scale.RowOf(column.Low); row++)
            {
                canvas[row, at] = row == scale.ZeroRow ? ink.Crossing : ink.Jump;
            }

            return;
        }

        int[] levels = column.IsJump ? [column.Low, column.High] : [column.Level, column.Low, column.High];
        foreach (int level in levels.Where(level => level != 0))
        {
            int row = scale.RowOf(level);
            Fill(canvas, at, row, scale, ink);
            canvas[row, at] = (level > 0 ? ink.Above : ink.Below)[scale.StepOf(level)];
        }

        if (column.IsJump)
        {
            canvas[scale.ZeroRow, at] = ink.Crossing;
        }
    }

    private static void Fill(Canvas canvas, int column, int row, PlotScale scale, PlotInk ink)
    {
        int step = Math.Sign(scale.ZeroRow - row);
        for (int at = row + step; at != scale.ZeroRow && step != 0; at += step)
        {
            canvas[at, column] = ink.Fill;
        }
    }

    private static void DrawReading(
        Canvas canvas, double? reading, BeamColumns columns, PlotScale scale, PlotInk ink)
    {
        if (reading is not double place)
        {
            return;
        }

        int column = columns.Of(place);
        for (int row = 0; row < canvas.Height; row++)
        {
            if (row == scale.ZeroRow || canvas.IsBlank(row, column) || canvas[row, column] == ink.Fill)
            {
                canvas[row, column] = ink.Reading;
            }
        }
    }

    private static string AtEdge(ImmutableArray<string> edge, int row, int margin, string line)
    {
        if (row >= edge.Length || margin < 2)
        {
            return line;
        }

        string word = edge[row].Length < margin ? edge[row] : edge[row][..(margin - 1)];
        return (word.PadRight(margin) + (line.Length > margin ? line[margin..] : "")).TrimEnd();
    }
}
