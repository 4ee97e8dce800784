using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Stated;

namespace FieldCheck.Sheet.Findings;

/// <summary>
/// The situations that pull or push some support most, each with its answer; found fast enough to be looked at after every
/// key.
/// </summary>
/// <remarks>
/// These are the ends of the envelope. On a larger beam with a support that may let go they are the situations that
/// would be the ends could all be pulled, solved again on what touches: trying all others takes far longer.
/// </remarks>
/// <param name="Answers">Each situation once, with its answer; null where the beam tips in it, or has none.</param>
/// <param name="AreEnds">False: another situation may pull or push more than these do.</param>
/// <param name="Envelopes">The envelopes of which these are ends; empty where they are not.</param>
internal sealed record WorstReactions(
    ImmutableArray<(Situation Situation, BeamResponse? Response)> Answers, bool AreEnds, ImmutableArray<Envelope> Envelopes)
{
    /// <summary>
    /// Up to so many supports times combinations the envelope is found where a support may let go: a few tenths of
    /// a second at most.
    /// </summary>
    private const int MostSearched = 40;

    /// <summary>The same where loads roll: every place at which a support lets go is a solve of its own.</summary>
    private const int MostSearchedRolling = 10;

    /// <summary>Finds them.</summary>
    /// <param name="beam">The beam; it stands under every combination.</param>
    /// <param name="envelopes">Its envelopes; not asked for where that would take long and nothing has asked yet.</param>
    /// <param name="solver">The solver to use.</param>
    internal static WorstReactions Of(BuiltBeam beam, Lazy<ImmutableArray<Envelope>> envelopes, BeamSolver solver)
    {
        EnvelopeProblem problem = beam.Situations;
        BeamModel model = beam.Model;
        bool mayLetGo = model.Supports.Any(support => support.Action != SupportAction.Both);
        int size = model.Supports.Length * model.Combinations.Length;
        bool areEnds = !mayLetGo
            || envelopes.IsValueCreated
            || size <= (problem.Rolling.IsEmpty ? MostSearched : MostSearchedRolling);
        ImmutableArray<Envelope> found =
            areEnds ? envelopes.Value : EnvelopeSearch.Find(problem with { Model = ActingBothWays(model) }, solver);
        IEnumerable<Situation> ends =
            from envelope in found
            from reaction in envelope.Reactions
            from governed in new[] { reaction.Vertical.Min, reaction.Vertical.Max }
            where mayLetGo || governed.Value < 0
            select governed.Situation;
        IEnumerable<Situation> tipping = found.SelectMany(envelope => envelope.WithoutAnswer.Take(1));
        return new WorstReactions(
            [
                .. ends.Concat(tipping).Distinct()
                    .Select(one => (one, EnvelopeSearch.Respond(problem, one, solver))),
            ],
            areEnds,
            areEnds ? found : []);
    }

    /// <summary>
    /// The greatest size, with its sign, that a reaction is found to reach over all that the combinations of a basis let happen
    /// [N or N·m]; null where there is no such combination.
    /// </summary>
    internal double? Greatest(BuiltBeam beam, int support, ReactionComponent component, CombinationBasis basis)
    {
        IEnumerable<double> found = AreEnds
            ? from envelope in Envelopes
              where envelope.Basis == basis
              from end in new StatedExtreme[] { new(support, component, IsMax: true), new(support, component, IsMax: false) }
              select end.Of(envelope.Reactions).Value
            : from one in Answers
              where one.Response is not null && beam.Model.Combinations[one.Situation.Combination].Basis == basis
              select component.Value(one.Response.Reactions[support]);
        return found.Select(value => (double?)value).MaxBy(value => Math.Abs(value!.Value));
    }

    private static BeamModel ActingBothWays(BeamModel model) => model with
    {
        Supports = [.. model.Supports.Select(support => support with { Action = SupportAction.Both })],
    };
}
