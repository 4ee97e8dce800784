using System.Collections.Immutable;

namespace FieldCheck.Sheet.Building;

/// <summary>Reads where the hinges stand.</summary>
internal static class HingeRows
{
    /// <returns>Their positions from left to right [m]; null when one is not known, which has been told.</returns>
    internal static ImmutableArray<double>? Read(ImmutableArray<Row> rows, Stations stations, SupportLine supports)
    {
        ImmutableArray<double?> positions = [.. rows.Select(row => stations.Station(row, mayNameSupport: true))];
        bool sound = true;
        for (int row = 0; row < rows.Length; row++)
        {
            if (positions[row] is double position && Doubt(row, position) is string doubt)
            {
                rows[row].Refuse(rows[row].Has("joint") ? "joint" : "at", doubt);
                sound = false;
            }
        }

        return sound && !positions.Contains(null) ? [.. positions.OfType<double>().Order()] : null;

        string? Doubt(int row, double position) =>
            stations.IsEnd(position) ? ProblemText.HingeAtEnd
            : supports.HoldsRotationAt(position) ? ProblemText.HingeAtHold
            : positions.IndexOf(position) is int first && first < row ? ProblemText.SamePlace("hinge", first + 1)
            : null;
    }
}
