namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>Keys of sections and materials.</summary>
internal static class StickNotes
{
    internal static readonly KeyNote[] All =
    [
        new("section.*.shape", "Name of a shape of the catalogue.", "", "\"W10x30\""),
        new("section.*.width", "Rectangle: width; with plies, of one ply.", "", "\"50 mm\""),
        new("section.*.depth", "Rectangle, I section, or figures given directly: depth.", "", "\"200 mm\""),
        new("section.*.plies", "Rectangle: how many stand side by side, not joined.", "1", "2"),
        new("section.*.diameter", "Round: outer diameter.", "", "\"48.3 mm\""),
        new("section.*.wall", "Round: thickness of the wall of a tube.", "solid", "\"3.2 mm\""),
        new("section.*.flange_width", "I section of three plates: width of the flanges.", "", "\"150 mm\""),
        new("section.*.flange_thickness", "I section of three plates: thickness of the flanges.", "", "\"10 mm\""),
        new("section.*.web_thickness", "I section of three plates: thickness of the web.", "", "\"6 mm\""),
        new("section.*.inertia", "Given directly: second moment of area.", "", "\"170 in4\""),
        new("section.*.area", "Given directly: area.", "", "\"8.84 in2\""),
        new("section.*.section_modulus", "Given directly: elastic section modulus.", "", "\"32.4 in3\""),
        new("section.*.shear_area", "Given directly: area that deforms in shear.", "", "\"3.1 in2\""),
        new("section.*.weight", "Given directly: own weight for each unit of length; a mass reads as its weight.", "", "\"30 plf\""),
        new("section.*.flat", "Bent about its weak axis; a rectangle that is written wider than deep lies so already.", "false", "true"),
        new("material.*.grade", "Name of a grade of the catalogue.", "", "\"A992\""),
        new("material.*.modulus", "Modulus of elasticity.", "that of the grade", "\"11 GPa\""),
        new("material.*.shear_modulus", "Shear modulus.", "that of the grade", "\"0.69 GPa\""),
        new("material.*.density", "Mass or weight per volume.", "that of the grade", "\"420 kg/m3\""),
        new("material.*.allowable_bending", "Bending stress allowed, all safety inside; service combinations.", "not checked", "\"12 MPa\""),
        new("material.*.allowable_shear", "Shear stress allowed, all safety inside; service combinations.", "not checked", "\"1.5 MPa\""),
        new("material.*.allowable_bearing",
            "Stress across the grain allowed at bearings, all safety inside; service combinations.", "not checked", "\"2.2 MPa\""),
        new("material.*.design_bending", "Bending stress after all factors; factored combinations.", "not checked", "\"16.6 MPa\""),
        new("material.*.design_shear", "Shear stress after all factors; factored combinations.", "not checked", "\"2.5 MPa\""),
        new("material.*.design_bearing", "Stress at bearings after all factors; factored combinations.", "not checked", "\"1.7 MPa\""),
        new("material.*.yield", "Yield stress; held against nothing by itself, only through `[limits] rules`.", "that of the grade", "\"355 MPa\""),
        new("material.*.creep",
            "What lasting loads add to the deflection in time, as a factor on the deflection at once.", "no final deflection is judged", "0.8"),
        new("material.*.factors.*", "A factor of timber: see \"Factors of timber\".", "see there", "1.25"),
    ];
}
