using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Tests.Checks.Slips;

namespace FieldCheck.Benchmarks;

/// <summary>How long it takes to look for every explanation of stated reactions.</summary>
internal static class ExplanationSection
{
    internal static void Run(Report report)
    {
        report.Section("Explanations of stated reactions");
        report.Row("figures of a beam", "median", "fastest", "in solves");
        SlipBeam beam = SlipBeams.Draw(new Random(3), spans: 3);
        BeamSolver solver = new();
        double[] figures = beam.Figures(solver)!;
        double solve = Timing.Of(() => solver.Solve(beam.Model)).Fastest;
        ExplanationSearch search = new();
        foreach ((string name, double[] stated) in new[]
        {
            ("each off at random", (double[])[.. figures.Select((figure, i) => figure * (i % 2 == 0 ? 1.11 : 0.93))]),
            ("the sum right, the split wrong", [figures[0] + 1500, figures[1] - 2500, figures[2] + 500, figures[3] + 500]),
            ("two figures only", [figures[0] * 1.11, figures[1] * 0.93]),
        })
        {
            Row(report, $"3 spans, {name}", beam.Stated(stated, digits: 3), search, solve);
        }

        BeamModel large = Beams.Largest;
        double largeSolve = Timing.Of(() => solver.Solve(large)).Fastest;
        double[] reactions = [.. ((BeamOutcome.Stands)solver.Solve(large)).Combinations[0].Response.Reactions.Select(one => one.Vertical)];
        foreach ((string name, double[] stated) in new[]
        {
            ("each off at random", (double[])[.. reactions.Select((figure, i) => figure * (i % 2 == 0 ? 1.11 : 0.93))]),
            ("the split wrong", [reactions[0] + 1500, reactions[1] - 1500, .. reactions[2..]]),
            ("two figures only", [reactions[0] * 1.11, reactions[1] * 0.93]),
        })
        {
            ReactionFigure[] all =
                [.. stated.Select((value, i) => new ReactionFigure(i, ReactionPart.Vertical, value, HalfDigit: 50))];
            Row(report, $"50 spans, {name}", new StatedSet(large, [1], [.. all]), search, largeSolve);
        }
    }

    private static void Row(Report report, string name, StatedSet set, ExplanationSearch search, double solve)
    {
        Timing timing = Timing.Of(() => search.Explain(set));
        report.Row(name, Report.Time(timing.Median), Report.Time(timing.Fastest), Report.Times(timing.Fastest / solve));
    }
}
