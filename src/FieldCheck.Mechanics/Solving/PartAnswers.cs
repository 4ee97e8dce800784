using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Answers that add up, on every support whichever way it acts.</summary>
/// <param name="Imposed">The answer to settlements and imposed rotations alone.</param>
/// <param name="Cases">The answer to each of the first cases alone, factor 1.</param>
/// <param name="Starts">Of each case after them only the reactions and the state where each element starts.</param>
internal sealed record PartAnswers(
    BeamResponse Imposed, ImmutableArray<PartAnswer> Cases, ImmutableArray<PartStarts> Starts);
