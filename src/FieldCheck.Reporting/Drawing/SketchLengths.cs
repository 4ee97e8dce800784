using System.Collections.Immutable;

namespace FieldCheck.Reporting.Drawing;

/// <summary>The lengths of the spans below a sketch, as they were typed; one that has no room stands in the list of the input only.</summary>
internal static class SketchLengths
{
    internal static ImmutableArray<string> Rows(TypedBeam typed, int width, int margin)
    {
        BeamColumns columns = new(typed.Beam.Model.Length, width - margin);
        Canvas canvas = new(columns.Width, 1);
        foreach ((double from, double to, string words) in typed.Spans())
        {
            int first = columns.Of(from);
            int room = columns.Of(to) - first - 1;
            string inside = words.Length + 2 <= room ? $" {words} " : "";
            canvas[0, first] = '|';
            canvas.Write(0, first + 1, inside.PadLeft((room + inside.Length) / 2, '-').PadRight(Math.Max(room, 0), '-') + '|');
        }

        return canvas.Lines(margin);
    }
}
