using System.Collections.Immutable;
using System.Diagnostics;

namespace FieldCheck.Sheet.Reading;

/// <summary>
/// Where something stands on the beam, in the words it was given. Closed set: the cases are the nested records.
/// </summary>
public abstract record Place
{
    private Place()
    {
    }

    /// <summary>Measured on from the anchor, positive toward the right end; null where nothing was added.</summary>
    public Quantity? Offset { get; init; }

    /// <summary>The support's label that this place hangs on, which a renaming must follow; else null.</summary>
    public string? Label => this is SupportNamed support ? support.Name : null;

    /// <summary>Half-width written after ± of the distance or offset [m]; null when none was written.</summary>
    public double? Spread => this is FromLeft left ? left.Distance.Spread : Offset?.Spread;

    /// <summary>Finds the place on a beam, as a distance from its left end [m]; it may lie off the beam.</summary>
    /// <param name="joints">Distances of the joints from the left end [m], one more than spans; the first is 0.</param>
    /// <param name="supports">Distance of each support from the left end [m] by label; case does not count.</param>
    public Reading<double> Resolve(ImmutableArray<double> joints, IReadOnlyDictionary<string, double> supports)
    {
        if (joints.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A beam has at least two joints.", nameof(joints));
        }

        ArgumentNullException.ThrowIfNull(supports);
        double offset = Offset?.Value ?? 0;
        return Anchor(joints, supports).Then<double>(anchor => Accept(anchor + offset));
    }

    private Reading<double> Anchor(ImmutableArray<double> joints, IReadOnlyDictionary<string, double> supports) =>
        this switch
        {
            FromLeft left => Accept(left.Distance.Value),
            RightEnd => Accept(joints[^1]),
            Joint joint when joint.Number >= 0 && joint.Number < joints.Length => Accept(joints[joint.Number]),
            Joint joint => Refuse(ReadingMessages.NoSuchJoint(joint.Number, joints.Length - 1)),
            Mid middle when middle.Span > 0 && middle.Span < joints.Length =>
                Accept((joints[middle.Span - 1] + joints[middle.Span]) / 2),
            Mid middle => Refuse(ReadingMessages.NoSuchSpan(middle.Span, joints.Length - 1)),
            SupportNamed support => OfSupport(support.Name, supports),
            _ => throw new UnreachableException(),
        };

    private static Reading<double> OfSupport(string label, IReadOnlyDictionary<string, double> supports)
    {
        foreach ((string name, double distance) in supports)
        {
            if (name.Equals(label, StringComparison.OrdinalIgnoreCase))
            {
                return Accept(distance);
            }
        }

        string[] known = [.. supports.Keys.Order(StringComparer.Ordinal)];
        return Refuse(ReadingMessages.NoSuchSupport(label, NearSpelling.Of(label, known), known));
    }

    private static Reading<double> Accept(double metres) => new Reading<double>.Accepted(metres);

    private static Reading<double> Refuse(string text) => new Reading<double>.Refused(text, 0);

    /// <summary>A distance from the left end of the beam.</summary>
    /// <param name="Distance">The length measured.</param>
    public sealed record FromLeft(Quantity Distance) : Place;

    /// <summary>The right end of the beam: it follows the end when the length changes.</summary>
    public sealed record RightEnd : Place;

    /// <summary>A joint between spans, or an end.</summary>
    /// <param name="Number">0 is the left end, k the far end of span k.</param>
    public sealed record Joint(int Number) : Place;

    /// <summary>The middle of a span.</summary>
    /// <param name="Span">Counted from 1.</param>
    public sealed record Mid(int Span) : Place;

    /// <summary>Where a support stands.</summary>
    /// <param name="Name">Its label as typed; case does not count.</param>
    public sealed record SupportNamed(string Name) : Place;
}
