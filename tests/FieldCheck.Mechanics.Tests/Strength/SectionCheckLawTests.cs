using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Mechanics.Tests.Envelopes;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Checks of beams of every kind against answers to every pattern, looked at place by place.</summary>
public sealed class SectionCheckLawTests
{
    private static readonly BeamSolver Solver = new();

    /// <summary>Two cases, two service combinations and a factored one; at most one case in patterns.</summary>
    private static Gen<StrengthProblem> Problems(Gen<BeamModel> beams) =>
        from model in beams
        from pattern in Gen.Int[-1, 1]
        from factors in Gen.Int[-8, 8].Select(n => n / 4.0).Array[4]
        from wide in Gen.Bool.Array[model.Spans.Length]
        let problem = Drawn(model, pattern, factors, wide)
        where EveryPattern.CountOf(problem.Beam) <= 5
        select problem;

    private static Gen<BeamModel> Held(Gen<BeamModel> beams) =>
        beams.Where(model => model.Supports.Any(one => one.Across is not Restraint.None));

    [Fact]
    public void NoPattern_IsWorseAndWhatGovernsIsReached() => Problems(Held(RandomBeam.Stable)).Sample(
        Holds, iter: Math.Max(1, Law.Draws / 6), threads: 1, print: Print);

    [Fact]
    public void NoPattern_IsWorseWhereSupportsLetGo() => Problems(Held(RandomBeam.OneWayPlain)).Sample(
        Holds, iter: Math.Max(1, Law.Draws / 6), threads: 1, print: Print);

    [Fact]
    public void NoPlaceOfARollingLoad_IsWorse() => (
        from problem in Problems(Held(RandomBeam.Stable).Where(model => model.Spans.Length <= 3))
        from second in Gen.Int[0, 40]
        from down in Gen.Int[-2, 8].Array[2]
        let rolling = new RollingLoad(
            "cart", 1, [new Axle(0, 2500.0 * down[0]), new Axle(second * RandomBeam.Grid, 2500.0 * down[1])], 0.25)
        where EveryPattern.CountOf(problem.Beam) <= 2
        select problem.WithRolling(rolling)).Sample(
        problem =>
        {
            TruePeaks truth = new(problem, Solver, steps: 12);
            foreach (SectionCheck check in problem.Find().Where(one => one.Reason is null))
            {
                Assert.True(
                    truth.Greatest(check) <= check.Demand!.Value + truth.SizeOf(check) * truth.NearOf(check),
                    $"{check}: {truth.Greatest(check):R} was found");
            }
        },
        iter: Math.Max(1, Law.Draws / 10),
        threads: 1,
        print: Print);

    /// <summary>Without imposed movements and lift-off twice the loads use up twice as much.</summary>
    [Fact]
    public void Utilisation_IsLinearInTheLoads() => Problems(Held(RandomBeam.Stable.Select(WithoutMovements))).Sample(
        problem =>
        {
            ImmutableArray<SectionCheck> once = problem.Find();
            ImmutableArray<SectionCheck> twice = GrownLoads.Of(problem, [true, true], 2).Find();
            TruePeaks truth = new(problem, Solver);

            Assert.Equal(once.Select(one => (one.Kind, one.Reason)), twice.Select(one => (one.Kind, one.Reason)));
            foreach ((SectionCheck one, SectionCheck other) in once.Zip(twice).Where(both => both.First.Reason is null))
            {
                Law.Equal(2 * one.Demand!.Value, other.Demand!.Value, 1e-9 * truth.SizeOf(one), $"{one}");
            }
        },
        iter: Math.Max(1, Law.Draws / 4),
        threads: 1,
        print: Print);

    [Fact]
    public void BeamTurnedRound_IsUsedUpAsMuch() => Problems(Held(RandomBeam.Stable)).Sample(
        problem =>
        {
            StrengthProblem turned = problem with
            {
                Beam = new EnvelopeProblem(
                    MirrorTests.Mirrored(problem.Beam.Model), problem.Beam.PatternCases, problem.Beam.Rolling),
                Members = [.. problem.Members.Reverse()],
            };
            TruePeaks truth = new(problem, Solver);
            int bays = Bays.Of(problem.Beam.Model).Between.Length;

            SectionCheck[] here = Ordered(problem.Find(), one => one.Bay, one => one.LastBay);
            SectionCheck[] there = Ordered(
                turned.Find(), one => bays - 1 - (one.LastBay ?? one.Bay), one => one.LastBay is null ? null : bays - 1 - one.Bay);

            Assert.Equal(here.Select(one => (one.Kind, one.Reason)), there.Select(one => (one.Kind, one.Reason)));
            foreach ((SectionCheck one, SectionCheck other) in here.Zip(there).Where(both => both.First.Reason is null))
            {
                Law.Equal(one.Demand!.Value, other.Demand!.Value, 1e-9 * truth.SizeOf(one), $"{one}");
                Assert.Equal(one.IsBound, other.IsBound);
            }

            static SectionCheck[] Ordered(
                ImmutableArray<SectionCheck> checks, Func<SectionCheck, int?> bay, Func<SectionCheck, int?> last) =>
            [
                .. checks.OrderBy(one => one.Kind).ThenBy(one => one.Basis).ThenBy(one => one.Case).ThenBy(last).ThenBy(bay)
                    .ThenBy(one => one.Limit).ThenBy(one => one.Demand).ThenBy(one => one.Reason),
            ];
        },
        iter: Math.Max(1, Law.Draws / 4),
        threads: 1,
        print: Print);

    private static void Holds(StrengthProblem problem)
    {
        TruePeaks truth = new(problem, Solver);
        // Whether what rolls lifts a support somewhere between the places tried here, nobody knows.
        bool isKnown = problem.Beam.Rolling.IsEmpty || problem.Beam.Model.Supports.All(one => one.Action == SupportAction.Both);
        foreach (SectionCheck check in problem.Find().Where(one => one.Reason is null && (isKnown || one.Case is null)))
        {
            double near = truth.SizeOf(check) * truth.NearOf(check);
            Assert.True(
                truth.Greatest(check) <= check.Demand!.Value + near, $"{check}: {truth.Greatest(check):R} was found");
            if (!check.IsBound && check.Case is null)
            {
                Law.Equal(check.Demand.Value, truth.InItsPlace(check), near, $"{check}");
            }
        }
    }

    private static StrengthProblem Drawn(BeamModel model, int pattern, double[] factors, bool[] wide)
    {
        BeamModel combined = model with
        {
            Combinations =
            [
                new Combination("plain", CombinationBasis.Service, [1, 1]),
                new Combination("other", CombinationBasis.Service, [.. factors[..2]]),
                new Combination("factored", CombinationBasis.Factored, [.. factors[2..]]),
            ],
        };
        Strengths given = new(10e6, 1e6, 2e6);
        Member narrow = Checked.Stick(given, given, creep: 0.6);
        Member broad = Checked.Stick(given, given, Section.Of(new SectionShape.Rectangle(0.1, 0.2)), 0.8);
        return new StrengthProblem(
            new EnvelopeProblem(combined, pattern < 0 ? [] : [pattern], []),
            [.. wide.Select(one => one ? broad : narrow)],
            [.. model.Supports.Select(_ => new Seat(0.1, null, 0.09, 50e3))])
        {
            Limits = new DeflectionLimits
            {
                BayRatio = 300,
                OverhangRatio = 150,
                FinalBayRatio = 300,
                FinalOverhangRatio = 150,
                Absolute = 0.01,
                Cases = [new CaseDeflectionLimit(0, 360)],
                Lasting = [1, 0.25],
            },
        };
    }

    private static BeamModel WithoutMovements(BeamModel model) => model with
    {
        Supports = [.. model.Supports.Select(one => one with { Settlement = 0, ImposedRotation = 0 })],
    };

    private static string Print(StrengthProblem problem) => string.Create(
        CultureInfo.InvariantCulture,
        $"""
        pattern {string.Join(' ', problem.Beam.PatternCases)}, factors {string.Join("; ", problem.Beam.Model.Combinations.Select(one => string.Join(' ', one.Factors)))}
        widths {string.Join(' ', problem.Members.Select(one => one.Section!.Area))}
        {string.Join('\n', problem.Beam.Rolling.SelectMany(one => one.Axles))}
        {BeamText.Of(problem.Beam.Model)}
        """);
}
