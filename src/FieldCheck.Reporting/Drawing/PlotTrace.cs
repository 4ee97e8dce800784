using FieldCheck.Mechanics.Response;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Turns a curve into levels, column by column, so that no jump and no sign is lost.</summary>
internal static class PlotTrace
{
    internal static PlotColumn[] Of(PlotCurve curve, BeamColumns columns, PlotScale scale)
    {
        PlotColumn[] trace = new PlotColumn[columns.Width];
        for (int column = 0; column < trace.Length; column++)
        {
            // At a jump in the very middle either side will do: the jump itself is drawn there.
            int level = scale.LevelOf(Up(curve, curve.At(columns.Centre(column)).Left));
            trace[column] = new PlotColumn(level, level, level, IsJump: false);
        }

        AddJumps(curve, columns, scale, trace);
        AddLostSigns(curve, columns, scale, trace);
        return trace;
    }

    /// <summary>A value as a height above the zero line.</summary>
    internal static double Up(PlotCurve curve, double value) =>
        Math.Abs(value) <= curve.Negligible ? 0 : curve.IsPositiveDown ? -value : value;

    private static void AddJumps(PlotCurve curve, BeamColumns columns, PlotScale scale, PlotColumn[] trace)
    {
        foreach (double place in curve.Breaks)
        {
            (double left, double right) = curve.At(place);
            int before = scale.LevelOf(Up(curve, left));
            int after = scale.LevelOf(Up(curve, right));
            if (before != after)
            {
                int column = columns.Of(place);
                PlotColumn start = trace[column].IsJump
                    ? trace[column]
                    : new PlotColumn(before, before, before, IsJump: true);
                trace[column] = start.Showing(before).Showing(after);
            }
        }
    }

    /// <summary>A part narrower than a column may miss every middle of one; its peak is shown all the same.</summary>
    private static void AddLostSigns(PlotCurve curve, BeamColumns columns, PlotScale scale, PlotColumn[] trace)
    {
        foreach (Extreme peak in curve.Peaks)
        {
            int level = scale.LevelOf(Up(curve, peak.Value));
            int column = columns.Of(peak.Position);
            if (level != 0 && !IsShown(trace, column, Math.Sign(level)))
            {
                trace[column] = trace[column].Showing(level);
            }
        }
    }

    private static bool IsShown(PlotColumn[] trace, int column, int sign)
    {
        for (int i = Math.Max(column - 1, 0); i <= Math.Min(column + 1, trace.Length - 1); i++)
        {
            if (sign > 0 ? trace[i].High > 0 : trace[i].Low < 0)
            {
                return true;
            }
        }

        return false;
    }
}
