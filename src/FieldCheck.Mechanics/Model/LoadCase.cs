using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Model;

/// <summary>Loads that stand or do not stand together.</summary>
/// <param name="Name">What the case is called.</param>
/// <param name="Loads">Its loads, in any order.</param>
public sealed record LoadCase(string Name, ImmutableArray<Load> Loads);
