using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Short ways to write a beam with what it is held against, and to check it.</summary>
internal static class Checked
{
    /// <summary>50 × 200 mm upright: A = 10,000 mm², S = 333,333 mm³.</summary>
    internal static Section Plank { get; } = Section.Of(new SectionShape.Rectangle(0.05, 0.2));

    internal static Member Bare { get; } = new(null, null, null);

    internal static Member Stick(Strengths? allowable = null, Strengths? design = null, Section? section = null, double? creep = null) =>
        new(section ?? Plank, new Material { Allowable = allowable, Design = design, Creep = creep }, null);

    internal static Seat NoSeat { get; } = new(null, null, null, null);

    internal static StrengthProblem Problem(BeamModel model, params Member[] members) => new(
        new EnvelopeProblem(model, [], []),
        [.. model.Spans.Select((_, i) => members.Length == 0 ? Bare : members[Math.Min(i, members.Length - 1)])],
        [.. model.Supports.Select(_ => NoSeat)]);

    internal static StrengthProblem With(this StrengthProblem problem, DeflectionLimits limits) =>
        problem with { Limits = limits };

    internal static StrengthProblem With(this StrengthProblem problem, Seat seat) =>
        problem with { Seats = [.. problem.Seats.Select(_ => seat)] };

    internal static StrengthProblem WithPattern(this StrengthProblem problem, params ImmutableArray<int> cases) =>
        problem with { Beam = new EnvelopeProblem(problem.Beam.Model, cases, problem.Beam.Rolling) };

    internal static StrengthProblem WithRolling(this StrengthProblem problem, params ImmutableArray<RollingLoad> rolling) =>
        problem with { Beam = new EnvelopeProblem(problem.Beam.Model, problem.Beam.PatternCases, rolling) };

    internal static ImmutableArray<SectionCheck> Find(this StrengthProblem problem)
    {
        BeamSolver solver = new();
        return SectionChecks.Find(problem, EnvelopeSearch.Find(problem.Beam, solver), solver);
    }

    internal static BeamDemands Demands(this StrengthProblem problem)
    {
        BeamSolver solver = new();
        return new BeamDemands(problem.Beam, EnvelopeSearch.Find(problem.Beam, solver), solver);
    }

    /// <summary>The one check of a kind.</summary>
    internal static SectionCheck Only(this StrengthProblem problem, CheckKind kind) =>
        Assert.Single(problem.Find(), check => check.Kind == kind);

    internal static double Term(this SectionCheck check, CheckSymbol symbol) =>
        Assert.Single(check.Terms, term => term.Symbol == symbol).Value;

    /// <summary>One span on a pin and a roller; EI = 1e6.</summary>
    internal static BeamModel Simple(double length, params ImmutableArray<Load> loads) => Model(
        [length], [Support.Pin(0), Support.Roller(length)], loads);

    internal static BeamModel Model(double[] lengths, ImmutableArray<Support> supports, params ImmutableArray<Load> loads) => new(
        [.. lengths.Select(length => new Span(length, 1e6, 1e8))],
        supports,
        [],
        [new LoadCase("live", loads)],
        [new Combination("live", CombinationBasis.Service, [1])]);

    internal static BeamModel Factored(this BeamModel model) => model with
    {
        Combinations = [.. model.Combinations.Select(one => one with { Basis = CombinationBasis.Factored })],
    };

    internal static Load Uniform(double from, double to, double intensity) =>
        new Load.Distributed(from, to, intensity, intensity);
}
