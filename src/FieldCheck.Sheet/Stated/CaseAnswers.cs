using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Stated;

/// <summary>The answer of a beam to one of its cases alone.</summary>
/// <param name="beam">The beam.</param>
/// <param name="stands">How it stands.</param>
/// <param name="solver">Solves cases that the answer has none for.</param>
internal sealed class CaseAnswers(BuiltBeam beam, BeamOutcome.Stands stands, BeamSolver solver)
{
    /// <summary>The answer to a case, or why there is none.</summary>
    internal Reading<StatedAgainst> Find(string name)
    {
        int index = IndexOf(name);
        if (index < 0 || beam.Model.Cases[index].Loads.IsEmpty)
        {
            return Refuse(StatedReasons.NoLoadsInCase(name));
        }

        ImmutableArray<double> factors = [.. beam.Model.Cases.Select((_, other) => other == index ? 1.0 : 0.0)];
        return stands.Cases.IsEmpty ? SolveAlone(name, factors)
            : stands.Cases[index] is BeamResponse response ? Accept(name, factors, response)
            : Refuse(StatedReasons.CaseSlides(name));
    }

    /// <summary>A support acts one way only: the case has an answer of its own while every support touches.</summary>
    private Reading<StatedAgainst> SolveAlone(string name, ImmutableArray<double> factors)
    {
        if (beam.Model.Supports.Any(support => support.Settlement != 0 || support.ImposedRotation != 0))
        {
            return Refuse(StatedReasons.CaseMoves(name));
        }

        BeamModel alone = beam.Model with
        {
            Combinations = [new Combination(name, CombinationBasis.Service, factors)],
        };
        if (solver.Solve(alone) is not BeamOutcome.Stands { Combinations: [CombinationResponse answer] })
        {
            return Refuse(StatedReasons.CaseDoesNotStand(name));
        }

        int free = answer.Response.Reactions.Select(reaction => reaction.IsLiftedOff).ToList().IndexOf(true);
        return free < 0
            ? Accept(name, factors, answer.Response)
            : Refuse(StatedReasons.CaseLiftsOff(name, beam.Supports[free].Label));
    }

    private int IndexOf(string name) => beam.Model.Cases.Select(one => one.Name).ToList().IndexOf(name);

    private static Reading<StatedAgainst>.Accepted Accept(
        string name, ImmutableArray<double> factors, BeamResponse response) =>
        new(new StatedAgainst(name, IsCase: true, CombinationBasis.Service, factors, response));

    private static Reading<StatedAgainst>.Refused Refuse(string reason) => new(reason, 0);
}
