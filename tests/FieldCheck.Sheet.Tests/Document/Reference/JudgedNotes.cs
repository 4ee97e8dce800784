namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>Keys of what is stated, how well all is known, and what the beam is held against.</summary>
internal static class JudgedNotes
{
    internal static readonly KeyNote[] All =
    [
        new("stated[].support", "Label of the support.", "", "\"A\""),
        new("stated[].vertical", "The reaction across, positive up.", "not stated", "\"2.0 kip\""),
        new("stated[].horizontal", "The reaction along, positive to the right.", "not stated", "\"0.4 kip\""),
        new("stated[].moment", "The moment on the beam, positive counter-clockwise.", "not stated", "\"12 kNm\""),
        new("stated[].combination", "The combination that it was stated for.", "the only one of its basis", "\"service\""),
        new("stated[].case", "The case that it was stated for, alone and with the factor 1.", "", "\"live\""),
        new("stated[].extreme", "The greatest or least of the envelope was stated.", "", "\"max\""),
        new("stated[].basis", "Whether it is a figure of service or of strength.", "that of its combination; the only one there is", "\"service\""),
        new("stated[].tolerance", "Difference that is allowed.", "2 %", "\"5 %\""),
        new("stated[].source", "Where it is stated.", "", "\"Hire firm's sheet, rev B\""),
        new("tolerance.position", "Plus or minus of every measured place and length.", "nothing", "\"1 in\""),
        new("tolerance.load", "Plus or minus of every load's size.", "nothing", "\"10 %\""),
        new("limits.deflection", "Deflection of each bay, as a share of it.", "not checked", "\"L/360\""),
        new("limits.deflection_overhang", "Deflection of an overhang, as a share of its own length.", "not checked", "\"L/180\""),
        new("limits.deflection_final",
            "Deflection of each bay with what lasting loads add in time, as a share of it.", "not checked", "\"L/250\""),
        new("limits.deflection_final_overhang",
            "The same of an overhang, as a share of its own length.", "not checked", "\"L/150\""),
        new("limits.deflection_absolute", "Deflection anywhere.", "not checked", "\"10 mm\""),
        new("limits.deflection_cases.*", "Deflection of each bay under this case alone.", "not checked", "\"L/480\""),
        new("limits.lasting.*", "Share of this case that lasts, 0 to 1.", "1 for dead and the case of the own weight, else 0", "0.3"),
        new("limits.rules", "The rules by which sections are checked.", "none", "\"AISC 360-16 ASD\""),
    ];
}
