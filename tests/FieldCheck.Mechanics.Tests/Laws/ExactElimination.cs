namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Gauss-Jordan elimination in exact fractions.</summary>
internal static class ExactElimination
{
    internal static int Rank(IEnumerable<Ratio[]> rows)
    {
        Ratio[][] matrix = [.. rows.Select(row => (Ratio[])row.Clone())];
        return matrix.Length == 0 ? 0 : Reduce(matrix, matrix[0].Length).Count;
    }

    /// <summary>Solves for the chosen columns alone; null when they cannot meet the right side, or depend.</summary>
    internal static Ratio[]? Solve(Ratio[][] rows, Ratio[] right, int[] columns)
    {
        Ratio[][] matrix =
        [
            .. rows.Select((row, i) => columns.Select(column => row[column]).Append(right[i]).ToArray()),
        ];
        List<int> pivots = Reduce(matrix, columns.Length);
        bool isMet = matrix.Skip(pivots.Count).All(row => row[^1].Sign == 0);
        return pivots.Count == columns.Length && isMet ? [.. matrix.Take(columns.Length).Select(row => row[^1])] : null;
    }

    private static List<int> Reduce(Ratio[][] matrix, int columns)
    {
        List<int> pivots = [];
        for (int column = 0; column < columns && pivots.Count < matrix.Length; column++)
        {
            int top = pivots.Count;
            int found = Array.FindIndex(matrix, top, row => row[column].Sign != 0);
            if (found < 0)
            {
                continue;
            }

            (matrix[top], matrix[found]) = (matrix[found], matrix[top]);
            Clear(matrix, top, column);
            pivots.Add(column);
        }

        return pivots;
    }

    private static void Clear(Ratio[][] matrix, int pivot, int column)
    {
        Ratio scale = matrix[pivot][column];
        matrix[pivot] = [.. matrix[pivot].Select(value => value / scale)];
        for (int i = 0; i < matrix.Length; i++)
        {
            if (i != pivot && matrix[i][column].Sign != 0)
            {
                Ratio factor = matrix[i][column];
                matrix[i] = [.. matrix[i].Zip(matrix[pivot], (value, pivotValue) => value - (factor * pivotValue))];
            }
        }
    }
}
