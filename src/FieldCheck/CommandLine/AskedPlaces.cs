using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Reporting.Record;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.CommandLine;

/// <summary>Finds on one beam the places that the command line asks for.</summary>
internal static class AskedPlaces
{
    // "12 ft" and "3.6576 m" are one mark on the beam and differ in the last digit of a double: as far apart as this
    // share of its length [–], two places are one. Else the two sides of a jump would be read off beside it.
    private const double SamePlace = 1e-9;

    /// <summary>The places, or a problem for each that is none.</summary>
    /// <param name="file">The file, as it was named.</param>
    /// <param name="beam">The beam.</param>
    /// <param name="places">As typed.</param>
    internal static (ImmutableArray<AskedPlace> Found, ImmutableArray<FileProblem> Problems) On(
        string file, BuiltBeam beam, ImmutableArray<string> places)
    {
        Dictionary<string, double> supports = beam.Supports.ToDictionary(
            support => support.Label, support => support.Support.Position, StringComparer.OrdinalIgnoreCase);
        double[] marks = [.. Marks(beam.Model)];
        double length = beam.Model.Length;
        var found = ImmutableArray.CreateBuilder<AskedPlace>();
        var problems = ImmutableArray.CreateBuilder<FileProblem>();
        foreach (string place in places)
        {
            switch (PlaceReader.Read(place).Then(read => read.Resolve(beam.Model.JointPositions, supports)))
            {
                case Reading<double>.Refused refused:
                    problems.Add(Problem(refused.Text));
                    break;
                case Reading<double>.Accepted position when IsOnBeam(Snapped(position.Value)):
                    found.Add(new(place, Snapped(position.Value)));
                    break;
                default:
                    string sayLength = beam.Display.Say(length, QuantityKind.Length);
                    problems.Add(Problem($"this is off the beam, which is {sayLength} long."));
                    break;
            }

            FileProblem Problem(string text) => FileProblem.OfWhole(file, $"{Option.At} '{place}': {text}");
        }

        return (found.ToImmutable(), problems.ToImmutable());

        bool IsOnBeam(double position) => position >= 0 && position <= length;

        double Snapped(double position)
        {
            double nearest = marks.MinBy(mark => Math.Abs(mark - position));
            return Math.Abs(nearest - position) <= SamePlace * length ? nearest : position;
        }
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
