using System.Collections.Immutable;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen;

/// <summary>Draws the Section view between title and message line: what the beam is made of and held to, and below the checks.</summary>
internal static class SectionViewPicture
{
    private const int WithGap = 16;

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

    /// <summary>The lines that there are below the grids.</summary>
    /// <param name="state">The state.</param>
    /// <param name="height">Lines of the view; 1 or more.</param>
    internal static int Room(ScreenState state, int height) =>
        Math.Max(height - GridHeight(state, height) - Gap(height), 0);

    // The first line, which says how old it is, stays.
    private static IEnumerable<PictureLine> Below(ScreenState state, int width, int room)
    {
        if (room < 2)
        {
            return Enumerable.Repeat(
                ResultsPicture.Coloured(SectionLines.InShort(state, width), width, isFaint: false), room);
        }

        ImmutableArray<string> lines = SectionLines.Of(state, width);
        int top = SectionKeys.Top(state, state.SectionTop);
        return ScrolledLines.Draw(lines, top, room, width, state.Age == ResultsAge.BeforeThisCell);
    }

    // Every row while the checks have half of the view; one block at a time where even that is too little.
    private static int GridHeight(ScreenState state, int height)
    {
        int most = Math.Max(height - Math.Max(height / 2, 3), 2);
        FormBlock block = (state with { View = ScreenView.Section }).Focus.Block;
        return height <= 2 ? height
            : Math.Min(most, FormLayout.IsOneBlock(block, most) ? FormLayout.HeightOf(state.Sheet, block) : FormLayout.HeightWith(state.Sheet, block));
    }

    private static int Gap(int height) => height >= WithGap ? 1 : 0;
}
