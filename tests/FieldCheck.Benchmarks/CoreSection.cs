using FieldCheck.Mechanics.Model;

namespace FieldCheck.Benchmarks;

/// <summary>The warm core: time, and the promise that it allocates nothing.</summary>
internal static class CoreSection
{
    internal static void Run(Report report)
    {
        report.Section("Warm core (number, assemble, factor, solve, trace)");
        report.Row("beam", "median", "fastest", "with peaks", "allocated");
        long allocated = 0;
        foreach ((string name, BeamModel beam) in Timed())
        {
            WarmCore core = new(beam);
            long bytes = Timing.AllocatedBy(core.SolveAndFindPeaks);
            allocated += bytes;
            Timing solve = Timing.Of(core.Solve);
            report.Row(
                name,
                Report.Time(solve.Median),
                Report.Time(solve.Fastest),
                Report.Time(Timing.Of(core.SolveAndFindPeaks).Fastest),
                Report.Bytes(bytes));
        }

        report.Promise("Bytes allocated by the warm core", allocated, 0, allocated == 0);
    }

    private static IEnumerable<(string Name, BeamModel Beam)> Timed() =>
    [
        ("3 spans, 10 loads", Beams.Typical),
        ("20 spans, 100 loads", Beams.Long),
        ("1,000 spans, 3,000 loads", Beams.Chain(1_000)),
        ("10,000 spans, 30,000 loads", Beams.Chain(10_000)),
        ("100,000 spans, 300,000 loads", Beams.Chain(100_000)),
    ];
}
