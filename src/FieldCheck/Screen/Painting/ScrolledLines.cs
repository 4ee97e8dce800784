using System.Collections.Immutable;
using FieldCheck.Screen.FormGrid;

namespace FieldCheck.Screen.Painting;

/// <summary>Draws lines of which a part is seen, the first of them always: it sums them up and says how old they are.</summary>
internal static class ScrolledLines
{
    private const string Between = "   ";

    /// <summary>As many lines as there is room for, with what is hidden above and below.</summary>
    /// <param name="lines">All lines; one at least.</param>
    /// <param name="top">How many below the first are scrolled past.</param>
    /// <param name="room">Lines there are for them; 2 or more.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="isOld">True: they are of the beam before what is being typed.</param>
    internal static IEnumerable<PictureLine> Draw(ImmutableArray<string> lines, int top, int room, int width, bool isOld)
    {
        int below = lines.Length - top - room;
        string[] seen = [.. lines.Skip(1 + top).Take(below > 0 ? room - 2 : room - 1)];
        string first = top == 0 ? lines[0] : WithPlace(lines[0], $"lines {top + 1}-{top + seen.Length} of {lines.Length - 1}", width);
        return
        [
            ResultsPicture.Coloured(first, width, isFaint: false),
            .. seen.Select(line => ResultsPicture.Coloured(line, width, isOld)),
            .. below > 0 ? new[] { LineWriter.Line($"..{below + 1} more   PgDn", width, Role.Warn) } : [],
        ];
    }

    // Where both find no room beside each other, the line is cut for it.
    private static string WithPlace(string line, string place, int width) =>
        TextColumns.CutWithMark(line, width - place.Length - Between.Length) + Between + place;
}
