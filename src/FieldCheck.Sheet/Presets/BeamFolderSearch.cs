using System.Collections.Immutable;

namespace FieldCheck.Sheet.Presets;

/// <summary>What a search through a folder came to.</summary>
/// <param name="Files">The beam files, by path.</param>
/// <param name="LeftOut">How many files were too many to be read: the oldest.</param>
public sealed record BeamFolderSearch(ImmutableArray<FoundBeam> Files, int LeftOut);
