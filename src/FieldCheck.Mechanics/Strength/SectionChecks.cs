using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Holds a beam against its strengths, its seats and its limits of deflection.</summary>
/// <remarks>The rules are told in docs/methods.md, "Checks".</remarks>
public static class SectionChecks
{
    /// <summary>Every check that the beam asks for, in the order of kind, span and support.</summary>
    /// <param name="problem">The beam with all that it is held against.</param>
    /// <param name="envelopes">Its envelopes, one for each basis; see <see cref="EnvelopeSearch.Find"/>.</param>
    /// <param name="solver">The solver to work with.</param>
    /// <returns>Empty where nothing is asked for.</returns>
    public static ImmutableArray<SectionCheck> Find(
        StrengthProblem problem, ImmutableArray<Envelope> envelopes, BeamSolver solver)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(solver);
        return [];
    }
}
