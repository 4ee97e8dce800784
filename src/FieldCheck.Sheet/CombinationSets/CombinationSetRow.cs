using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.CombinationSets;

/// <summary>A row that a set of combinations gives a beam.</summary>
/// <param name="Entry">The row for the beam; its name says its factors, as "1.2 dead + 1.6 live".</param>
/// <param name="Expression">How its standard writes it; empty where that is not written.</param>
/// <param name="Source">Where it comes from; empty where that is not written.</param>
/// <param name="Status">Whether it was read there; empty where that is not written.</param>
public sealed record CombinationSetRow(CombinationEntry Entry, string Expression, string Source, string Status);
