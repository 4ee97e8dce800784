using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Drawing;

/// <summary>What was typed of the lengths, places and loads of a beam, to stand in a drawing of it.</summary>
/// <param name="Document">The beam as typed.</param>
/// <param name="Beam">The beam as read.</param>
/// <param name="Letters">How a cell is written, as it has to be where the drawing stands.</param>
internal sealed record TypedBeam(BeamDocument Document, BuiltBeam Beam, Func<string, string> Letters)
{
    /// <summary>The loads with the sizes that were typed; own weight, which nobody types, without one.</summary>
    internal ImmutableArray<LoadPicture> Loads =>
    [
        .. LoadPictures.Of(Beam, null).Zip(Beam.Loads, (picture, named) => picture with
        {
            Label = named.Row is int row ? $"{row + 1}: {InputLines.SizeTyped(Document.Loads[row], Letters)}" : "own weight",
        }),
    ];

    /// <summary>Each span from joint to joint, with its length or the tape reading of its far end.</summary>
    internal IEnumerable<(double From, double To, string Words)> Spans() => Document.Spans.Select((span, i) => (
        Beam.Model.JointPositions[i],
        Beam.Model.JointPositions[i + 1],
        span.Length is string length ? Letters(length) : $"to {Letters(span.To ?? InputLines.Nothing)}"));

    /// <summary>
    /// Every place that was typed, but for those at a joint, from left to right: supports, hinges, and loads by their number.
    /// </summary>
    internal IEnumerable<(double Place, string Words)> Places() =>
        Beam.Supports.SelectMany(OfSupport)
            .Concat(Document.Hinges.SelectMany(OfHinge))
            .Concat(Beam.Loads.SelectMany(OfLoad))
            .OrderBy(place => place.Place);

    private IEnumerable<(double Place, string Words)> OfSupport(NamedSupport support) =>
        Typed(Document.Supports[support.Row].At, support.Support.Position, $"{support.Label}:");

    private IEnumerable<(double Place, string Words)> OfHinge(HingeEntry row) =>
        row.At is string at && BeamPlaces.Find(Beam, at) is Reading<double>.Accepted place
            ? Typed(at, place.Value, "hinge:")
            : [];

    private IEnumerable<(double Place, string Words)> OfLoad(NamedLoad named)
    {
        if (named.Row is not int index)
        {
            return [];
        }

        LoadEntry row = Document.Loads[index];
        return named.Load switch
        {
            Load.Point point => Typed(row.At, point.Position, $"{index + 1}:"),
            Load.Couple couple => Typed(row.At, couple.Position, $"{index + 1}:"),
            Load.Distributed spread =>
                [.. Typed(row.From, spread.From, $"{index + 1} from"), .. Typed(row.To, spread.To, $"{index + 1} to")],
            _ => [],
        };
    }

    private IEnumerable<(double Place, string Words)> Typed(string? text, double place, string before) =>
        text is null ? [] : [(place, $"{before} {Letters(text)}")];
}
