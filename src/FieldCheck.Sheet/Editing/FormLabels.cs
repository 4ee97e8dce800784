using System.Collections.Immutable;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Editing;

/// <summary>What the supports of a beam are called, also while other cells do not read.</summary>
public static class FormLabels
{
    private const int Letters = 26;

    /// <summary>The label of each support in the order of the rows; null where it goes by position and that is not known.</summary>
    /// <param name="document">The beam.</param>
    public static ImmutableArray<string?> Of(BeamDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        ImmutableArray<double> joints = Joints(document.Spans);
        double?[] places = [.. document.Supports.Select(support => PlaceOf(support, joints))];
        bool areKnown = places.All(place => place is not null);
        int[] order = [.. Enumerable.Range(0, places.Length).OrderBy(row => places[row])];
        return [.. document.Supports.Select((support, row) =>
            support.Label?.Trim() ?? (areKnown ? Letter(Array.IndexOf(order, row)) : null))];
    }

    /// <summary>A, B … Z, AA, AB …</summary>
    private static string Letter(int index)
    {
        string letters = "";
        for (int left = index + 1; left > 0; left = (left - 1) / Letters)
        {
            letters = (char)('A' + ((left - 1) % Letters)) + letters;
        }

        return letters;
    }

    private static ImmutableArray<double> Joints(Rows<SpanEntry> spans)
    {
        List<double> joints = [0];
        foreach (SpanEntry span in spans)
        {
            double? length = Length(span.Length);
            if ((length is double on ? joints[^1] + on : Length(span.To)) is not double next)
            {
                break;
            }

            joints.Add(next);
        }

        return [.. joints];
    }

    private static double? PlaceOf(SupportEntry support, ImmutableArray<double> joints)
    {
        string? text = support.Joint is string joint ? "joint " + joint : support.At;
        return text is not null
            && PlaceReader.ReadOfSupport(text) is Reading<Place>.Accepted place
            && place.Value.Resolve(joints, ImmutableDictionary<string, double>.Empty) is Reading<double>.Accepted position
            ? position.Value
            : null;
    }

    private static double? Length(string? text) =>
        text is not null && QuantityReader.Read(text, QuantityKind.Length) is Reading<Quantity>.Accepted length
            ? length.Value.Value
            : null;
}
