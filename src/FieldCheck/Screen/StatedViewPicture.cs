using System.Collections.Immutable;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen;

/// <summary>Draws the Stated view between title and message line: the figures as typed, and below what comes of them.</summary>
internal static class StatedViewPicture
{
    private const int WithGap = 12;

    /// <summary>The view.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Of(ScreenState state, int width, int height)
    {
        Picture grid = FormPicture.Of(state, width, GridHeight(state, height));
        int room = Room(state, height);
        ImmutableArray<string> lines = room > 1 ? StatedLines.Of(state, width) : [StatedLines.InShort(state)];
        int top = room > 1 ? StatedKeys.Top(state, state.StatedTop) : 0;
        bool isOld = state.Age == ResultsAge.BeforeThisCell;
        int below = room > 1 ? lines.Length - top - room : 0;
        IEnumerable<PictureLine> seen = lines
            .Select((line, index) => ResultsPicture.Coloured(line, width, isOld && index > 0))
            .Skip(top)
            .Take(below > 0 ? room - 1 : room);
        IEnumerable<PictureLine> more = below > 0
            ? [LineWriter.Line($"..{below + 1} more   PgDn", width, Role.Warn)]
            : [];
        IEnumerable<PictureLine> spare = Enumerable.Repeat(LineWriter.Line("", width), height);
        return new Picture(
            [.. grid.Lines.Concat(spare.Take(Gap(height))).Concat(seen).Concat(more).Concat(spare).Take(height)],
            grid.Cursor);
    }

    /// <summary>The lines that there are below the figures.</summary>
    /// <param name="state">The state.</param>
    /// <param name="height">Lines of the view; 1 or more.</param>
    internal static int Room(ScreenState state, int height) =>
        Math.Max(height - GridHeight(state, height) - Gap(height), 0);

    // Every row of a few supports; of many, about half the view.
    private static int GridHeight(ScreenState state, int height) => height <= 2
        ? height
        : Math.Min(FormLayout.HeightOf(state.Sheet, FormBlock.Stated), Math.Max(height / 2, 2));

    private static int Gap(int height) => height >= WithGap ? 1 : 0;
}
