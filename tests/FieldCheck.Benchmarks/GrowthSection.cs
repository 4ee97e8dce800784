namespace FieldCheck.Benchmarks;

/// <summary>Twice the spans may cost twice the time, no more: a band, not a full matrix.</summary>
internal static class GrowthSection
{
    private const double Limit = 1.5;
    private const int Rounds = 5;
    private const int Few = 1_000;
    private const int Many = 100_000;

    internal static void Run(Report report)
    {
        report.Section("Growth");
        report.Row("spans", "processor/span");
        WarmCore chain = new(Beams.Chain(Few));
        WarmCore longChain = new(Beams.Chain(Many));
        double few = double.PositiveInfinity;
        double many = double.PositiveInfinity;

        // In turns, so that a busy spell of the machine falls on both.
        for (int round = 0; round < Rounds; round++)
        {
            few = Math.Min(few, ProcessorSeconds(chain.Solve, Many / Few) / Many);
            many = Math.Min(many, ProcessorSeconds(longChain.Solve, 1) / Many);
        }

        report.Row("1,000", Report.Time(few));
        report.Row("100,000", Report.Time(many));
        report.Promise("Time a span, 100,000 spans against 1,000", many / few, Limit, many / few <= Limit);
    }

    // Time that the processor spent on it, not time that passed: others may be using the machine.
    private static double ProcessorSeconds(Action call, int calls)
    {
        TimeSpan before = Environment.CpuUsage.TotalTime;
        for (int i = 0; i < calls; i++)
        {
            call();
        }

        return (Environment.CpuUsage.TotalTime - before).TotalSeconds;
    }
}
