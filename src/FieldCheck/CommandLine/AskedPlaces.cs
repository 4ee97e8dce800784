using System.Collections.Immutable;
using FieldCheck.Reporting.Record;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.CommandLine;

/// <summary>Finds on one beam the places that the command line asks for.</summary>
internal static class AskedPlaces
{
    /// <summary>The places, or a problem for each that is none.</summary>
    /// <param name="file">The file, as it was named.</param>
    /// <param name="beam">The beam.</param>
    /// <param name="option">The option that asks for them.</param>
    /// <param name="places">As typed.</param>
    internal static (ImmutableArray<AskedPlace> Found, ImmutableArray<FileProblem> Problems) On(
        string file, BuiltBeam beam, string option, ImmutableArray<string> places)
    {
        var found = ImmutableArray.CreateBuilder<AskedPlace>();
        var problems = ImmutableArray.CreateBuilder<FileProblem>();
        foreach (string place in places)
        {
            switch (BeamPlaces.Find(beam, place))
            {
                case Reading<double>.Accepted position:
                    found.Add(new(place, position.Value));
                    break;
                case Reading<double>.Refused refused:
                    problems.Add(FileProblem.OfWhole(file, $"{option} '{place}': {refused.Text}"));
                    break;
                default:
                    throw new System.Diagnostics.UnreachableException();
            }
        }

        return (found.ToImmutable(), problems.ToImmutable());
    }
}
