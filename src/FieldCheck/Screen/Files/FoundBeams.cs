using System.Collections.Immutable;

namespace FieldCheck.Screen.Files;

/// <summary>The beams that there are to open.</summary>
/// <param name="Choices">All of them, in the order in which they are listed.</param>
/// <param name="LeftOut">How many files were not looked into, because newer ones were enough.</param>
/// <param name="Today">The day, in local time, by which "today" is said.</param>
internal sealed record FoundBeams(ImmutableArray<BeamChoice> Choices, int LeftOut, DateOnly Today)
{
    /// <summary>The beams in the order in which they are listed.</summary>
    /// <remarks>
    /// Those used are first, the last of them on top: who opens the same few every day finds them there. The others stand
    /// by place, what lies here before what is kept for all work, and by name.
    /// </remarks>
    internal static FoundBeams Of(IEnumerable<BeamChoice> choices, int leftOut, DateOnly today) => new(
        [
            .. choices
                .OrderByDescending(choice => choice.UsedAt ?? DateTimeOffset.MinValue)
                .ThenBy(choice => choice.Place)
                .ThenBy(choice => choice.Name, StringComparer.OrdinalIgnoreCase),
        ],
        leftOut,
        today);
}
