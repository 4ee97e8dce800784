using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Building;

/// <summary>The supports of one beam: where they stand, what they are called and what they hold.</summary>
internal sealed class SupportLine
{
    private readonly ImmutableArray<Row> _rows;
    private readonly ImmutableArray<double?> _positions;

    private SupportLine(ImmutableArray<Row> rows, ImmutableArray<double?> positions)
    {
        _rows = rows;
        _positions = positions;
    }

    /// <summary>The supports from left to right; null when one of them is not known.</summary>
    internal ImmutableArray<NamedSupport>? Supports { get; private init; }

    /// <summary>Their labels, in the order typed; null when one of them is not known.</summary>
    internal ImmutableArray<string>? Labels { get; private init; }

    /// <summary>Reads the supports and names them, so that other places can be given from them.</summary>
    internal static SupportLine Read(ImmutableArray<Row> rows, Stations stations)
    {
        ImmutableArray<double?> positions = [.. rows.Select(row => stations.Station(row, mayNameSupport: false))];
        TellSamePlace(rows, positions);
        ImmutableArray<int>? order = positions.Contains(null)
            ? null
            : [.. Enumerable.Range(0, rows.Length).OrderBy(row => positions[row])];
        ImmutableArray<string?> labels = SupportLabels.Give(rows, order);
        stations.Name(labels, positions);

        ImmutableArray<Support?> supports = [.. rows.Select((row, index) => SupportRows.Read(row, positions[index]))];
        return new SupportLine(rows, positions)
        {
            Labels = labels.Contains(null) ? null : [.. labels.Select(label => label!)],
            Supports = order is not { } fromLeft || supports.Contains(null)
                ? null
                : [.. fromLeft.Select(row => Named(rows[row], row, supports[row]!, labels[row]!, stations))],
        };
    }

    /// <summary>Whether the support that stands at a position, if any, resists turning.</summary>
    internal bool HoldsRotationAt(double position)
    {
        int row = _positions.IndexOf(position);
        return row >= 0 && _rows[row].Has("kind") && !SupportRows.TurnsFreely(_rows[row]);
    }

    private static NamedSupport Named(Row row, int index, Support support, string label, Stations stations) => new(
        support, label, index, stations.JointAt(support.Position), row.Text("kind")!, row.Has("acts"));

    private static void TellSamePlace(ImmutableArray<Row> rows, ImmutableArray<double?> positions)
    {
        for (int row = 0; row < rows.Length; row++)
        {
            int first = positions.IndexOf(positions[row]);
            if (positions[row] is not null && first < row)
            {
                rows[row].Refuse(rows[row].Has("joint") ? "joint" : "at", ProblemText.SamePlace("support", first + 1));
            }
        }
    }
}
