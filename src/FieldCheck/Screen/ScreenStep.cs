using System.Collections.Immutable;

namespace FieldCheck.Screen;

/// <summary>What came of an event.</summary>
/// <param name="State">The screen now.</param>
/// <param name="Effects">What the shell is to do, in order.</param>
internal sealed record ScreenStep(ScreenState State, ImmutableArray<Effect> Effects);
