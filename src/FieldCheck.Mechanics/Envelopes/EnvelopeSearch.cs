using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Finds the envelopes of a beam, and answers for one of all its situations.</summary>
/// <remarks>The method is derived in docs/methods.md, "Envelopes".</remarks>
public static class EnvelopeSearch
{
    /// <summary>Where a support may let go, so many patterns at most are tried one by one, all combinations together.</summary>
    private const int MostPatterns = 1 << 14;

    /// <summary>The envelopes, one for each basis that has combinations, service first.</summary>
    /// <param name="problem">The beam, and what of its loads may stand or not, or move.</param>
    /// <param name="solver">The solver to work with.</param>
    /// <returns>
    /// Empty where the model has no combinations or the beam can move; a basis is left out where the beam stands in none
    /// of its situations.
    /// </returns>
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
            .. (from i in Enumerable.Range(0, problem.Model.Combinations.Length)
                group i by problem.Model.Combinations[i].Basis into basis
                orderby basis.Key
                select Of(basis.Key, [.. basis], sum, solver)).OfType<Envelope>(),
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

    private static Envelope? Of(
        CombinationBasis basis, ImmutableArray<int> combinations, Superposition sum, BeamSolver solver)
    {
        ImmutableArray<int> lifting = HasOneWay(sum.Problem.Model)
            ? [.. combinations.Where(combination => LiftOff.IsPossible(sum, combination))]
            : [];
        ImmutableArray<int> adding = [.. combinations.Except(lifting)];
        LiftedAnswers? lifted = lifting.IsEmpty ? null : Lifted(lifting, sum, solver);
        if (lifted is { Kept.Count: 0 } && adding.IsEmpty)
        {
            return null;
        }

        return new Envelope(
            basis,
            Reactions(sum, adding, lifted),
            curve => new CurveEnvelope(new CurveParts(sum, curve), adding, lifted))
        {
            ReactionCertainty = lifted?.Certainty ?? EnvelopeCertainty.Exact,
            WithoutAnswer = lifted?.WithoutAnswer ?? [],
        };
    }

    private static ImmutableArray<ReactionEnvelope> Reactions(
        Superposition sum, ImmutableArray<int> adding, LiftedAnswers? lifted)
    {
        ImmutableArray<ReactionEnvelope>? found = adding.IsEmpty ? null : new ReactionSearch(sum, adding).Find();
        if (lifted is null)
        {
            return found!.Value;
        }

        return
        [
            .. Enumerable.Range(0, sum.Problem.Model.Supports.Length).Select(i => new ReactionEnvelope(
                lifted.Joined(found?[i].Horizontal, reaction => reaction.Horizontal, i),
                lifted.Joined(found?[i].Vertical, reaction => reaction.Vertical, i),
                lifted.Joined(found?[i].Moment, reaction => reaction.Moment, i))),
        ];
    }

    private static LiftedAnswers Lifted(ImmutableArray<int> combinations, Superposition sum, BeamSolver solver)
    {
        LiftedAnswers answers = new(sum.Problem, sum.Imposed, solver);
        Lazy<RaisedRests?> rests = new(() => RaisedRests.Of(sum, solver));
        LiftedSearch[] searches =
            [.. combinations.Select(combination => new LiftedSearch(sum, combination, answers, rests))];
        double every = searches.Sum(search => search.Patterns);
        foreach (LiftedSearch search in searches)
        {
            search.Run(every <= MostPatterns && search.Patterns <= 1 << LiftedSearch.MostParts);
        }

        return answers;
    }

    private static bool HasOneWay(BeamModel model) => model.Supports.Any(support => support.Action != SupportAction.Both);
}
