using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Sheet.Findings;

/// <summary>
/// The situations that pull or push some support most, each with its answer; found fast enough to be looked at after every
/// key.
/// </summary>
/// <remarks>
/// Where every support acts both ways these are the ends of the envelope that pull. Where one may let go, they are the situations
/// that would be the ends could all be pulled, solved again on what touches: trying all others takes far longer.
/// </remarks>
/// <param name="Answers">Each situation once, with its answer; null where the beam tips in it, or has none.</param>
internal sealed record WorstReactions(ImmutableArray<(Situation Situation, BeamResponse? Response)> Answers)
{
    /// <summary>Finds them.</summary>
    /// <param name="beam">The beam; it stands under every combination.</param>
    /// <param name="solver">The solver to use.</param>
    internal static WorstReactions Of(BuiltBeam beam, BeamSolver solver)
    {
        EnvelopeProblem problem = beam.Situations;
        BeamModel model = beam.Model with
        {
            Supports = [.. beam.Model.Supports.Select(support => support with { Action = SupportAction.Both })],
        };
        bool mayLetGo = beam.Model.Supports.Any(support => support.Action != SupportAction.Both);
        IEnumerable<Situation> ends =
            from envelope in EnvelopeSearch.Find(problem with { Model = model }, solver)
            from reaction in envelope.Reactions
            from governed in new[] { reaction.Vertical.Min, reaction.Vertical.Max }
            where mayLetGo || governed.Value < 0
            select governed.Situation;
        return new WorstReactions(
            [.. ends.DistinctBy(KeyOf).Select(one => (one, EnvelopeSearch.Respond(problem, one, solver)))]);
    }

    /// <summary>Patterns are lists, which compare by what they are and not by what they hold.</summary>
    private static string KeyOf(Situation situation) => string.Join(
        ';',
        situation.Patterns
            .Select(loaded => loaded is null
                ? ""
                : $"{string.Join(',', loaded.Bays)} {loaded.OnLeftOverhang} {loaded.OnRightOverhang}")
            .Prepend($"{situation.Combination} {situation.Rolling}"));
}
