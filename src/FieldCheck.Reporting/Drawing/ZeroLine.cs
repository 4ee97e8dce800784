using System.Collections.Immutable;

namespace FieldCheck.Reporting.Drawing;

/// <summary>The letters of the supports in the zero line of a diagram.</summary>
internal static class ZeroLine
{
    // Of a label that finds no room; its first letter might be another's label.
    private const char Unnamed = '+';

    /// <summary>Writes each label from its column on; where the next stands too near, a sign that a support is there.</summary>
    internal static void Write(Canvas canvas, int row, ImmutableArray<PlotMark> marks, BeamColumns columns)
    {
        int[] places = [.. marks.Select(mark => columns.Of(mark.Position))];
        for (int i = 0; i < marks.Length; i++)
        {
            int next = places.Where(place => place > places[i]).DefaultIfEmpty(columns.Width).Min();
            string label = marks[i].Label;
            bool fits = places[i] + label.Length < next || (next == columns.Width && places[i] + label.Length <= next);
            canvas.Write(row, places[i], fits ? label : $"{Unnamed}");
        }
    }
}
