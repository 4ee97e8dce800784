using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>
/// Reactions that somebody states for one combination of a beam, and what is needed to ask why they differ.
/// </summary>
/// <param name="Model">The beam; its other combinations are tried as explanations.</param>
/// <param name="Factors">Factors of the combination that the figures are said to be for, one a case [–].</param>
/// <param name="Figures">The figures; one or more, no two of one part of one support.</param>
public sealed record StatedSet(
    BeamModel Model, ImmutableArray<double> Factors, ImmutableArray<ReactionFigure> Figures)
{
    /// <summary>Indices, over all cases, of the loads that are the beam's own weight.</summary>
    public ImmutableArray<int> OwnWeight { get; init; } = [];

    /// <summary>Indices, over all cases, of spread loads that do not come from a pressure on a width.</summary>
    public ImmutableArray<int> WithoutWidth { get; init; } = [];

    /// <summary>
    /// Weight of each span [N/m] where own weight is not among the loads but is known; else empty.
    /// </summary>
    public ImmutableArray<double> UncountedWeight { get; init; } = [];

    /// <summary>Indices of the cases that are there all the time; the others are variable.</summary>
    public ImmutableArray<int> PermanentCases { get; init; } = [];
}
