using MathNet.Numerics.LinearAlgebra;

namespace FieldCheck.Benchmarks;

/// <summary>
/// The band factorisation in long arithmetic, filling the matrix included, against a general dense solve in doubles of
/// the same matrix.
/// </summary>
internal static class DenseSection
{
    private const double LeastGain = 100;

    internal static void Run(Report report)
    {
        report.Section("Factor and solve, same matrix");
        report.Row("unknowns", "band, long", "dense LU", "dense Cholesky", "gain");
        Compare(report, spans: 3, withLu: true);
        Compare(report, spans: 20, withLu: true);
        Compare(report, spans: 150, withLu: true);
        double gain = Compare(report, spans: 1_000, withLu: false);
        report.Promise("Band over dense Cholesky at 1,000 spans", gain, LeastGain, gain >= LeastGain);
    }

    private static double Compare(Report report, int spans, bool withLu)
    {
        ChainMatrix chain = new(spans);
        Matrix<double> dense = chain.Dense();
        Vector<double> side = Vector<double>.Build.Dense(chain.Side);
        int repeats = spans < 1_000 ? 5 : 1;

        chain.Compare(dense.Cholesky().Solve(side));
        double band = Timing.Of(chain.SolveBanded, repeats).Fastest;
        double cholesky = Timing.Of(() => dense.Cholesky().Solve(side), repeats).Fastest;
        string lu = withLu ? Report.Time(Timing.Of(() => dense.LU().Solve(side), repeats).Fastest) : "-";

        report.Row($"{chain.Side.Length}", Report.Time(band), lu, Report.Time(cholesky), Report.Times(cholesky / band));
        return cholesky / band;
    }
}
