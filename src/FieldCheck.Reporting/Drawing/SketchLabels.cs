using System.Collections.Immutable;

namespace FieldCheck.Reporting.Drawing;

/// <summary>The labels of the loads above the sketch: largest first, never colliding.</summary>
internal static class SketchLabels
{
    /// <summary>The rows of labels, nearest to the beam last; only as many as are needed.</summary>
    internal static ImmutableArray<string> Rows(
        ImmutableArray<LoadPicture> loads, BeamColumns columns, int rows, int margin)
    {
        Canvas canvas = new(columns.Width, Math.Max(rows, 0));
        // Own weight comes span by span; where it is the same it is named once.
        foreach (LoadPicture load in loads.OrderByDescending(load => load.Size).DistinctBy(load => load.Label))
        {
            if (!IsPlaced(canvas, load.Label, load, columns))
            {
                IsPlaced(canvas, load.Number, load, columns);
            }
        }

        return [.. canvas.Lines(margin).SkipWhile(string.IsNullOrWhiteSpace)];
    }

    private static bool IsPlaced(Canvas canvas, string text, LoadPicture load, BeamColumns columns)
    {
        int first = columns.Of(load.From);
        int last = columns.Of(load.To);
        int centred = Math.Clamp((first + last - text.Length + 1) / 2, 0, Math.Max(columns.Width - text.Length, 0));
        for (int row = canvas.Height - 1; row >= 0 && text.Length > 0; row--)
        {
            foreach (int column in Around(centred, first - text.Length + 1, last))
            {
                if (canvas.HasRoom(row, column, text.Length))
                {
                    canvas.Write(row, column, text);
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Columns from the middle outward that still stand over some of what is labelled.</summary>
    private static IEnumerable<int> Around(int centred, int least, int most)
    {
        yield return centred;
        for (int step = 1; centred + step <= most || centred - step >= least; step++)
        {
            if (centred + step <= most)
            {
                yield return centred + step;
            }

            if (centred - step >= least)
            {
                yield return centred - step;
            }
        }
    }
}
