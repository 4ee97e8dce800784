using System.Collections.Immutable;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.CombinationSets;

/// <summary>What a search for sets of combinations came to.</summary>
/// <param name="Sets">The sets, by place and name.</param>
/// <param name="Unreadable">Files that lie among them and cannot be used, with the reason.</param>
public sealed record CombinationSearch(ImmutableArray<CombinationSet> Sets, ImmutableArray<FileProblem> Unreadable);
