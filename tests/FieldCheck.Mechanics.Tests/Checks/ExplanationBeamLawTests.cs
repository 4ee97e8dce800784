using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>What the search for slips puts together from influences is what the beam gives when it is solved whole.</summary>
public sealed class ExplanationBeamLawTests
{
    private static readonly ReactionPart[] Parts = [ReactionPart.Vertical, ReactionPart.Horizontal, ReactionPart.Moment];

    public static TheoryData<bool, bool> Ways => new() { { false, false }, { false, true }, { true, false }, { true, true } };

    /// <summary>Under "dead" alone, each load of "live" put on besides or taken off.</summary>
    [Theory]
    [MemberData(nameof(Ways))]
    public void OneLoadMore_IsTheBeamSolvedWithIt(bool isOneWay, bool isOwn) => Law.Holds(
        isOneWay ? RandomBeam.OneWay : RandomBeam.Stable,
        Gen.Bool.Select(isMore => isMore ? 1.5 : -0.75),
        (model, factor) =>
        {
            if (Beam(model) is not { } beam)
            {
                return;
            }

            foreach (Load load in model.Cases[1].Loads)
            {
                double[]? expected = Solved(With(model, load), [1, 0, factor]);

                Same(expected, beam.WithMore(new LoadChange(load, factor, isOwn)));
            }
        });

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void LoadsThatGiveWhatIsStated_Fit_AndNoOthersDo(bool isOneWay) => Law.Holds(
        isOneWay ? RandomBeam.OneWay : RandomBeam.Stable,
        model =>
        {
            LoadChange[] changes = [.. model.Cases[1].Loads.Select(load => new LoadChange(load, 1, IsOwn: true))];
            if (Beam(model) is null || Solved(model, [1, 1]) is not { } figures)
            {
                return;
            }

            Same(figures, Beam(model, figures)!.With(changes));
            double far = figures.Max(Math.Abs) + 1;
            int off = (int)(1000 * model.Length) % figures.Length;
            ExplanationBeam misses = Beam(model, [.. figures.Select((figure, i) => i == off ? figure + far : figure)])!;
            double[]? told = misses.With(changes);
            Assert.True(told is null || (isOneWay && misses.Fit.Worst(told) > 1));
        });

    /// <summary>Half as stiff in bending, the supports a little lower.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void OnAnotherBeam_FiguresAreThoseOfThatBeam(bool isOneWay) => Law.Holds(
        isOneWay ? RandomBeam.OneWay : RandomBeam.Stable,
        model =>
        {
            BeamModel other = new(
                [.. model.Spans.Select(span => new Span(span.Length, span.FlexuralRigidity / 2, span.AxialRigidity, span.ShearRigidity))],
                [.. model.Supports.Select(support => support with { Settlement = support.Settlement + 1e-4 * support.Position })],
                model.Hinges,
                model.Cases,
                model.Combinations,
                model.HasAbsoluteStiffness);
            if (Beam(model) is not { } beam || Solved(other, [1, 0]) is not { } expected)
            {
                return;
            }

            Same(expected, beam.On(other));
            Same(expected, beam.OnIfItStands(other));
        });

    private static BeamModel With(BeamModel model, Load load) =>
        model with { Cases = model.Cases.Add(new LoadCase("more", [load])) };

    private static ExplanationBeam? Beam(BeamModel model, double[]? figures = null)
    {
        if (Outcome(model, [1, 0]) is not BeamOutcome.Stands { IsNearlyMovable: false })
        {
            return null;
        }

        ImmutableArray<ReactionFigure> stated =
        [
            .. model.Supports.SelectMany((_, support) => Parts.Select(part => (support, part)))
                .Select((one, i) => new ReactionFigure(one.support, one.part, figures?[i] ?? 0, 1e-3 * (figures?.Max(Math.Abs) ?? 1) + 1e-3)),
        ];
        return ExplanationBeam.Of(new StatedSet(model, [1, 0], stated), new BeamSolver(), new StiffnessMethod());
    }

    private static double[]? Solved(BeamModel model, ImmutableArray<double> factors) =>
        Outcome(model, factors) is BeamOutcome.Stands stands
            ?
            [
                .. stands.Combinations[0].Response.Reactions.SelectMany(
                    reaction => new[] { reaction.Vertical, reaction.Horizontal, reaction.Moment }),
            ]
            : null;

    private static BeamOutcome Outcome(BeamModel model, ImmutableArray<double> factors) => new BeamSolver().Solve(
        model with { Combinations = [new Combination("asked", CombinationBasis.Service, factors)] });

    private static void Same(double[]? expected, double[]? actual)
    {
        Assert.Equal(expected is null, actual is null);
        double size = 1 + (expected?.Max(Math.Abs) ?? 0);
        Assert.All(expected ?? [], (figure, i) => Assert.InRange(actual![i], figure - 1e-6 * size, figure + 1e-6 * size));
    }
}
