using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The beam under the loads of one situation.</summary>
internal static class SituationLoads
{
    /// <summary>The beam with the one combination of a situation and the loads that stand in it.</summary>
    internal static BeamModel Model(EnvelopeProblem problem, Situation situation)
    {
        BeamModel model = problem.Model;
        Bays bays = Bays.Of(model);
        return model with
        {
            Cases =
            [
                .. model.Cases.Select((one, i) => one with
                {
                    Loads =
                    [
                        .. Standing(one.Loads, situation.Patterns[i], bays),
                        .. Rolling(problem, situation.Rolling, i),
                    ],
                }),
            ],
            Combinations = [model.Combinations[situation.Combination]],
        };
    }

    /// <summary>Where an axle stands [m].</summary>
    internal static double PlaceOf(Axle axle, double first, bool isReversed) =>
        isReversed ? first - axle.Offset : first + axle.Offset;

    private static ImmutableArray<Load> Standing(ImmutableArray<Load> loads, LoadedBays? loaded, Bays bays) =>
        loaded is null
            ? loads
            :
            [
                .. loads.Where(bays.IsOnNone),
                .. Enumerable.Range(0, bays.All.Length)
                    .Where(stretch => bays.IsLoaded(loaded, stretch))
                    .SelectMany(stretch => bays.PartsOn(loads, stretch)),
            ];

    private static IEnumerable<Load> Rolling(EnvelopeProblem problem, RollingPlace? place, int loadCase)
    {
        if (place is null || problem.Rolling[place.Rolling].Case != loadCase)
        {
            return [];
        }

        RollingLoad rolling = problem.Rolling[place.Rolling];
        return
            from axle in rolling.Axles
            let position = PlaceOf(axle, place.Position, place.IsReversed)
            where position >= 0 && position <= problem.Model.Length
            select new Load.Point(position, (1 + rolling.Impact) * axle.Down);
    }
}
