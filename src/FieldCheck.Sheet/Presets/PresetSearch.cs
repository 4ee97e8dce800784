using System.Collections.Immutable;

namespace FieldCheck.Sheet.Presets;

/// <summary>What a search for presets came to.</summary>
/// <param name="Presets">The presets, by place and name.</param>
/// <param name="Unreadable">Files that lie among them and cannot be used, with the reason.</param>
public sealed record PresetSearch(ImmutableArray<Preset> Presets, ImmutableArray<FileProblem> Unreadable);
