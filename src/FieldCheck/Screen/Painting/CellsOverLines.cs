using System.Collections.Immutable;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.Painting;

/// <summary>A view of cells above and lines to scroll below: how it is laid out, drawn and scrolled.</summary>
internal sealed record CellsOverLines
{
    /// <summary>From so many lines on, one is left free between the two.</summary>
    internal required int GapFrom { get; init; }

    /// <summary>Lines of the cells, of so many in all.</summary>
    internal required Func<ScreenState, int, int> GridHeight { get; init; }

    /// <summary>The lines below in so many columns; the first says how old they are, and stays.</summary>
    internal required Func<ScreenState, int, ImmutableArray<string>> Lines { get; init; }

    /// <summary>A line below the first that is always in view too; null: there is none.</summary>
    internal Func<ScreenState, int, string?> Beside { get; init; } = (_, _) => null;

    /// <summary>What stands there where there is room for one line only.</summary>
    internal required Func<ScreenState, int, string> InShort { get; init; }

    /// <summary>How many lines below the first are scrolled past.</summary>
    internal required Func<ScreenState, int> ScrolledPast { get; init; }

    /// <summary>Lines of the cells where every row shows while what is below has half of the view.</summary>
    /// <remarks>One block at a time where even that is too little.</remarks>
    /// <param name="state">The state.</param>
    /// <param name="view">The view.</param>
    /// <param name="height">Lines of the view; 1 or more.</param>
    internal static int HeightOfEveryRow(ScreenState state, ScreenView view, int height)
    {
        int most = Math.Max(height - Math.Max(height / 2, 3), 2);
        FormBlock block = (state with { View = view }).Focus.Block;
        return height <= 2 ? height
            : Math.Min(most, FormLayout.IsOneBlock(block, most) ? FormLayout.HeightOf(state.Sheet, block) : FormLayout.HeightWith(state.Sheet, block));
    }

    /// <summary>The view.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal Picture Draw(ScreenState state, int width, int height)
    {
        Picture grid = FormPicture.Of(state, width, GridHeight(state, height));
        IEnumerable<PictureLine> spare = Enumerable.Repeat(LineWriter.Line("", width), height);
        IEnumerable<PictureLine> gap = Gap(height) == 0 ? []
            : FormLayout.IsOneBlock(state.Focus.Block, GridHeight(state, height)) ? [OtherBlocks(state, width)]
            : spare.Take(Gap(height));
        return new Picture(
            [.. grid.Lines.Concat(gap).Concat(Below(state, width, RoomIn(state, height))).Concat(spare).Take(height)],
            grid.Cursor);
    }

    /// <summary>The lines that there are below the cells.</summary>
    /// <param name="state">The state.</param>
    internal int Room(ScreenState state)
    {
        int room = RoomIn(state, ScreenPicture.BodyHeight(state.Size.Height));
        return BesideIn(state, room, state.Size.Width) is null ? room : room - 1;
    }

    /// <summary>How many lines below the first are scrolled past, where that is possible: else as many as leave a screenful.</summary>
    /// <param name="state">The state.</param>
    /// <param name="wanted">How many are wanted.</param>
    internal int Top(ScreenState state, int wanted)
    {
        // What is not scrolled need not be worked out.
        return wanted == 0 ? 0 : Math.Clamp(wanted, 0, Math.Max(Lines(state, state.Size.Width).Length - Room(state), 0));
    }

    /// <summary>How many are scrolled past a page farther up or down.</summary>
    /// <param name="state">The state.</param>
    /// <param name="key">The key; down where it is not the one up.</param>
    internal int PageFrom(ScreenState state, KeyName? key)
    {
        // A line that says how much is below takes the place of one; a line of the screenful before stays to be seen. How
        // many lines there are is known when the results have followed.
        int page = Math.Max(Room(state) - 3, 1);
        return Math.Max(ScrolledPast(state) + (key == KeyName.PageUp ? -page : page), 0);
    }

    // Where one block alone is seen, the others are named: Down leads to them.
    private static PictureLine OtherBlocks(ScreenState state, int width)
    {
        LineWriter line = new(width);
        ImmutableArray<FormBlock> blocks = FormMoves.Beside(state.Focus.Block);
        foreach (FormBlock block in blocks.Length > 1 ? blocks : [])
        {
            bool isHere = block == state.Focus.Block;
            line.Add(line.Column == 0 ? "" : " ").Add(
                isHere ? $"[{FormWords.Block(block)}]" : FormWords.Block(block),
                isHere ? Role.Accent : Role.Faint,
                new LinkTarget.Cell(new FormPlace(block, 0, FormColumns.Of(block)[0])));
        }

        return line.End();
    }

    private int RoomIn(ScreenState state, int height) =>
        Math.Max(height - GridHeight(state, height) - Gap(height), 0);

    private IEnumerable<PictureLine> Below(ScreenState state, int width, int room)
    {
        if (room < 2)
        {
            return Enumerable.Repeat(ResultsPicture.Coloured(InShort(state, width), width, isFaint: false), room);
        }

        bool isOld = state.Age == ResultsAge.BeforeThisCell;
        string? beside = BesideIn(state, room, width);
        PictureLine[] drawn =
        [
            .. ScrolledLines.Draw(
                Lines(state, width), Top(state, ScrolledPast(state)), beside is null ? room : room - 1, width, isOld),
        ];
        return beside is null ? drawn : [drawn[0], ResultsPicture.Coloured(beside, width, isOld), .. drawn[1..]];
    }

    // Of two lines the second says how much more there is.
    private string? BesideIn(ScreenState state, int room, int width) => room > 2 ? Beside(state, width) : null;

    private int Gap(int height) => height >= GapFrom ? 1 : 0;
}
