using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Tests.Checks.Slips;

namespace FieldCheck.Benchmarks;

/// <summary>How long it takes to look for every explanation of stated reactions.</summary>
internal static class ExplanationSection
{
    internal static void Run(Report report)
    {
        report.Section("Explanations of stated reactions");
        report.Row("figures of a beam of 3 spans", "median", "fastest", "in solves");
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
            StatedSet set = beam.Stated(stated, digits: 3);
            Timing timing = Timing.Of(() => search.Explain(set));
            report.Row(
                name, Report.Time(timing.Median), Report.Time(timing.Fastest), Report.Times(timing.Fastest / solve));
        }
    }
}
