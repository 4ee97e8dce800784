using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Working;

/// <summary>Places as they were read off a tape in feet and inches, to stand beside their decimals.</summary>
/// <param name="Document">The beam as typed.</param>
/// <param name="Beam">The beam as read.</param>
internal sealed record PlacesTyped(BeamDocument Document, BuiltBeam Beam)
{
    /// <summary>Where a support stands, as " (12'-6 1/2")"; empty where it was not typed so.</summary>
    internal string OfSupport(int index) => OnTape(Document.Supports[Beam.Supports[index].Row].At);

    /// <summary>The length of a span, or the tape reading of its far end.</summary>
    internal string OfSpan(int index) => OnTape(Document.Spans[index].Length) is { Length: > 0 } length ? length
        : OnTape(Document.Spans[index].To) is { Length: > 0 } to ? $" (to{to[2..^1]} on the tape)"
        : "";

    /// <summary>An end of a load; empty where it was not typed so.</summary>
    internal string OfLoad(NamedLoad load, bool isStart)
    {
        if (load.Row is not int row)
        {
            return "";
        }

        LoadEntry entry = Document.Loads[row];
        return OnTape(isStart ? entry.At ?? entry.From : entry.At ?? entry.To);
    }

    private static string OnTape(string? text) =>
        text is not null && text.AsSpan().IndexOfAny('\'', '"') >= 0 ? $" ({PlainAscii.Of(text.Trim())})" : "";
}
