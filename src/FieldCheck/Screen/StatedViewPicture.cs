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
        IEnumerable<PictureLine> spare = Enumerable.Repeat(LineWriter.Line("", width), height);
        return new Picture(
            [.. grid.Lines.Concat(spare.Take(Gap(height))).Concat(Below(state, width, Room(state, height))).Concat(spare).Take(height)],
            grid.Cursor);
    }

    // The first line, which sums all up and says how old it is, stays.
    private static IEnumerable<PictureLine> Below(ScreenState state, int width, int room)
    {
        if (room < 2)
        {
            return Enumerable.Repeat(ResultsPicture.Coloured(StatedLines.InShort(state), width, isFaint: false), room);
        }

        ImmutableArray<string> lines = StatedLines.Of(state, width);
        int top = StatedKeys.Top(state, state.StatedTop);
        return ScrolledLines.Draw(lines, top, room, width, state.Age == ResultsAge.BeforeThisCell);
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
