using System.Collections.Immutable;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>What the supports of a beam are called, also while other cells do not read.</summary>
public static class FormLabels
{
    /// <summary>
    /// The label of each support in the order of the rows; null where it goes by position and that is not known.
    /// </summary>
    /// <param name="document">The beam.</param>
    public static ImmutableArray<string?> Of(BeamDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        double?[] places = PlacesOf(document);
        bool areKnown = places.All(place => place is not null);
        ImmutableArray<int> order = InOrder(places);
        return [.. document.Supports.Select((support, row) =>
            support.Label?.Trim() ?? (areKnown ? SupportLabels.Letter(order.IndexOf(row)) : null))];
    }

    /// <summary>
    /// The labels of the supports from left to right, as far as their places are known; those without one left out.
    /// </summary>
    /// <param name="document">The beam.</param>
    public static ImmutableArray<string> LeftToRight(BeamDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        ImmutableArray<string?> labels = Of(document);
        return [.. InOrder(PlacesOf(document)).Select(row => labels[row]).OfType<string>()];
    }

    /// <summary>
    /// Where the joints lie [m from the left end], as far as the lengths of the spans read; 0 at least.
    /// </summary>
    /// <param name="document">The beam.</param>
    public static ImmutableArray<double> JointsOf(BeamDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return new FormPositions(document.Spans).Joints;
    }

    private static double?[] PlacesOf(BeamDocument document)
    {
        FormPositions positions = new(document.Spans);
        return document.Supports.All(support => FormPositions.NumberOf(support) is not null)
            ? [.. document.Supports.Select(FormPositions.NumberOf)]
            : [.. document.Supports.Select(positions.Of)];
    }

    private static ImmutableArray<int> InOrder(double?[] places) => places.All(place => place is not null)
        ? [.. Enumerable.Range(0, places.Length).OrderBy(row => places[row])]
        : [.. Enumerable.Range(0, places.Length)];

    /// <summary>The length that a load stands on [m]; null where that cannot be told.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="row">The load, counted from 0.</param>
    public static double? LengthOfLoad(BeamDocument document, int row)
    {
        ArgumentNullException.ThrowIfNull(document);
        FormPositions positions = new(document.Spans);
        Dictionary<string, double> supports = new(StringComparer.OrdinalIgnoreCase);
        foreach ((SupportEntry support, string? label) in document.Supports.Zip(Of(document)))
        {
            if (label is not null && positions.Of(support) is double position)
            {
                supports[label] = position;
            }
        }

        LoadEntry load = document.Loads[row];
        return positions.Of(load.To ?? "end", supports) - (load.From is string from ? positions.Of(from, supports) : 0);
    }
}
