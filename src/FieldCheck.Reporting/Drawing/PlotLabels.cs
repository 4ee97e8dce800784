namespace FieldCheck.Reporting.Drawing;

/// <summary>Writes the peaks' values into a diagram, never on a glyph; what finds no place is left out.</summary>
internal static class PlotLabels
{
    // A label further than this from its peak is put beside it only when nothing nearer is free.
    private const int Near = 10;
    private static readonly (int Row, int Column)[] Nowhere = [];

    internal static void Write(
        Canvas canvas, PlotCurve curve, PlotColumn[] trace, BeamColumns columns, PlotScale scale, PlotInk ink)
    {
        HashSet<(string Text, int Column)> ofEdges = [];
        if (curve.Band is PlotBand band)
        {
            WriteEdge(band.Max.Value, band.Max.Position);
            WriteEdge(band.Min.Value, band.Min.Position);
        }

        PeakReading reading = new(curve);
        IEnumerable<PlotPeak> peaks = reading.Peaks.Union(reading.Steps());
        foreach (PlotPeak peak in peaks.OrderByDescending(peak => Math.Abs(peak.Value)))
        {
            int sign = Math.Sign(scale.LevelOf(PlotTrace.Up(curve, peak.Value)));
            int column = peak.IsStretch
                ? (columns.Of(peak.From) + columns.Of(peak.To)) / 2
                : columns.Of(peak.From);
            int level = sign > 0 ? trace[column].High : trace[column].Low;
            string text = curve.Number(peak.Value);
            if (sign != 0 && text.Length > 0 && !ofEdges.Contains((text, column)))
            {
                int row = Math.Sign(level) == sign ? scale.RowOf(level) : scale.ZeroRow - sign;
                Write(canvas, text, row, column, sign, ink);
            }
        }

        void WriteEdge(double value, double position)
        {
            int level = scale.LevelOf(PlotTrace.Up(curve, value));
            if (level != 0 && ofEdges.Add((curve.Number(value), columns.Of(position))))
            {
                Write(canvas, curve.Number(value), scale.RowOf(level), columns.Of(position), Math.Sign(level), ink);
            }
        }
    }

    private static void Write(Canvas canvas, string text, int row, int column, int sign, PlotInk ink)
    {
        int length = text.Length;
        int centred = Math.Clamp(column - length / 2, 0, Math.Max(canvas.Width - length, 0));
        int right = Beside(canvas, row, column, 1);
        int left = Beside(canvas, row, column, -1) - length + 1;
        bool isRightNear = right - column <= Near;
        bool isLeftNear = column - (left + length) <= Near;
        (int Row, int Column)[] tries =
        [
            (row - sign, centred),
            .. isRightNear ? [(row, right)] : Nowhere,
            .. isLeftNear ? [(row, left)] : Nowhere,
            (row - sign, column + 1),
            (row - sign, column - length),
            (row - 2 * sign, centred),
            (row, right),
            (row, left),
        ];
        foreach ((int atRow, int atColumn) in tries)
        {
            if (canvas.HasRoom(atRow, atColumn, length))
            {
                canvas.Write(atRow, atColumn, text);
                return;
            }
        }

        if (!ink.IsSolid)
        {
            WriteInside(canvas, text, row + sign, centred, ink);
        }
    }

    /// <summary>The first column past the run of glyphs, one blank left between.</summary>
    private static int Beside(Canvas canvas, int row, int column, int step)
    {
        int end = column;
        while (!canvas.IsBlank(row, end))
        {
            end += step;
        }

        return end + step;
    }

    private static void WriteInside(Canvas canvas, string text, int row, int column, PlotInk ink)
    {
        if (canvas.HasRoom(row, column, text.Length, ink.Fill))
        {
            canvas.Write(row, column - 1, $" {text} ");
        }
    }
}
