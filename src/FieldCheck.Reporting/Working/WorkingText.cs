using System.Collections.Immutable;
using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Working;

/// <summary>The working by hand as text.</summary>
public static class WorkingText
{
    /// <summary>The working of one combination; of a beam that cannot be worked, why.</summary>
    /// <param name="calculation">The beam and what follows from it.</param>
    /// <param name="combination">Which combination, counted from 0.</param>
    /// <param name="request">How it is wanted.</param>
    public static ImmutableArray<WorkingLine> Lines(Calculation calculation, int combination, WorkingRequest request)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(request);
        return calculation switch
        {
            { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands stands } =>
                Standing(calculation, beam, stands.Combinations[combination], request),
            { Beam: BuiltBeam beam, Outcome: BeamOutcome outcome } =>
                NotStanding.Lines(calculation, beam, outcome, request),
            _ => NotStanding.Unread(calculation, request),
        };
    }

    private static ImmutableArray<WorkingLine> Standing(
        Calculation calculation, BuiltBeam beam, CombinationResponse answer, WorkingRequest request)
    {
        ImmutableArray<double> factors = answer.Combination.Factors;
        ImmutableArray<bool> lifted = [.. answer.Response.Reactions.Select(reaction => reaction.IsLiftedOff)];
        HandWorking working = HandWorking.Of(beam.Model, factors, request.About);

        // Lifting one support after the other can end on other supports than the answer's: then these are tried.
        if (!working.Reactions.Select(reaction => reaction.HasLetGo).SequenceEqual(lifted))
        {
            working = HandWorking.Of(beam.Model, factors, request.About, lifted);
        }

        if (working.Reach != HandReach.Whole)
        {
            ImmutableArray<GivenReaction> given =
            [
                .. answer.Response.Reactions.Select(reaction =>
                    new GivenReaction(reaction.Horizontal, reaction.Vertical, reaction.Moment)),
            ];
            working = HandWorking.Prove(beam.Model, factors, given, lifted, request.About);
        }

        return new WorkingSheet(calculation, beam, answer, working).Lines(request);
    }
}
