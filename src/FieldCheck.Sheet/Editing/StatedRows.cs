using System.Collections.Immutable;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>
/// What is stated, row by row: the rows of the file by their supports, from left to right, an empty row for a support
/// of which nothing is stated, and last what names no support that there is.
/// </summary>
public static class StatedRows
{
    /// <summary>The rows.</summary>
    /// <param name="document">The beam.</param>
    public static ImmutableArray<StatedRow> Of(BeamDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        ILookup<string?, int> entries = Enumerable.Range(0, document.Stated.Count)
            .ToLookup(entry => document.Stated[entry].Support?.Trim(), StringComparer.OrdinalIgnoreCase);
        string[] labels = [.. FormLabels.LeftToRight(document).Distinct(StringComparer.OrdinalIgnoreCase)];
        return
        [
            .. labels.SelectMany(label => entries.Contains(label)
                ? entries[label].Select(entry => new StatedRow(label, entry))
                : [new StatedRow(label, null)]),
            .. Enumerable.Range(0, document.Stated.Count)
                .Select(entry => new StatedRow(document.Stated[entry].Support?.Trim(), entry))
                .Where(row => !labels.Contains(row.Label, StringComparer.OrdinalIgnoreCase)),
        ];
    }

    /// <summary>Where a row of the file stands among them; null where there is no such row.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="entry">The row of the file, counted from 0.</param>
    public static int? IndexOf(BeamDocument document, int entry)
    {
        ImmutableArray<StatedRow> rows = Of(document);
        for (int index = 0; index < rows.Length; index++)
        {
            if (rows[index].Entry == entry)
            {
                return index;
            }
        }

        return null;
    }

    /// <summary>What stands in a row; of one in which nothing is stated, and below the last, no more than its support.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="row">The row, counted from 0.</param>
    public static StatedEntry EntryAt(BeamDocument document, int row)
    {
        ArgumentNullException.ThrowIfNull(document);
        StatedRow? there = Of(document).ElementAtOrDefault(row);
        return there?.Entry is int entry ? document.Stated[entry] : new StatedEntry { Support = there?.Label };
    }

    /// <summary>True: a row of the file stands there.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="row">The row, counted from 0.</param>
    public static bool IsStated(BeamDocument document, int row) =>
        Of(document).ElementAtOrDefault(row)?.Entry is not null;
}
