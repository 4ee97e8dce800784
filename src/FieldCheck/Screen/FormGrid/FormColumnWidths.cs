using System.Collections.Immutable;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Screen.FormGrid;

/// <summary>Which columns of a block are seen, and how wide.</summary>
internal static class FormColumnWidths
{
    /// <summary>Columns taken by the two signs beside a cell's text.</summary>
    internal const int Beside = 2;

    private const int Narrowest = 3;

    /// <summary>
    /// The columns seen, left to right, with the width of their text; that of the person is always among them.
    /// </summary>
    /// <param name="columns">All columns of the block.</param>
    /// <param name="wanted">The width that the text of each would like.</param>
    /// <param name="focus">The column the person is on; null where the person is in another block.</param>
    /// <param name="width">The columns of the terminal there are for them.</param>
    internal static ImmutableArray<(FormColumn Column, int Width)> Of(
        ImmutableArray<FormColumn> columns, Func<FormColumn, int> wanted, FormColumn? focus, int width)
    {
        int needed = focus is FormColumn column ? columns.IndexOf(column) : 0;
        List<FormColumn> seen = [.. columns.Take(needed + 1)];

        // The first column says what the row is: it goes last.
        while (seen.Count > 1 && Total(seen, wanted) > width)
        {
            seen.RemoveAt(seen.Count > 2 ? 1 : 0);
        }

        foreach (FormColumn next in columns.Skip(needed + 1))
        {
            if (Total(seen, wanted) + Beside + Narrowest > width)
            {
                break;
            }

            seen.Add(next);
        }

        return [.. Shared(seen, wanted, width)];
    }

    private static int Total(List<FormColumn> columns, Func<FormColumn, int> wanted) =>
        columns.Sum(column => wanted(column) + Beside);

    // What is left over goes to the last column, and what is missing is taken from it.
    private static IEnumerable<(FormColumn Column, int Width)> Shared(
        List<FormColumn> columns, Func<FormColumn, int> wanted, int width)
    {
        int left = width;
        foreach (FormColumn column in columns.SkipLast(1))
        {
            int share = Math.Clamp(wanted(column), 0, Math.Max(left - Beside, 0));
            left -= share + Beside;
            yield return (column, share);
        }

        yield return (columns[^1], Math.Max(left - Beside, 0));
    }
}
