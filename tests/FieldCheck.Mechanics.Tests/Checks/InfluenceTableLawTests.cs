using CsCheck;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>An influence line at any place is what the beam gives with a load of one there.</summary>
public sealed class InfluenceTableLawTests
{
    private static readonly Curve[] Curves = [Curve.Axial, Curve.Shear, Curve.Moment, Curve.Slope, Curve.Deflection];
    private static readonly ReactionPart[] Parts = [ReactionPart.Vertical, ReactionPart.Horizontal, ReactionPart.Moment];

    private static readonly Gen<int> Seeds = Gen.Int[0, 1_000_000];

    [Fact]
    public void Ordinate_IsTheAnswerToALoadOfOne() => Law.Holds(RandomBeam.Stable, Seeds, (model, seed) =>
    {
        Random random = new(seed);
        if (Answers(model) is not { } answers)
        {
            return;
        }

        foreach (Target target in Targets(model, random))
        {
            InfluenceLine line = answers.Table!.Line(target);
            double place = random.NextDouble() * model.Length;
            Same(target, model, new Load.Point(place, 1), line, line.RangeOfOne(place, place, along: false));
            Same(target, model, new Load.Couple(place, 1), line, line.RangeOf(new Load.Couple(0, 1), place, place));
            if (answers.Nominal.IsHeldAlong)
            {
                Same(target, model, new Load.Point(place, 0, 1), line, line.RangeOfOne(place, place, along: true));
            }
        }
    });

    [Fact]
    public void Integrals_AreTheAnswersToSpreadLoads() => Law.Holds(RandomBeam.Stable, Seeds, (model, seed) =>
    {
        Random random = new(seed);
        if (Answers(model) is not { } answers)
        {
            return;
        }

        foreach (Target target in Targets(model, random))
        {
            InfluenceLine line = answers.Table!.Line(target);
            double[] ends = [.. new[] { random.NextDouble(), random.NextDouble() }.Order().Select(share => share * model.Length)];
            bool along = answers.Nominal.IsHeldAlong && random.Next(2) == 0;
            (double zerothFrom, double firstFrom) = line.Integral(along).To(ends[0]);
            (double zerothTo, double firstTo) = line.Integral(along).To(ends[1]);
            (double even, double rising) = (zerothTo - zerothFrom, firstTo - firstFrom);
            Same(target, model, new Load.Distributed(ends[0], ends[1], 1, 1, along), line, (even, even));
            // What grows with the distance from the left end.
            Same(target, model, new Load.Distributed(ends[0], ends[1], ends[0], ends[1], along), line, (rising, rising));
        }
    });

    private static IEnumerable<Target> Targets(BeamModel model, Random random) =>
    [
        .. Parts.Select(part => Target.Of(random.Next(model.Supports.Length), part)),
        .. Curves.Select(curve => Target.At(Place(model, random), random.Next(2) == 0 ? Side.Left : Side.Right, curve)),
    ];

    // At a node as often as not; at the ends of the beam there is a state on one side only.
    private static double Place(BeamModel model, Random random)
    {
        double[] nodes = [.. model.NodePositions().Where(node => node > 0 && node < model.Length)];
        return nodes.Length > 0 && random.Next(2) == 0
            ? nodes[random.Next(nodes.Length)]
            : (0.01 + 0.98 * random.NextDouble()) * model.Length;
    }

    /// <summary>One load that may stand anywhere, so that every element is touched.</summary>
    private static SuperposedAnswers? Answers(BeamModel model)
    {
        BeamModel bare = With(model, new Load.Point(model.Length / 2, 1));
        SuperposedAnswers? answers = SuperposedAnswers.Solve(
            new BeamSolver(), bare, [new InputSpread.LoadPosition(new LoadIndex(0, 0), model.Length)]);
        return answers is { Nominal.IsNearlyMovable: false } ? answers : null;
    }

    private static BeamModel With(BeamModel model, Load load) => new(
        model.Spans,
        [.. model.Supports.Select(support => support with { Settlement = 0, ImposedRotation = 0 })],
        model.Hinges,
        [new LoadCase("one", [load])],
        [new Combination("one", CombinationBasis.Service, [1])],
        model.HasAbsoluteStiffness);

    private static void Same(
        Target target, BeamModel model, Load load, InfluenceLine line, (double Low, double High) found)
    {
        BeamOutcome.Stands stands = Assert.IsType<BeamOutcome.Stands>(new BeamSolver().Solve(With(model, load)));
        double expected = target.In(stands.Combinations[0].Response);
        double rounding = 1e-7 * (1 + model.Length) * (1 + model.Length) * line.Size;

        Assert.InRange(found.Low, expected - rounding, expected + rounding);
        Assert.InRange(found.High, expected - rounding, expected + rounding);
    }
}
