using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

public sealed partial class PatternTests
{
    /// <summary>
    /// Greatest figures of patterns of a uniform load on equal spans, in parts of w, wl and wl²: AISC Manual Table 3-23
    /// and handbook coefficient tables, as printed in the data files of the folder Published (pat-3span-12,
    /// pat-3span-13, pat-4span-124, pat-4span-13, udl-2span-one, pat-5span-124-support).
    /// </summary>
    [Theory]
    [InlineData(2, "R0", 0.4375, 5e-7, "1")]
    [InlineData(2, "R1", 1.25, 5e-7, "1 2")]
    [InlineData(2, "-R2", 0.0625, 5e-7, "1")]
    [InlineData(2, "M", 0.095703125, 5e-7, "1")]
    [InlineData(2, "-M", 0.125, 5e-7, "1 2")]
    [InlineData(3, "R0", 0.45, 5e-4, "1 3")]
    [InlineData(3, "R1", 1.2, 5e-4, "1 2")]
    [InlineData(3, "-R0", 0.05, 5e-4, "2")]
    [InlineData(3, "M", 0.1013, 5e-5, "1 3")]
    [InlineData(3, "D", 0.0099, 1e-4, "1 3")]
    [InlineData(4, "R0", 0.446, 5e-4, "1 3")]
    [InlineData(4, "R1", 1.223, 5e-4, "1 2 4")]
    [InlineData(4, "-R4", 0.054, 5e-4, "1 3")]
    [InlineData(4, "M", 0.0996, 5e-5, "1 3")]
    [InlineData(4, "-M", 0.1205, 5e-5, "1 2 4")]
    [InlineData(5, "-M", 0.12, 5e-4, "1 2 4")]
    public void EqualSpans_GreatestFigures_AreThePrintedOnes(
        int spans, string what, double printed, double tolerance, string bays)
    {
        Envelope envelope = Of(EqualSpans(spans));

        bool isLeast = what.StartsWith('-');
        string figure = what.TrimStart('-');
        (double value, Situation situation) = figure[0] switch
        {
            'R' => Pair(isLeast
                ? envelope.Reactions[figure[1] - '0'].Vertical.Min
                : envelope.Reactions[figure[1] - '0'].Vertical.Max),
            _ => Pair(Extreme(envelope.ExtremesOf(figure == "M" ? Curve.Moment : Curve.Deflection), isLeast)),
        };

        Assert.Equal(printed, isLeast ? -value : value, tolerance);
        LoadedBays loaded = situation.Patterns[0]!;
        Assert.Equal(bays, string.Join(' ', loaded.Bays.Select(bay => bay + 1)));
        Assert.False(loaded.OnLeftOverhang || loaded.OnRightOverhang);
    }

    [Fact]
    public void Overhangs_AreNamedByTheirSide()
    {
        BeamModel model = Model([2, 4, 3], [Support.Pin(2), Support.Roller(6)], new Load.Distributed(0, 9, 1, 1));

        GovernedRange left = Of(new EnvelopeProblem(model, [0], [])).Reactions[0].Vertical;

        Assert.Equal([0], left.Max.Situation.Patterns[0]!.Bays.AsEnumerable());
        Assert.True(left.Max.Situation.Patterns[0]!.OnLeftOverhang);
        Assert.False(left.Max.Situation.Patterns[0]!.OnRightOverhang);
        Assert.Empty(left.Min.Situation.Patterns[0]!.Bays);
        Assert.True(left.Min.Situation.Patterns[0]!.OnRightOverhang);

        // Moments about the right support: (2·5 + 4·2)/4 and 3·1.5/4.
        Assert.Equal(4.5, left.Max.Value, 1e-12);
        Assert.Equal(-1.125, left.Min.Value, 1e-12);
    }

    [Fact]
    public void LoadExactlyAtASupport_AlwaysCounts()
    {
        BeamModel model = Model(
            [4, 4], [Support.Pin(0), Support.Roller(4), Support.Roller(8)], new Load.Point(4, 10), new Load.Point(8, -3));

        Envelope envelope = Of(new EnvelopeProblem(model, [0], []));

        Assert.Equal(10, envelope.Reactions[1].Vertical.Min.Value, 1e-12);
        Assert.Equal(-3, envelope.Reactions[2].Vertical.Max.Value, 1e-12);
    }

    [Fact]
    public void LoadAtAFreeEnd_IsOnItsOverhang()
    {
        BeamModel model = Model([4, 2], [Support.Pin(0), Support.Roller(4)], new Load.Point(6, 10));

        GovernedRange left = Of(new EnvelopeProblem(model, [0], [])).Reactions[0].Vertical;

        Assert.Equal(0, left.Max.Value);
        Assert.Equal(-5, left.Min.Value, 1e-12);
        Assert.True(left.Min.Situation.Patterns[0]!.OnRightOverhang);
    }

    [Fact]
    public void PatternsOfSeveralCases_AreChosenApart()
    {
        BeamModel model = EqualSpans(2).Model with
        {
            Cases =
            [
                new LoadCase("live", [new Load.Distributed(0, 2, 1, 1)]),
                new LoadCase("wind", [new Load.Distributed(0, 2, -1, -1)]),
            ],
            Combinations = [new Combination("all", CombinationBasis.Service, [1, 1])],
        };

        Governed right = Of(new EnvelopeProblem(model, [0, 1], [])).Reactions[2].Vertical.Max;

        // 7/16 from its own bay by the load down, and 1/16 from the far bay by the load up.
        Assert.Equal(0.5, right.Value, 1e-12);
        Assert.Equal([1], right.Situation.Patterns[0]!.Bays.AsEnumerable());
        Assert.Equal([0], right.Situation.Patterns[1]!.Bays.AsEnumerable());
    }

    [Fact]
    public void Bases_AreNeverMixed()
    {
        BeamModel model = EqualSpans(1).Model with
        {
            Combinations =
            [
                new Combination("factored", CombinationBasis.Factored, [1.5]),
                new Combination("service", CombinationBasis.Service, [1]),
            ],
        };

        ImmutableArray<Envelope> envelopes =
            EnvelopeSearch.Find(new EnvelopeProblem(model, [], []), new BeamSolver());

        Assert.Equal([CombinationBasis.Service, CombinationBasis.Factored], envelopes.Select(one => one.Basis));
        Assert.Equal(0.5, envelopes[0].Reactions[0].Vertical.Max.Value, 1e-15);
        Assert.Equal(0.75, envelopes[1].Reactions[0].Vertical.Max.Value, 1e-15);
        Assert.Equal(0, envelopes[1].Reactions[0].Vertical.Max.Situation.Combination);
        Assert.Null(envelopes[0].Reactions[0].Vertical.Max.Situation.Patterns[0]);
    }

    [Fact]
    public void Ties_TakeTheLeftmostPlaceAndTheFirstCombination()
    {
        EnvelopeProblem problem = EqualSpans(3);
        BeamModel twice = problem.Model with
        {
            Combinations = [.. problem.Model.Combinations, problem.Model.Combinations[0] with { Name = "again" }],
        };

        GovernedExtreme peak = Of(new EnvelopeProblem(twice, [0], [])).ExtremesOf(Curve.Moment).Max;

        Assert.InRange(peak.Position, 0.4, 0.5);
        Assert.Equal(0, peak.Situation.Combination);
    }

    [Fact]
    public void Settlement_BelongsToEverySituation()
    {
        BeamModel model = EqualSpans(2).Model with
        {
            Supports =
                [Support.Pin(0), Support.Roller(1) with { Settlement = 0.01 }, Support.Roller(2)],
        };

        GovernedRange middle = Of(new EnvelopeProblem(model, [0], [])).Reactions[1].Vertical;

        // 48·EI·δ/L³ with L = 2 takes 0.06 from the middle; the load gives up to 1.25.
        Assert.Equal(-0.06, middle.Min.Value, 1e-12);
        Assert.Equal(1.19, middle.Max.Value, 1e-12);
    }

    /// <summary>Two equal spans under w on both: V is 3/8·w·l and -5/8·w·l in the first, 5/8·w·l and -3/8·w·l in the second.</summary>
    [Fact]
    public void Stretch_CountsTheInnerSideAtItsEnds()
    {
        Envelope envelope = Of(EqualSpans(2));
        Envelope standing = Of(new EnvelopeProblem(EqualSpans(2).Model, [], []));

        Assert.Equal(0.375, standing.ExtremesOf(Curve.Shear, 0, 1).Max.Value, 1e-12);
        Assert.Equal(-0.625, standing.ExtremesOf(Curve.Shear, 0, 1).Min.Value, 1e-12);
        Assert.Equal(0.625, standing.ExtremesOf(Curve.Shear, 1, 2).Max.Value, 1e-12);
        Assert.Equal(-0.375, standing.ExtremesOf(Curve.Shear, 1, 2).Min.Value, 1e-12);
        Assert.Equal(1, standing.ExtremesOf(Curve.Shear, 1, 2).Max.Position);
        Assert.Equal(0.095703125, envelope.ExtremesOf(Curve.Moment, 1, 2).Max.Value, 1e-12);
        Assert.Equal(1 + 9.0 / 16, envelope.ExtremesOf(Curve.Moment, 1, 2).Max.Position, 1e-12);
        Assert.Equal([1], envelope.ExtremesOf(Curve.Moment, 1, 2).Max.Situation.Patterns[0]!.Bays.AsEnumerable());
    }

    [Theory]
    [InlineData(0.3, 1)]
    [InlineData(0, 1.7)]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(1, 3)]
    public void StretchThatDoesNotRunFromNodeToNode_IsRefused(double from, double to) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(EqualSpans(2)).ExtremesOf(Curve.Moment, from, to));

    [Fact]
    public void OneFactorisation_ServesAllPartsOfAllCombinations()
    {
        EnvelopeProblem problem = EqualSpans(12);
        BeamSolver solver = new();

        EnvelopeSearch.Find(problem, solver);

        Assert.Equal(1, solver.Factorisations);
    }

    [Fact]
    public void BeamThatCanMove_HasNoEnvelope() => Assert.Empty(EnvelopeSearch.Find(
        new EnvelopeProblem(Model([4], [Support.Pin(0)], new Load.Point(2, 1)), [0], []), new BeamSolver()));

    [Fact]
    public void PatternOfACaseThatIsNot_IsRefused() => Assert.Throws<ArgumentException>(
        () => new EnvelopeProblem(EqualSpans(1).Model, [1], []));

    private static (double Value, Situation Situation) Pair(Governed governed) => (governed.Value, governed.Situation);

    private static (double Value, Situation Situation) Pair(GovernedExtreme governed) =>
        (governed.Value, governed.Situation);

    private static GovernedExtreme Extreme(GovernedExtremes both, bool isLeast) => isLeast ? both.Min : both.Max;

    private static Envelope Of(EnvelopeProblem problem) =>
        Assert.Single(EnvelopeSearch.Find(problem, new BeamSolver()));

    private static EnvelopeProblem EqualSpans(int spans) => new(
        Model(
            [.. Enumerable.Repeat(1.0, spans)],
            [Support.Pin(0), .. Enumerable.Range(1, spans).Select(i => Support.Roller(i))],
            new Load.Distributed(0, spans, 1, 1)),
        [0],
        []);

    private static BeamModel Model(double[] lengths, ImmutableArray<Support> supports, params ImmutableArray<Load> loads) =>
        new(
            [.. lengths.Select(length => new Span(length, 1, 1))],
            supports,
            [],
            [new LoadCase("live", loads)],
            [new Combination("live", CombinationBasis.Service, [1])]);
}
