using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>The same beam with every load and imposed movement grown alike.</summary>
internal static class Magnified
{
    internal static BeamModel By(BeamModel model, double factor) => model with
    {
        Supports =
        [
            .. model.Supports.Select(support => support with
            {
                Settlement = factor * support.Settlement,
                ImposedRotation = factor * support.ImposedRotation,
            }),
        ],
        Cases = [.. model.Cases.Select(one => one with { Loads = [.. one.Loads.Select(load => Grown(load, factor))] })],
    };

    private static Load Grown(Load load, double factor) => load switch
    {
        Load.Point point => new Load.Point(point.Position, factor * point.Down, factor * point.Right),
        Load.Couple couple => new Load.Couple(couple.Position, factor * couple.Moment, couple.Side),
        Load.Distributed spread => new Load.Distributed(
            spread.From,
            spread.To,
            factor * spread.StartIntensity,
            factor * spread.EndIntensity,
            spread.ActsAlong),
        _ => throw new ArgumentOutOfRangeException(nameof(load), load, "Not a load."),
    };
}
