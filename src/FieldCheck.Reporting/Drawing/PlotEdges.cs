using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Draws the edges of an envelope round a curve; where both are in one place the curve is seen.</summary>
internal static class PlotEdges
{
    internal static void Draw(Canvas canvas, PlotCurve curve, BeamColumns columns, PlotScale scale, PlotInk ink)
    {
        if (curve.Band is not PlotBand band)
        {
            return;
        }

        ImmutableArray<EnvelopeBand> edges = band.At(
            [.. Enumerable.Range(0, columns.Width).Select(column => Math.Clamp(columns.Centre(column), 0, curve.Length))]);
        Draw(canvas, scale, ink, [.. edges.Select(edge => Row(edge.Max))]);
        Draw(canvas, scale, ink, [.. edges.Select(edge => Row(edge.Min))]);
        Show(band.Max.Value, band.Max.Position);
        Show(band.Min.Value, band.Min.Position);

        int Row(double value) => scale.RowOf(scale.LevelOf(PlotTrace.Up(curve, value)));

        // A peak between the middles of two columns is not lost.
        void Show(double value, double position) => Put(canvas, Row(value), columns.Of(position), scale, ink);
    }

    // From one column to the next without a gap.
    private static void Draw(Canvas canvas, PlotScale scale, PlotInk ink, ImmutableArray<int> rows)
    {
        for (int column = 0; column < rows.Length; column++)
        {
            int from = column == 0 ? rows[0] : rows[column - 1];
            int step = Math.Sign(rows[column] - from);
            for (int row = from + step; row != rows[column]; row += step)
            {
                Put(canvas, row, column, scale, ink);
            }

            Put(canvas, rows[column], column, scale, ink);
        }
    }

    private static void Put(Canvas canvas, int row, int column, PlotScale scale, PlotInk ink)
    {
        if (row != scale.ZeroRow && (canvas.IsBlank(row, column) || (canvas[row, column] == ink.Fill && !ink.IsSolid)))
        {
            canvas[row, column] = PlotInk.Edge;
        }
    }
}
