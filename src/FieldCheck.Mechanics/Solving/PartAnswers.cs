using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Answers that add up, on every support whichever way it acts.</summary>
/// <param name="Imposed">The answer to settlements and imposed rotations alone.</param>
/// <param name="Cases">The answer to each of the first cases alone, factor 1; all have the same pieces.</param>
/// <param name="Starts">
/// Of each case after them only this: of every support the reaction right, up and turning, then of every element N, V,
/// M, turn and rise at its left end.
/// </param>
internal sealed record PartAnswers(
    BeamResponse Imposed, ImmutableArray<BeamResponse> Cases, ImmutableArray<double[]> Starts)
{
    /// <summary>Figures a support.</summary>
    internal const int ASupport = 3;

    /// <summary>Figures an element.</summary>
    internal const int AnElement = 5;
}
