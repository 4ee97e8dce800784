using System.Diagnostics;

namespace FieldCheck.Benchmarks;

/// <summary>How long one call takes, from repeats of enough calls each.</summary>
/// <param name="Median">Middle one of the repeats [s].</param>
/// <param name="Fastest">The least disturbed one [s]; ratios are taken of these.</param>
internal readonly record struct Timing(double Median, double Fastest)
{
    private const int Repeats = 9;
    private const double LeastSeconds = 0.02;

    // Code reaches its final form only after some calls and a pause in which it is compiled anew.
    private const double WarmingSeconds = 0.3;

    internal static Timing Of(Action call, int repeats = Repeats)
    {
        WarmUp(call);
        int calls = CallsFor(call);
        double[] seconds = [.. Enumerable.Range(0, repeats).Select(_ => Measure(call, calls)).Order()];
        return new Timing(seconds[repeats / 2], seconds[0]);
    }

    /// <summary>Bytes that one call allocates once it is warm.</summary>
    internal static long AllocatedBy(Action call)
    {
        call();
        call();
        long before = GC.GetAllocatedBytesForCurrentThread();
        call();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static void WarmUp(Action call)
    {
        long start = Stopwatch.GetTimestamp();
        do
        {
            call();
        }
        while (Stopwatch.GetElapsedTime(start).TotalSeconds < WarmingSeconds);
    }

    // Doubled until one repeat lasts long enough for the clock.
    private static int CallsFor(Action call)
    {
        int calls = 1;
        while (Measure(call, calls) * calls < LeastSeconds)
        {
            calls *= 2;
        }

        return calls;
    }

    private static double Measure(Action call, int calls)
    {
        long start = Stopwatch.GetTimestamp();
        for (int i = 0; i < calls; i++)
        {
            call();
        }

        return Stopwatch.GetElapsedTime(start).TotalSeconds / calls;
    }
}
