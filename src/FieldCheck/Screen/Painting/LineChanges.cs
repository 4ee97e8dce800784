using System.Collections.Immutable;

namespace FieldCheck.Screen.Painting;

/// <summary>Tells what of a line must be drawn anew, so that a slow terminal is sent no more than that.</summary>
internal static class LineChanges
{
    // Going elsewhere and setting the looks costs about as much as drawing so many cells again.
    private const int WorthSkipping = 8;

    /// <summary>The stretches of a line that are not as they were.</summary>
    /// <param name="before">The line as it stands; null: something else may stand there.</param>
    /// <param name="after">The line as it shall be.</param>
    /// <returns>Each with its first column, counted from 0; the whole line where a column cannot be told by its character.</returns>
    internal static ImmutableArray<(int Column, PictureRun Run)> Of(PictureLine? before, PictureLine after)
    {
        if (before is not null && IsSame(before, after))
        {
            return [];
        }

        if (before is null || Cells(before) is not (char, Role)[] old || Cells(after) is not (char, Role)[] cells
            || old.Length != cells.Length)
        {
            return Whole(after);
        }

        var changes = ImmutableArray.CreateBuilder<(int, PictureRun)>();
        for (int column = 0; column < cells.Length; column++)
        {
            if (old[column] != cells[column])
            {
                int end = EndOfChange(old, cells, column);
                Add(changes, cells, column, end);
                column = end;
            }
        }

        return changes.ToImmutable();
    }

    private static bool IsSame(PictureLine one, PictureLine other) =>
        one.Runs.Length == other.Runs.Length
        && one.Runs.Zip(other.Runs).All(pair => (pair.First.Text, pair.First.Role) == (pair.Second.Text, pair.Second.Role));

    private static ImmutableArray<(int Column, PictureRun Run)> Whole(PictureLine line)
    {
        int column = 0;
        var all = ImmutableArray.CreateBuilder<(int, PictureRun)>(line.Runs.Length);
        foreach (PictureRun run in line.Runs)
        {
            all.Add((column, run));
            column += TextColumns.Of(run.Text);
        }

        return all.ToImmutable();
    }

    // Of ASCII and of the drawing characters one takes one column; of all others it is not known here.
    private static (char Letter, Role Role)[]? Cells(PictureLine line) =>
        line.Runs.All(run => run.Text.All(letter => char.IsAscii(letter) || letter is >= '─' and <= '▟'))
            ? [.. line.Runs.SelectMany(run => run.Text.Select(letter => (letter, run.Role)))]
            : null;

    private static int EndOfChange((char, Role)[] old, (char, Role)[] cells, int from)
    {
        int end = from + 1;
        for (int column = end; column < cells.Length && column - end < WorthSkipping; column++)
        {
            if (old[column] != cells[column])
            {
                end = column + 1;
            }
        }

        return end;
    }

    private static void Add(
        ImmutableArray<(int Column, PictureRun Run)>.Builder changes, (char Letter, Role Role)[] cells, int from, int end)
    {
        int column = from;
        while (column < end)
        {
            int start = column;
            while (column < end && cells[column].Role == cells[start].Role)
            {
                column++;
            }

            string text = string.Concat(cells[start..column].Select(cell => cell.Letter));
            changes.Add((start, new PictureRun(text, cells[start].Role)));
        }
    }
}
