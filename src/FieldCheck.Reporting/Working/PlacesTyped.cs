using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Working;

/// <summary>Lengths and sizes as they were typed, to stand beside their decimals.</summary>
/// <param name="Document">The beam as typed.</param>
/// <param name="Beam">The beam as read.</param>
internal sealed record PlacesTyped(BeamDocument Document, BuiltBeam Beam)
{
    /// <summary>Where a support stands, as " (12'-6 1/2")"; empty where it was typed in feet or metres alone.</summary>
    internal string OfSupport(int index) => InBrackets(Document.Supports[Beam.Supports[index].Row].At);

    /// <summary>The length of a span, or the tape reading of its far end.</summary>
    internal string OfSpan(int index) => Measured(Document.Spans[index].Length) is string length ? $" ({length})"
        : Measured(Document.Spans[index].To) is string to ? $" (to {to} on the tape)"
        : "";

    /// <summary>An end of a load; empty where it was typed in feet or metres alone.</summary>
    internal string OfLoad(NamedLoad load, bool isStart)
    {
        if (load.Row is not int row)
        {
            return "";
        }

        LoadEntry entry = Document.Loads[row];
        return InBrackets(isStart ? entry.At ?? entry.From : entry.At ?? entry.To);
    }

    /// <summary>The size of a load as typed; empty for own weight, and where nothing was typed.</summary>
    internal string SizeOf(NamedLoad load) =>
        load.Row is int row && InputLines.SizeTyped(Document.Loads[row], text => TypedLetters.Name(Beam, text)) is string typed && typed != InputLines.Nothing
            ? typed
            : "";

    private string InBrackets(string? text) => Measured(text) is string typed ? $" ({typed})" : "";

    // In inches or millimetres the tape was read otherwise than the working is written.
    private string? Measured(string? text) =>
        text is not null
        && (text.AsSpan().IndexOfAny('\'', '"') >= 0
            || text.Split([' ', '+', '-', '*', '(', ')'], StringSplitOptions.RemoveEmptyEntries)
                .Any(word => word.TrimStart('0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '/') is "in" or "mm" or "cm"))
            ? TypedLetters.Name(Beam, text.Trim())
            : null;
}
