using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Rolls the axles of an example over its beam, both ways.</summary>
internal static class MovingTrain
{
    internal static double Worst(PublishedCase example, string what)
    {
        BeamModel beam = example.Beam! with
        {
            Cases = [new LoadCase("axles", [])],
            Combinations = [new Combination("axles", CombinationBasis.Service, [1])],
        };
        RollingLoad axles = new("axles", 0, [.. example.Axles.Select(axle => new Axle(axle.Offset, axle.Force))]);
        GovernedExtreme worst = Assert
            .Single(EnvelopeSearch.Find(new EnvelopeProblem(beam, [], [axles]), new BeamSolver()))
            .ExtremesOf(Curve.Moment)
            .Max;
        return what switch
        {
            "absolute_max_moment" => worst.Value,
            "x_of_max_moment" => Math.Min(worst.Position, beam.Length - worst.Position),
            _ => throw new InvalidDataException($"Unknown quantity {what}."),
        };
    }
}
