using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Benchmarks;

/// <summary>What a caller pays for: the whole answer of a beam, proof and all peaks included.</summary>
internal static class AnswerSection
{
    private static readonly Curve[] Curves = Enum.GetValues<Curve>();

    internal static void Run(Report report)
    {
        report.Section("Whole answer, with reactions, proof and peaks of all five curves");
        report.Row("beam", "median", "fastest", "allocated");
        Row(report, "3 spans, 10 loads", Beams.Typical);
        Row(report, "20 spans, 100 loads", Beams.Long);
    }

    private static void Row(Report report, string name, BeamModel beam)
    {
        BeamSolver solver = new();
        double seen = 0;
        void Answer()
        {
            BeamResponse response = ((BeamOutcome.Stands)solver.Solve(beam)).Combinations[0].Response;
            foreach (Curve curve in Curves)
            {
                seen += response.ExtremesOf(curve).Max.Value;
            }
        }

        Timing timing = Timing.Of(Answer);
        report.Row(
            name, Report.Time(timing.Median), Report.Time(timing.Fastest), Report.Bytes(Timing.AllocatedBy(Answer)));
        GC.KeepAlive(seen);
    }
}
