using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Answers that add up, on every support whichever way it acts; their pieces are the same.</summary>
/// <param name="Imposed">The answer to settlements and imposed rotations alone.</param>
/// <param name="Cases">The answer to each case alone, factor 1.</param>
internal sealed record PartAnswers(BeamResponse Imposed, ImmutableArray<BeamResponse> Cases);
