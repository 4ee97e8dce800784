namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>Keys at the top of the file and of the record.</summary>
internal static class TopNotes
{
    internal static readonly KeyNote[] All =
    [
        new("title", "What the beam is called; it heads results and record.", "the file's name", "\"Bearer over the service trench\""),
        new("notes", "Anything worth knowing; may take several lines.", "", "\"Measured from middle to middle of the bearings.\""),
        new("display", "Units in which results are shown.", "si", "\"us\""),
        new("shear_deformation",
            "Counts the flexibility in shear; every span then needs a shear area and a shear modulus.", "false", "true"),
        new("ask[]", "A cell that a preset asks for, as a key path.", "", "\"span[1].length\""),
        new("rename.*",
            "A name for the case before the = that another case still has: unfinished until each has its own.", "", "\"storage\""),
        new("record.job", "Job or project.", "a blank to fill in", "\"J-1042\""),
        new("record.location", "Where on the job.", "a blank to fill in", "\"Bay 3, north wall\""),
        new("record.prepared_by", "Who prepared the check.", "a blank to fill in", "\"R. Miller\""),
        new("record.prepared_for", "For whom.", "a blank to fill in", "\"Yard office\""),
        new("record.checked_by", "Who checks it.", "a blank to fill in", "\"T. Okafor\""),
        new("record.date", "Date of the check.", "a blank to fill in", "\"2026-11-26\""),
        new("record.category", "Category of the check, by the rules in force on the site.", "a blank to fill in", "\"1\""),
    ];
}
