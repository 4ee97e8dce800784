using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Building;

/// <summary>Finds on a beam the places that are asked for.</summary>
public static class BeamPlaces
{
    /// <summary>
    /// As far apart as this share of a beam's length [–] two places are one: "12 ft" and "3.6576 m" differ in the last
    /// digit of a double. Else the two sides of a jump would be read off beside it.
    /// </summary>
    public const double SamePlace = Stations.SamePlace;

    /// <summary>Finds a place.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="text">The place as typed, with its unit.</param>
    /// <returns>
    /// The place [m from the left end]; exactly that of a joint, a support, a hinge or an end of a load that stands there.
    /// </returns>
    public static Reading<double> Find(BuiltBeam beam, string text)
    {
        ArgumentNullException.ThrowIfNull(beam);
        Dictionary<string, double> supports = beam.Supports.ToDictionary(
            support => support.Label, support => support.Support.Position, StringComparer.OrdinalIgnoreCase);

        // As the working by hand calls the hinges.
        for (int i = 0; i < beam.Model.Hinges.Length; i++)
        {
            supports.TryAdd($"h{i + 1}", beam.Model.Hinges[i]);
        }

        return PlaceReader.Read(text)
            .Then(place => place.Resolve(beam.Model.JointPositions, supports))
            .Then(position => OnBeam(beam, Snapped(beam.Model, position)));
    }

    private static Reading<double> OnBeam(BuiltBeam beam, double position)
    {
        double length = beam.Model.Length;
        return position >= 0 && position <= length
            ? new Reading<double>.Accepted(position)
            : new Reading<double>.Refused(
                $"this is off the beam, which is {beam.Display.Say(length, QuantityKind.Length)} long.", 0);
    }

    private static double Snapped(BeamModel model, double position)
    {
        double nearest = Marks(model).MinBy(mark => Math.Abs(mark - position));
        return Math.Abs(nearest - position) <= SamePlace * model.Length ? nearest : position;
    }

    private static IEnumerable<double> Marks(BeamModel model) =>
    [
        .. model.JointPositions,
        .. model.Hinges,
        .. model.Supports.Select(support => support.Position),
        .. model.Cases.SelectMany(loadCase => loadCase.Loads).SelectMany(Marks),
    ];

    private static IEnumerable<double> Marks(Load load) => load switch
    {
        Load.Point point => [point.Position],
        Load.Couple couple => [couple.Position],
        Load.Distributed distributed => [distributed.From, distributed.To],
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
