namespace FieldCheck.Fuzz;

/// <summary>Words of beam files, and of the TOML that they are written in.</summary>
internal static class BeamFileWords
{
    internal static readonly string[] Tables =
    [
        "record", "span", "support", "hinge", "load", "self_weight", "section", "material", "combination", "pattern",
        "rolling", "stated", "tolerance", "limits", "axles", "factors", "deflection_cases",
    ];

    internal static readonly string[] Keys =
    [
        "format", "title", "notes", "display", "ask", "shear_deformation", "job", "location", "date", "category", "length", "to",
        "section", "material", "unbraced", "kind", "joint", "at", "label", "acts", "surface", "stiffness", "rotational_stiffness",
        "settlement", "rotation", "bearing", "bearing_allowable", "pad", "allowable_pressure", "case", "force", "angle", "from",
        "intensity", "intensity_end", "pressure", "pressure_end", "width", "total", "axial", "moment", "side", "shape", "depth",
        "plies", "diameter", "wall", "flange_width", "flange_thickness", "web_thickness", "inertia", "area", "section_modulus",
        "shear_area", "weight", "flat", "grade", "modulus", "shear_modulus", "density", "allowable_bending", "design_shear", "yield",
        "creep", "name", "basis", "factors", "axles", "offset", "impact", "support", "vertical", "horizontal", "combination",
        "extreme", "tolerance", "source", "position", "load", "deflection", "deflection_overhang", "deflection_absolute", "rules",
    ];

    internal static readonly string[] Values =
    [
        "1", "0", "-1", "2", "1.5", "1e3", "true", "false", "\"us\"", "\"si\"", "\"3 m\"", "\"12'-6 1/2\\\"\"", "'5 ft'", "\"end\"", "\"mid 1\"",
        "\"A + 1 m\"", "\"joint 1\"", "\"pin\"", "\"roller\"", "\"fixed\"", "\"guide\"", "\"spring\"", "\"up\"", "\"down\"", "\"both\"", "\"point\"",
        "\"distributed\"", "\"couple\"", "\"5 kN\"", "\"2 kN/m\"", "\"3 kN*m\"", "\"50 psf\"", "\"4 ft\"", "\"live\"", "\"dead\"", "\"snow\"",
        "\"IPE 200\"", "\"W8x31\"", "\"C24\"", "\"A992\"", "\"200 GPa\"", "\"2000 cm4\"", "\"10 mm\"", "\"2 kN/mm\"", "\"30 kNm/rad\"", "\"L/360\"",
        "\"2 %\"", "\"factored\"", "\"service\"", "\"max\"", "\"A\"", "\"B\"", "\"\"", "\"\"\"\nlong\n\"\"\"", "'''long'''", "[]", "{}", "[1]",
        "[ { offset = \"0 m\", force = \"2 kN\" } ]", "{ live = 1.5, dead = 1.2 }", "[\"span[1].length\"]", "nan", "inf", "0x1F", "0b1", "1_0",
        "2031-02-30", "2031-01-01T07:30", "07:30", "99999999999999999999", "1e999", "\"\\u001b[2J\"", "\"\\uD800\"", "\"\\U0010FFFF\"", "\"\\e\"",
    ];

    internal static readonly string[] All =
    [
        .. Tables, .. Keys, .. Values, "[", "]", "[[", "]]", "{", "}", "=", ".", ",", "#", "\n", "\r\n", "\"", "'", "\"\"\"", "'''", "\\", "\\u",
        "[span]\n", "[[span]]\n", "[[support]]\n", "[[load]]\n", "[section.s]\n", "[material.m]\n", "[[combination]]\n", "format = 2\n",
        "a.b.c.d.e.f.g.h.i = 1\n",
    ];
}
