using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Benchmarks;

/// <summary>
/// All checks of a beam, its envelopes included: their time beside that of one answer to the same beam; and what another
/// choice of sections costs where the demands are known.
/// </summary>
internal static class CheckSection
{
    private static readonly double[] Depths = [0.2, 0.3];

    private const double MostSolves = 300;
    private const double MostOfKnown = 0.5;

    internal static void Run(Report report)
    {
        report.Section("Checks: 10 combinations, strengths, seats and deflections, envelopes included");
        report.Row("problem", "median", "fastest", "in solves", "demands known");
        double worst = 0;
        double known = 0;

        // A code of many small parts: it takes more than a call's own warming to be compiled anew.
        foreach ((_, StrengthProblem problem) in Problems())
        {
            Timing.Of(() => Find(problem, new BeamSolver()));
        }

        foreach ((string name, StrengthProblem problem) in Problems())
        {
            BeamSolver solver = new();
            BeamModel loaded = problem.Beam.Model with { Combinations = [problem.Beam.Model.Combinations[0]] };
            double solve = Timing.Of(() => solver.Solve(loaded)).Fastest;
            Timing all = Timing.Of(() => Find(problem, solver));
            BeamDemands demands = new(problem.Beam, EnvelopeSearch.Find(problem.Beam, solver), solver);
            Timing again = Timing.Of(() => SectionChecks.Find(problem, demands));
            worst = Math.Max(worst, all.Fastest / solve);
            known = Math.Max(known, again.Fastest / all.Fastest);
            report.Row(
                name,
                Report.Time(all.Median),
                Report.Time(all.Fastest),
                Report.Times(all.Fastest / solve),
                Report.Time(again.Fastest));
        }

        report.Promise("All checks against one answer", worst, MostSolves, worst <= MostSolves);
        report.Promise("Checks of known demands, share", known, MostOfKnown, known <= MostOfKnown);
    }

    private static int Find(StrengthProblem problem, BeamSolver solver) =>
        SectionChecks.Find(problem, EnvelopeSearch.Find(problem.Beam, solver), solver).Length;

    private static IEnumerable<(string Name, StrengthProblem Problem)> Problems()
    {
        yield return ("3 spans, 10 loads", Problem(Beams.Typical));
        yield return ("20 spans, 100 loads", Problem(Beams.Long));
    }

    private static StrengthProblem Problem(BeamModel model)
    {
        BeamModel combined = model with
        {
            Cases =
            [
                .. Enumerable.Range(0, 4).Select(i => new LoadCase(
                    $"{i}", [.. model.Cases[0].Loads.Where((_, k) => k % 4 == i)])),
            ],
            Combinations =
            [
                .. Enumerable.Range(0, 10).Select(i => new Combination(
                    $"{i}",
                    i < 5 ? CombinationBasis.Service : CombinationBasis.Factored,
                    [1, i % 3, 0.3 * (i % 4), 1.5 - (0.1 * i)])),
            ],
        };
        Strengths given = new(10e6, 1e6, 2e6);
        Member[] members =
        [
            .. Depths.Select(depth => new Member(
                Section.Of(new SectionShape.Rectangle(0.1, depth)),
                new Material { Allowable = given, Design = given },
                null)),
        ];
        return new StrengthProblem(
            new EnvelopeProblem(combined, [], []),
            [.. model.Spans.Select((_, i) => members[i % 2])],
            [.. model.Supports.Select(_ => new Seat(0.1, 1e6, 0.09, 2e5))])
        {
            Limits = new DeflectionLimits { BayRatio = 300, OverhangRatio = 150, Absolute = 0.02 },
        };
    }
}
