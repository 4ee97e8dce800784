using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// Rolling loads set down at places of one's choice, both ways, as plain forces: slow, but it knows nothing of influence
/// lines.
/// </summary>
internal static class EveryPlace
{
    /// <summary>Evenly spread places of the first axle, from where the load is off one end to where it is off the other.</summary>
    internal static IEnumerable<(int Rolling, double At, bool IsReversed)> Steps(EnvelopeProblem problem, int count) =>
        from i in Enumerable.Range(0, problem.Rolling.Length)
        let reach = problem.Rolling[i].Axles.Max(axle => axle.Offset)
        from step in Enumerable.Range(0, count + 1)
        let way = (problem.Model.Length + reach) * step / count
        from isReversed in (IEnumerable<bool>)[false, true]
        select (i, isReversed ? way : way - reach, isReversed);

    /// <summary>A model with the axles on it.</summary>
    internal static BeamModel With(
        BeamModel model, EnvelopeProblem problem, (int Rolling, double At, bool IsReversed) place)
    {
        RollingLoad rolling = problem.Rolling[place.Rolling];
        Load[] forces =
        [
            .. rolling.Axles
                .Select(axle => (Place: place.IsReversed ? place.At - axle.Offset : place.At + axle.Offset, axle.Down))
                .Where(axle => axle.Place >= 0 && axle.Place <= model.Length)
                .Select(axle => new Load.Point(axle.Place, axle.Down * (1 + rolling.Impact))),
        ];
        LoadCase loaded = model.Cases[rolling.Case];
        return model with
        {
            Cases = model.Cases.SetItem(rolling.Case, loaded with { Loads = [.. loaded.Loads, .. forces] }),
        };
    }
}
