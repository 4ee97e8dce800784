using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Editing;

/// <summary>Where places of a beam lie, as far as its cells read.</summary>
internal sealed class FormPositions
{
    internal FormPositions(Rows<SpanEntry> spans)
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

        IsComplete = joints.Count > spans.Count && spans.Count > 0;
        Joints = [.. joints];
    }

    /// <summary>Where the joints lie [m from the left end], up to the first span that does not read.</summary>
    internal ImmutableArray<double> Joints { get; }

    /// <summary>True: every span's length reads.</summary>
    internal bool IsComplete { get; }

    /// <summary>The joint that a support stands at, whose order is known even where lengths are not; null elsewhere.</summary>
    internal static double? NumberOf(SupportEntry support) =>
        int.TryParse(support.Joint, NumberStyles.None, CultureInfo.InvariantCulture, out int joint) ? joint : null;

    /// <summary>Where a support stands [m from the left end]; null where that cannot be told.</summary>
    internal double? Of(SupportEntry support)
    {
        string? text = support.Joint is string joint ? "joint " + joint : support.At;
        return text is not null && PlaceReader.ReadOfSupport(text) is Reading<Place>.Accepted place
            ? Resolved(place.Value, ImmutableDictionary<string, double>.Empty)
            : null;
    }

    /// <summary>Where a place lies [m from the left end]; null where that cannot be told.</summary>
    /// <param name="text">The place as typed.</param>
    /// <param name="supports">Where the supports stand, by label.</param>
    internal double? Of(string text, IReadOnlyDictionary<string, double> supports) =>
        PlaceReader.Read(text) is Reading<Place>.Accepted place ? Resolved(place.Value, supports) : null;

    // While a span is not known, neither is the end, nor a joint beyond it.
    private double? Resolved(Place place, IReadOnlyDictionary<string, double> supports) =>
        (IsComplete || place is not Place.RightEnd)
        && place.Resolve(Joints, supports) is Reading<double>.Accepted position
            ? position.Value
            : null;

    private static double? Length(string? text) =>
        text is not null && QuantityReader.Read(text, QuantityKind.Length) is Reading<Quantity>.Accepted length
            ? length.Value.Value
            : null;
}
