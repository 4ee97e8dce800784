using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Drawing;

/// <summary>What stands below the beam in a sketch: supports, uplift, reactions.</summary>
internal static class SketchSupports
{
    /// <summary>The rows below the beam.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="uplift">The row of loads that push up; blank where none does.</param>
    /// <param name="response">The reactions to write; null: labels only.</param>
    /// <param name="columns">Which column stands for which place.</param>
    /// <param name="margin">Columns at the left edge.</param>
    internal static ImmutableArray<string> Rows(
        BuiltBeam beam, string uplift, BeamResponse? response, BeamColumns columns, int margin)
    {
        int[] places = Places(beam, columns);
        int upliftRow = UpliftRow(uplift, places);
        bool isUplift = !string.IsNullOrWhiteSpace(uplift);
        int textRow = isUplift ? upliftRow + 1 : 0;
        Canvas canvas = new(columns.Width, textRow + 1);
        canvas.Write(upliftRow, 0, uplift);
        for (int i = 0; i < places.Length; i++)
        {
            canvas[0, places[i]] = SupportGlyphs.Of(beam, beam.Supports[i]);
        }

        List<string> unplaced = [];
        for (int i = 0; i < places.Length; i++)
        {
            string label = beam.Supports[i].Label;
            ImmutableArray<string> parts = response is null ? [] : new BeamWords(beam).Parts(beam.Model.Supports[i], response.Reactions[i]);
            string all = $"{label} {string.Join(", ", parts)}".TrimEnd();
            string[] tries = parts.Length > 1 ? [all, $"{label} {parts[0]}", label] : [all, label];
            string? placed = tries.FirstOrDefault(text => IsPlaced(canvas, text, places[i], textRow));
            if (placed != all)
            {
                unplaced.Add(all);
            }
        }

        ImmutableArray<string> list = response is null ? [] : TextFlow.Join(unplaced, ";  ", columns.Width);
        string edge = new(' ', margin);
        return [.. canvas.Lines(margin), .. list.Select(line => edge + line)];
    }

    /// <summary>A column for each support; two of them never share one while there are columns enough.</summary>
    private static int[] Places(BuiltBeam beam, BeamColumns columns)
    {
        int[] places = [.. beam.Supports.Select(support => columns.Of(support.Support.Position))];
        for (int i = 1; i < places.Length; i++)
        {
            places[i] = Math.Min(Math.Max(places[i], places[i - 1] + 1), columns.Width - 1);
        }

        return places;
    }

    /// <summary>Loads that push up stand beside the supports, or below them where a support would hide one.</summary>
    private static int UpliftRow(string uplift, int[] places) =>
        places.Any(place => uplift[place] != LoadPicture.None) ? 1 : 0;

    private static bool IsPlaced(Canvas canvas, string text, int column, int row)
    {
        int[] tries = row > 0
            ? [column, column - text.Length + 1]
            : [column + 2, column - 1 - text.Length];
        foreach (int start in tries)
        {
            if (canvas.HasRoom(row, start, text.Length))
            {
                canvas.Write(row, start, text);
                return true;
            }
        }

        return false;
    }
}
