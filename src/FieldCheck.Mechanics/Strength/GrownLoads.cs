using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Beams whose loads are greater or more than they stand.</summary>
internal static class GrownLoads
{
    /// <summary>The loads of some cases times a factor.</summary>
    internal static StrengthProblem Of(StrengthProblem problem, ImmutableArray<bool> grows, double factor) => With(
        problem,
        [.. problem.Beam.Model.Cases.Select((one, i) => grows[i] ? one with { Loads = Times(one.Loads, factor) } : one)],
        [.. problem.Beam.Rolling.Select(one => grows[one.Case] ? Times(one, factor) : one)]);

    /// <summary>One more point load.</summary>
    internal static StrengthProblem WithPoint(StrengthProblem problem, double position, int loadCase, double down) => With(
        problem,
        problem.Beam.Model.Cases.SetItem(
            loadCase,
            problem.Beam.Model.Cases[loadCase] with
            {
                Loads = problem.Beam.Model.Cases[loadCase].Loads.Add(new Load.Point(position, down)),
            }),
        problem.Beam.Rolling);

    /// <summary>What all loads come to, whichever way they act [N].</summary>
    internal static double SizeOf(StrengthProblem problem) =>
        problem.Beam.Model.Cases.SelectMany(one => one.Loads).Sum(SizeOf)
        + problem.Beam.Rolling.SelectMany(one => one.Axles).Sum(axle => Math.Abs(axle.Down));

    private static StrengthProblem With(
        StrengthProblem problem, ImmutableArray<LoadCase> cases, ImmutableArray<RollingLoad> rolling)
    {
        BeamModel model = problem.Beam.Model;
        BeamModel grown = new(
            model.Spans, model.Supports, model.Hinges, cases, model.Combinations, model.HasAbsoluteStiffness);
        return problem with { Beam = new EnvelopeProblem(grown, problem.Beam.PatternCases, rolling) };
    }

    private static double SizeOf(Load load) => load switch
    {
        Load.Point point => Math.Abs(point.Down),
        Load.Distributed spread =>
            (Math.Abs(spread.StartIntensity) + Math.Abs(spread.EndIntensity)) / 2 * (spread.To - spread.From),
        _ => 0,
    };

    private static ImmutableArray<Load> Times(ImmutableArray<Load> loads, double factor) =>
        [.. loads.Select(load => Times(load, factor))];

    private static Load Times(Load load, double factor) => load switch
    {
        Load.Point point => new Load.Point(point.Position, point.Down * factor, point.Right * factor),
        Load.Couple couple => new Load.Couple(couple.Position, couple.Moment * factor, couple.Side),
        Load.Distributed spread => new Load.Distributed(
            spread.From, spread.To, spread.StartIntensity * factor, spread.EndIntensity * factor, spread.ActsAlong),
        _ => throw new UnreachableException(),
    };

    private static RollingLoad Times(RollingLoad rolling, double factor) => new(
        rolling.Label,
        rolling.Case,
        [.. rolling.Axles.Select(axle => new Axle(axle.Offset, axle.Down * factor))],
        rolling.Impact);
}
