using System.Collections.Immutable;

namespace FieldCheck.Screen.Painting;

/// <summary>
/// Draws a list to choose from: a heading, the lines with the chosen one always seen, and something below.
/// </summary>
internal static class ListPicture
{
    /// <summary>The picture.</summary>
    /// <param name="heading">The heading.</param>
    /// <param name="lines">All lines; one at least.</param>
    /// <param name="choice">The chosen one, counted from 0.</param>
    /// <param name="caret">
    /// What stands left of the cursor: in the heading where the first is given, else in the chosen line.
    /// </param>
    /// <param name="below">What stands below; left out where there is no room.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    /// <param name="columns">What the columns are headed; null for lines without columns.</param>
    internal static Picture Of(
        string heading,
        ImmutableArray<string> lines,
        int choice,
        (string? InHeading, string InLine) caret,
        ImmutableArray<string> below,
        int width,
        int height,
        string? columns = null)
    {
        ImmutableArray<string> foot = height >= below.Length + 4 && !below.IsEmpty ? ["", .. below] : [];
        int top = columns is not null && height > 3 ? 2 : 1;
        int room = Math.Max(height - top - foot.Length, 1);
        int first = Math.Clamp(choice - room / 2, 0, Math.Max(lines.Length - room, 0));
        ImmutableArray<string> seen = [.. lines.Skip(first).Take(room)];
        string where = lines.Length > room ? $"   lines {first + 1}-{first + seen.Length} of {lines.Length}" : "";
        ImmutableArray<PictureLine> list =
        [
            LineWriter.Line(heading + where, width, Role.Accent),
            .. top > 1 ? [LineWriter.Line(columns!, width, Role.Faint)] : ImmutableArray<PictureLine>.Empty,
            .. seen.Select((line, index) => Row(line, first + index - choice, width)),
        ];
        ImmutableArray<PictureLine> all =
        [
            .. list,
            .. Enumerable.Repeat(LineWriter.Line("", width), Math.Max(height - list.Length - foot.Length, 0)),
            .. foot.Select(line => LineWriter.Line(line, width, Role.Accent)),
        ];
        (int, int) cursor = caret.InHeading is string before
            ? (TextColumns.Of(before), 0)
            : (TextColumns.Of(caret.InLine), choice - first + top);
        return new Picture(
            [.. all.Take(height)], (Math.Min(cursor.Item1, width - 1), Math.Min(cursor.Item2, height - 1)));
    }

    private static PictureLine Row(string line, int away, int width) => LineWriter.Line(
        (away == 0 ? "> " : "  ") + line, width, away == 0 ? Role.Focus : Role.Text, new LinkTarget.Line(away));
}
