using System.Collections.Immutable;
using FieldCheck.Screen;

namespace FieldCheck.Plain;

/// <summary>What came of a line.</summary>
/// <param name="State">The conversation now.</param>
/// <param name="Says">What is said, a line each, from wherever: it has still to be made fit for a terminal.</param>
/// <param name="Effects">What the shell is to do, in order.</param>
internal sealed record PlainStep(PlainState State, ImmutableArray<string> Says, ImmutableArray<Effect> Effects)
{
    /// <summary>The step with more said after it.</summary>
    /// <param name="lines">One sentence each.</param>
    internal PlainStep Then(params ReadOnlySpan<string> lines) => this with { Says = [.. Says, .. lines] };
}
