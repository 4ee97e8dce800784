using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tables;

/// <summary>What acts at one place of a beam, in words.</summary>
public static class PlaceReadout
{
    /// <summary>The words, broken into lines: both sides of a jump, and the deflection where it is known.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="response">How it answers.</param>
    /// <param name="position">The place [m from the left end], on the beam.</param>
    /// <param name="width">Columns of a line; 20 or more.</param>
    public static ImmutableArray<string> Lines(BuiltBeam beam, BeamResponse response, double position, int width)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(response);
        ImmutableArray<string> items = PlaceTable.Items(beam, response, position);
        string place = new BeamWords(beam).PlaceInFull(position);
        return TextFlow.Join([$"At {place}: {items[0]}", .. items.Skip(1)], "   ", width, indent: 2);
    }

    /// <summary>A place in words: its distance, with the label of the support that stands there.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="position">The place [m from the left end].</param>
    public static string Place(BuiltBeam beam, double position) => new BeamWords(beam).PlaceInFull(position);
}
