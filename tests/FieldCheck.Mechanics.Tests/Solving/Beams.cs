using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Short ways to write a beam, solve it and compare figures.</summary>
internal static class Beams
{
    internal const double Rigidity = 2e6;

    internal static BeamModel Beam(
        Span[] spans,
        Support[] supports,
        Load[] loads,
        double[]? hinges = null,
        bool hasAbsoluteStiffness = true) => new(
        [.. spans],
        [.. supports],
        [.. hinges ?? []],
        [new LoadCase("all", [.. loads])],
        [new Combination("all", CombinationBasis.Service, [1.0])],
        hasAbsoluteStiffness);

    internal static BeamModel Beam(double length, Support[] supports, Load[] loads, double[]? hinges = null) =>
        Beam([new Span(length, Rigidity, 1e9)], supports, loads, hinges);

    internal static BeamOutcome.Stands Stands(BeamModel model) =>
        Assert.IsType<BeamOutcome.Stands>(new BeamSolver().Solve(model));

    internal static BeamResponse Solve(BeamModel model) => Stands(model).Combinations[0].Response;

    internal static BeamResponse Solve(double length, Support[] supports, Load[] loads, double[]? hinges = null) =>
        Solve(Beam(length, supports, loads, hinges));

    internal static Load Uniform(double from, double to, double intensity) =>
        new Load.Distributed(from, to, intensity, intensity);

    /// <summary>Equal to 1e-13 of the expected value, or of a scale where that is given.</summary>
    internal static void Equal(double expected, double actual, double? scale = null)
    {
        double bound = 1e-13 * Math.Abs(scale ?? expected);
        Assert.True(
            Math.Abs(expected - actual) <= bound,
            $"expected {expected:R}, was {actual:R}, off by {actual - expected:E2}");
    }

    internal static ImmutableArray<double> Verticals(BeamResponse response) =>
        [.. response.Reactions.Select(reaction => reaction.Vertical)];
}
