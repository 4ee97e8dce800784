using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>A member, and all spans that are of it.</summary>
/// <param name="Member">What they are made of and how they are held.</param>
/// <param name="Spans">Their indices, increasing; one or more.</param>
internal sealed record MemberSpans(Member Member, ImmutableArray<int> Spans)
{
    /// <summary>Every member of a beam once, in the order of its first span.</summary>
    internal static ImmutableArray<MemberSpans> Of(ImmutableArray<Member> members) =>
    [
        .. from span in Enumerable.Range(0, members.Length)
           group span by members[span] into own
           select new MemberSpans(own.Key, [.. own]),
    ];

    /// <summary>The members that lie over a place, with the span that does; two where they meet there.</summary>
    internal static IEnumerable<(Member Member, int Span)> At(
        double position, ImmutableArray<Member> members, BeamModel model) =>
        Enumerable.Range(0, members.Length)
            .Where(span => model.JointPositions[span] <= position && position <= model.JointPositions[span + 1])
            .Select(span => (members[span], span))
            .DistinctBy(one => one.Item1);
}
