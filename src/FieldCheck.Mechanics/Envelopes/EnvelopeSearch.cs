using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Finds the envelopes of a beam, and answers for one of all its situations.</summary>
/// <remarks>The method is derived in docs/methods.md, "Envelopes".</remarks>
public static class EnvelopeSearch
{
    /// <summary>The envelopes, one for each basis that has combinations, service first.</summary>
    /// <param name="problem">The beam, and what of its loads may stand or not, or move.</param>
    /// <param name="solver">The solver to work with.</param>
    /// <returns>Empty where the model has no combinations, or the beam does not stand.</returns>
    public static ImmutableArray<Envelope> Find(EnvelopeProblem problem, BeamSolver solver)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(solver);
        if (problem.Model.Combinations.IsEmpty || Superposition.Of(problem, solver) is not Superposition sum)
        {
            return [];
        }

        return
        [
            .. from i in Enumerable.Range(0, problem.Model.Combinations.Length)
               group i by problem.Model.Combinations[i].Basis into basis
               orderby basis.Key
               select Of(basis.Key, [.. basis], sum),
        ];
    }

    /// <summary>The answer to one situation, with supports that let go.</summary>
    /// <param name="problem">The beam, and what of its loads may stand or not, or move.</param>
    /// <param name="situation">The situation; one of this problem's.</param>
    /// <param name="solver">The solver to work with.</param>
    /// <returns>Null where the beam does not stand in it.</returns>
    public static BeamResponse? Respond(EnvelopeProblem problem, Situation situation, BeamSolver solver)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(situation);
        ArgumentNullException.ThrowIfNull(solver);
        return solver.Solve(SituationLoads.Model(problem, situation)) is BeamOutcome.Stands stands
            ? stands.Combinations[0].Response
            : null;
    }

    private static Envelope Of(CombinationBasis basis, ImmutableArray<int> combinations, Superposition sum) => new(
        basis,
        new ReactionSearch(sum, combinations).Find(),
        curve => new CurveEnvelope(new CurveParts(sum, curve), combinations));
}
