namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>Keys of combinations, patterns and rolling loads.</summary>
internal static class CaseNotes
{
    internal static readonly KeyNote[] All =
    [
        new("combination[].name", "What it is called; each name once.", "", "\"1.2 dead + 1.6 live\""),
        new("combination[].basis", "Whether its factors are those of service or of strength; the two are never mixed.", "service", "\"factored\""),
        new("combination[].factors.*", "Factor of the case named.", "0", "1.6"),
        new("pattern[].case", "The case; one row for each.", "", "\"live\""),
        new("rolling[].label", "What rolls.", "", "\"Fork truck\""),
        new("rolling[].case", "The case it belongs to; it may be one without standing loads.", "live", "\"live\""),
        new("rolling[].impact", "Added to every axle.", "0 %", "\"30 %\""),
        new("rolling[].axles[].offset", "Distance from the first axle, 0 or more.", "", "\"1.2 m\""),
        new("rolling[].axles[].force", "Force of the axle, down; a mass reads as its weight.", "", "\"12 kN\""),
    ];
}
