namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>Keys of spans, supports and hinges.</summary>
internal static class BeamNotes
{
    internal static readonly KeyNote[] All =
    [
        new("span[].length", "Length of the span; in its place may stand `to`.", "", "\"14 ft 6 in\""),
        new("span[].to", "Tape reading of the span's far end, from the left end of the beam; in its place may stand `length`.", "", "\"17'-6\\\"\""),
        new("span[].section", "Name of the section.", "the only section of the file", "\"bearer\""),
        new("span[].material", "Name of the material.", "the only material of the file", "\"timber\""),
        new("span[].unbraced",
            "Between lateral supports of the compression side; \"braced\" where it is held all along.",
            "not known: what may buckle sideways is NOT JUDGED", "\"braced\""),
        new("support[].kind", "What it holds.", "", "\"roller\""),
        new("support[].joint",
            "Joint at which it stands: 0 is the left end, k the right end of span k; in its place may stand `at`.", "", "1"),
        new("support[].at", "Place at which it stands, not from a support; in its place may stand `joint`.", "", "\"end - 2 ft\""),
        new("support[].label", "A letter, then letters, digits or _; at most 12.", "A, B, C … from left to right", "\"West\""),
        new("support[].acts",
            "\"up\": only pushes the beam up and lets go; \"down\": a strap that only holds it down; \"both\": whichever is needed. "
            + "Not written, it acts both ways, and a pull down is reported.", "", "\"up\""),
        new("support[].surface",
            "Slope of the surface under a roller, positive rising to the right, within 90 deg.", "0 deg", "\"30 deg\""),
        new("support[].stiffness", "Stiffness of a spring: force for each unit of movement.", "", "\"2 kN/mm\""),
        new("support[].rotational_stiffness",
            "Of a pin, roller or spring that resists turning: moment for each unit of turn.", "0", "\"30 kNm/rad\""),
        new("support[].settlement",
            "How far it gives way, positive down; on a sloped roller along its normal.", "0", "\"5 mm\""),
        new("support[].rotation", "Imposed turn of a fixed support or guide, positive counter-clockwise.", "0", "\"2 mrad\""),
        new("support[].bearing", "Length along the beam on which it bears.", "", "\"3 1/2 in\""),
        new("support[].bearing_allowable",
            "Stress allowed between beam and bearing, all safety inside; service combinations.", "", "\"625 psi\""),
        new("support[].pad", "The two sides of the pad under it.", "", "\"24 in x 24 in\""),
        new("support[].allowable_pressure",
            "Pressure allowed under the pad, all safety inside; service combinations.", "", "\"2 ksf\""),
        new("hinge[].joint", "Joint at which it is; in its place may stand `at`.", "", "1"),
        new("hinge[].at", "Place at which it is; in its place may stand `joint`.", "", "\"B + 1.2 m\""),
    ];
}
