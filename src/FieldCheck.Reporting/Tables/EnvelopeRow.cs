using System.Collections.Immutable;

namespace FieldCheck.Reporting.Tables;

/// <summary>One end of an envelope in words.</summary>
/// <param name="Name">What it is of, as "A vertical" or "moment".</param>
/// <param name="End">"greatest" or "least"; "always" where both are one.</param>
/// <param name="Items">The value with its place, what governs, and what is to be said beside it.</param>
internal sealed record EnvelopeRow(string Name, string End, ImmutableArray<string> Items);
