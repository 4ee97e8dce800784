using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Benchmarks;

/// <summary>
/// Envelopes of combinations, patterns and rolling loads: their time beside that of one answer to the same beam, and how
/// many matrices are factored for them.
/// </summary>
internal static class EnvelopeSection
{
    private const double MostSolves = 400;
    private const double MostGrowth = 2.5;

    private static readonly int[] Doublings = [250, 500, 1000];

    private static readonly Curve[] Forces = [Curve.Axial, Curve.Shear, Curve.Moment];

    internal static void Run(Report report)
    {
        report.Section("Envelopes: reactions and N, V, M; deflection apart");
        report.Row("problem", "median", "fastest", "with deflection", "in solves");
        double worst = 0;
        int factorisations = 0;

        // A code of many small parts: it takes more than a call's own warming to be compiled anew.
        foreach ((_, EnvelopeProblem problem) in Problems())
        {
            Timing.Of(() => Find(problem, new BeamSolver(), [.. Forces, Curve.Deflection]));
        }

        foreach ((string name, EnvelopeProblem problem) in Problems())
        {
            BeamSolver solver = new();
            BeamModel loaded = problem.Model with { Combinations = [problem.Model.Combinations[0]] };
            double solve = Timing.Of(() => solver.Solve(loaded)).Fastest;
            int before = solver.Factorisations;
            Find(problem, solver, Forces);
            factorisations = Math.Max(factorisations, solver.Factorisations - before);
            Timing forces = Timing.Of(() => Find(problem, solver, Forces));
            Timing all = Timing.Of(() => Find(problem, solver, [.. Forces, Curve.Deflection]));
            worst = Math.Max(worst, forces.Fastest / solve);
            report.Row(
                name,
                Report.Time(forces.Median),
                Report.Time(forces.Fastest),
                Report.Time(all.Fastest),
                Report.Times(forces.Fastest / solve));
        }

        Lifting(report);
        Growing(report);
        report.Promise("Matrices factored for an envelope", factorisations, 1, factorisations == 1);
        report.Promise("An envelope against one answer", worst, MostSolves, worst <= MostSolves);
    }

    /// <summary>Three axles over a chain: twice the spans, about twice the time.</summary>
    private static void Growing(Report report)
    {
        BeamSolver solver = new();
        double[] seconds = [.. Doublings.Select(spans =>
        {
            RollingLoad axles = new("axles", 0, [new Axle(0, 35e3), new Axle(3.6, 145e3), new Axle(7.9, 145e3)]);
            EnvelopeProblem problem = new(Beams.Chain(spans), [], [axles]);
            Timing timing = Timing.Of(() => Find(problem, solver, [.. Forces, Curve.Deflection]), repeats: 3);
            report.Row($"3 axles over {spans} spans", Report.Time(timing.Median), "", Report.Time(timing.Fastest), "");
            return timing.Fastest;
        })];
        double growth = Math.Max(seconds[1] / seconds[0], seconds[2] / seconds[1]);
        report.Promise("Envelope of twice the spans", growth, MostGrowth, growth <= MostGrowth);
    }

    /// <summary>Supports that only push, and lift: solved situation by situation.</summary>
    private static void Lifting(Report report)
    {
        foreach ((string name, int spans, bool rolls) in new[]
        {
            ("lift-off, pattern on 4 spans", 4, false),
            ("lift-off, pattern on 12 spans", 12, false),
            ("lift-off, 2 axles and pattern, 4", 4, true),
        })
        {
            BeamModel chain = Beams.Chain(spans);
            BeamModel model = chain with
            {
                Supports =
                [
                    .. chain.Supports.Select((one, i) => i == 0 ? one : one with { Action = SupportAction.PushesOnly }),
                ],
            };
            RollingLoad axles = new("axles", 0, [new Axle(0, 35e3), new Axle(3.6, 145e3)]);
            EnvelopeProblem problem = new(model, [0], rolls ? [axles] : []);
            BeamSolver solver = new();
            Timing timing = Timing.Of(() => Find(problem, solver, [.. Forces, Curve.Deflection]), repeats: 3);
            report.Row(name, Report.Time(timing.Median), Report.Time(timing.Fastest), "", "");
        }
    }

    private static double Find(EnvelopeProblem problem, BeamSolver solver, Curve[] curves)
    {
        double seen = 0;
        foreach (Envelope envelope in EnvelopeSearch.Find(problem, solver))
        {
            foreach (Curve curve in curves)
            {
                seen += envelope.ExtremesOf(curve).Max.Value + envelope.ExtremesOf(curve).Min.Value;
            }
        }

        return seen;
    }

    private static IEnumerable<(string Name, EnvelopeProblem Problem)> Problems()
    {
        BeamModel chain = Beams.Chain(50);
        ImmutableArray<Load> loads = [.. chain.Cases[0].Loads, .. chain.Cases[0].Loads];
        BeamModel combined = chain with
        {
            Cases =
            [
                .. Enumerable.Range(0, 4).Select(i =>
                    new LoadCase($"{i}", [.. loads.Where((_, k) => k % 4 == i)])),
            ],
            Combinations =
            [
                .. Enumerable.Range(0, 10).Select(i => new Combination(
                    $"{i}", CombinationBasis.Service, [1, i % 3, 0.3 * (i % 4), 1.5 - (0.3 * i)])),
            ],
        };
        yield return ("10 combinations, 50 spans, 300 loads", new EnvelopeProblem(combined, [], []));

        BeamModel ten = Beams.Chain(10) with { Cases = [new LoadCase("live", [])] };
        RollingLoad axles = new("axles", 0, [new Axle(0, 35e3), new Axle(3.6, 145e3), new Axle(7.9, 145e3)]);
        yield return ("3 axles over 10 spans", new EnvelopeProblem(ten, [], [axles]));
        yield return ("3 axles over 10 spans under load", new EnvelopeProblem(Beams.Chain(10), [], [axles]));

        Load[] spread =
        [
            .. Enumerable.Range(0, 50).Select(i =>
                new Load.Distributed(chain.JointPositions[i], chain.JointPositions[i + 1], 4e3, 4e3)),
        ];
        BeamModel pattern = chain with { Cases = [new LoadCase("live", [.. spread])] };
        yield return ("pattern load on 50 spans", new EnvelopeProblem(pattern, [0], []));
    }
}
