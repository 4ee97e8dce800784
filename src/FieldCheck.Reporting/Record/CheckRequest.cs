using System.Collections.Immutable;

namespace FieldCheck.Reporting.Record;

/// <summary>What the text of a check is to show.</summary>
/// <param name="File">The file's name; empty when there is none.</param>
/// <param name="At">Places at which values were asked for.</param>
/// <param name="Width">Columns of a line; 40 or more.</param>
public sealed record CheckRequest(string File, ImmutableArray<AskedPlace> At, int Width = 80)
{
    /// <summary>True: the working by hand at its end, for someone else to follow.</summary>
    public bool HasWorking { get; init; }
}
