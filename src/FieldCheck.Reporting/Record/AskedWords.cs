using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Record;

/// <summary>Values at a place that was asked for, in words.</summary>
internal static class AskedWords
{
    internal static string Sentence(BuiltBeam beam, BeamResponse response, AskedPlace place) =>
        $"{Title(beam, place)}: {string.Join(", ", PlaceTable.Items(beam, response, place.Position))}";

    /// <summary>One sentence for each value.</summary>
    internal static ImmutableArray<string> Sentences(BuiltBeam beam, BeamResponse response, AskedPlace place) =>
    [
        .. PlaceTable.Items(beam, response, place.Position, isSpoken: true)
            .Select(item => $"{Title(beam, place, isSpoken: true)}: {item}."),
    ];

    private static string Title(BuiltBeam beam, AskedPlace place, bool isSpoken = false)
    {
        string read = new BeamWords(beam, isSpoken).PlaceInFull(place.Position);
        string asked = PlainAscii.Of(place.Text);
        return read.StartsWith(asked, StringComparison.Ordinal) ? $"at {read}" : $"at {asked}, {read}";
    }
}
