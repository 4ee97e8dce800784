using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Maxwell and Betti: either case works as much on the movements of the other.</summary>
public sealed class ReciprocityTests
{
    private const double Rounding = 1e-11;

    [Fact]
    public void WorkOfEitherCaseOnTheMovementsOfTheOther_IsTheSame() => Law.Holds(RandomBeam.Stable, drawn =>
    {
        BeamModel model = drawn with
        {
            Supports = Unmoved(drawn),
            Combinations =
            [
                new Combination("first", CombinationBasis.Service, [1, 0]),
                new Combination("second", CombinationBasis.Service, [0, 1]),
            ],
        };
        BeamResponse[] both = Answer.ToAll(model);
        Scale scale = new(model, both);
        double size = (scale.Force * (scale.Deflection + AlongMovement.Size(model, both[0])
            + AlongMovement.Size(model, both[1]))) + (scale.Moment * scale.Slope);

        double firstOnSecond = model.Cases[0].Loads.Sum(load => Work(load, model, both[1]));
        double secondOnFirst = model.Cases[1].Loads.Sum(load => Work(load, model, both[0]));

        Law.Equal(firstOnSecond, secondOnFirst, Rounding * size, "Work");
    });

    private static ImmutableArray<Support> Unmoved(BeamModel model) =>
        [.. model.Supports.Select(support => support with { Settlement = 0, ImposedRotation = 0 })];

    private static double Work(Load load, BeamModel model, BeamResponse moved) => load switch
    {
        Load.Point point => (point.Down * moved.At(point.Position).Right.Deflection)
            + (point.Right == 0 ? 0 : point.Right * AlongMovement.At(model, moved, point.Position)),
        Load.Couple couple => couple.Moment * TurnOf(couple, model, moved),
        Load.Distributed spread => Probes.Stretches(model, moved)
            .Where(stretch => stretch.From >= spread.From && stretch.To <= spread.To)
            .Sum(stretch => Quadrature.Integral(
                x => Statics.IntensityAt(spread, x) * Movement(spread, model, moved, x), stretch.From, stretch.To)),
        _ => throw new ArgumentOutOfRangeException(nameof(load), load, "Not a load."),
    };

    private static double Movement(Load.Distributed spread, BeamModel model, BeamResponse moved, double x) =>
        spread.ActsAlong ? AlongMovement.At(model, moved, x) : moved.At(x).Right.Deflection;

    private static double TurnOf(Load.Couple couple, BeamModel model, BeamResponse moved) =>
        couple.Position == 0 || (couple.Position < model.Length && couple.Side == Side.Right)
            ? Bending.RotationRightOf(model, moved, couple.Position)
            : Bending.RotationLeftOf(model, moved, couple.Position);
}
