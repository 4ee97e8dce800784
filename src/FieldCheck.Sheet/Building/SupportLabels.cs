using System.Collections.Immutable;

namespace FieldCheck.Sheet.Building;

/// <summary>Labels of the supports: given by hand, or A, B, C … (AA after Z) over all from left to right.</summary>
internal static class SupportLabels
{
    /// <param name="rows">The supports, in the order typed.</param>
    /// <param name="order">The rows from left to right; null when a position is not known.</param>
    /// <returns>One label a row; a row without a label of its own has null when the order is not known.</returns>
    internal static ImmutableArray<string?> Give(ImmutableArray<Row> rows, ImmutableArray<int>? order)
    {
        ImmutableArray<string?> given = [.. rows.Select(row => row.Text("label")?.Trim())];
        for (int index = 0; index < rows.Length; index++)
        {
            int twin = FirstCalled(given, given[index]);
            if (given[index] is string label && twin < index)
            {
                rows[index].Refuse("label", ProblemText.SameLabel(label, twin + 1));
            }
        }

        return [.. given.Select((label, index) => label ?? Letter(rows, given, order, index))];
    }

    /// <summary>The letter of the support that stands so many from the left, counted from 0.</summary>
    internal static string Letter(int fromLeft) => fromLeft < 26
        ? ((char)('A' + fromLeft)).ToString()
        : Letter(fromLeft / 26 - 1) + (char)('A' + fromLeft % 26);

    private static string? Letter(
        ImmutableArray<Row> rows, ImmutableArray<string?> given, ImmutableArray<int>? order, int index)
    {
        if (order is not { } fromLeft)
        {
            return null;
        }

        string letter = Letter(fromLeft.IndexOf(index));
        int twin = FirstCalled(given, letter);
        if (twin >= 0)
        {
            rows[twin].Refuse("label", ProblemText.LabelClash(given[twin]!, index + 1));
        }

        return letter;
    }

    private static int FirstCalled(ImmutableArray<string?> labels, string? label) =>
        labels.IndexOf(label, StringComparer.OrdinalIgnoreCase);
}
