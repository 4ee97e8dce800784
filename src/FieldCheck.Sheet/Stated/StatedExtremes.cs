using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Stated;

/// <summary>Finds what governs a reaction over all that patterns and rolling loads let happen.</summary>
/// <param name="beam">The beam.</param>
/// <param name="envelopes">Over all combinations of each basis.</param>
/// <param name="solver">Solves what governs.</param>
internal sealed class StatedExtremes(
    BuiltBeam beam, Lazy<ImmutableArray<Envelope>> envelopes, BeamSolver solver)
{
    /// <summary>False: nothing happens that the combinations do not say.</summary>
    internal bool AreMore => beam.Varies;

    /// <summary>True: loads of a case may stand or not, or roll.</summary>
    internal bool Varies(string name)
    {
        int index = IndexOf(name);
        return beam.PatternCases.Contains(index) || beam.Rolling.Any(rolling => rolling.Case == index);
    }

    /// <summary>True: nothing of a case stands, and something of it rolls.</summary>
    internal bool OnlyRolls(string name) =>
        IndexOf(name) is >= 0 and int index && beam.Model.Cases[index].Loads.IsEmpty && Varies(name);

    /// <summary>What governs over all combinations of a basis.</summary>
    internal Reading<StatedAgainst> Of(CombinationBasis basis, StatedExtreme asked) =>
        Answer(beam.Situations, envelopes.Value.FirstOrDefault(envelope => envelope.Basis == basis), asked, isCase: false);

    /// <summary>What governs within one combination.</summary>
    internal Reading<StatedAgainst> OfCombination(string name, StatedExtreme asked) => OfOne(
        beam.Situations,
        [beam.Model.Combinations.First(combination => combination.Name == name)],
        asked,
        isCase: false);

    /// <summary>What governs within one case alone, with factor 1 and without settlements.</summary>
    internal Reading<StatedAgainst> OfCase(string name, StatedExtreme asked)
    {
        ImmutableArray<double> alone = [.. beam.Model.Cases.Select((_, other) => other == IndexOf(name) ? 1.0 : 0.0)];
        bool isMoved = beam.Model.Supports.Any(support => support.Settlement != 0 || support.ImposedRotation != 0);
        return isMoved && beam.Model.Supports.Any(support => support.Action != SupportAction.Both)
            ? new Reading<StatedAgainst>.Refused(StatedReasons.CaseMoves(name), 0)
            : OfOne(beam.Situations, [new Combination(name, CombinationBasis.Service, alone)], asked, isCase: true);
    }

    private Reading<StatedAgainst> OfOne(
        EnvelopeProblem all, ImmutableArray<Combination> one, StatedExtreme asked, bool isCase)
    {
        BeamModel model = all.Model with { Combinations = one };
        EnvelopeProblem problem = new(isCase ? WithoutImposed(model) : model, all.PatternCases, all.Rolling);
        return Answer(problem, EnvelopeSearch.Find(problem, solver).FirstOrDefault(), asked, isCase);
    }

    private Reading<StatedAgainst> Answer(
        EnvelopeProblem problem, Envelope? envelope, StatedExtreme asked, bool isCase)
    {
        Situation? situation = envelope is null ? null : asked.Of(envelope.Reactions).Situation;
        if (situation is null || EnvelopeSearch.Respond(problem, situation, solver) is not BeamResponse response)
        {
            return new Reading<StatedAgainst>.Refused(StatedReasons.NoAnswer, 0);
        }

        Combination combination = problem.Model.Combinations[situation.Combination];
        int free = response.Reactions.Select(reaction => reaction.IsLiftedOff).ToList().IndexOf(true);
        return isCase && free >= 0
            ? new Reading<StatedAgainst>.Refused(
                StatedReasons.CaseLiftsOff(combination.Name, beam.Supports[free].Label), 0)
            : new Reading<StatedAgainst>.Accepted(
                new StatedAgainst(combination.Name, isCase, combination.Basis, combination.Factors, response)
                {
                    Extreme = asked.IsMax ? "max" : "min",
                    Governs = new Situation(
                        isCase ? 0 : beam.Model.Combinations.IndexOf(combination), situation.Patterns, situation.Rolling),
                });
    }

    private int IndexOf(string name) => beam.Model.Cases.Select(one => one.Name).ToList().IndexOf(name);

    private static BeamModel WithoutImposed(BeamModel model) => model with
    {
        Supports = [.. model.Supports.Select(support => support with { Settlement = 0, ImposedRotation = 0 })],
    };
}
