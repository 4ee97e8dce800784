namespace FieldCheck.Sheet.Tests.Document;

/// <summary>Every key of the beam file, restated by hand from docs/beam-file.md, as paths into <see cref="FullBeam"/>.</summary>
internal static class ContractKeys
{
    internal static readonly string[] All =
    [
        "title", "notes", "display", "shear_deformation", "ask[1]", "rename.live",
        "record.job", "record.location", "record.prepared_by", "record.prepared_for", "record.checked_by",
        "record.date", "record.category",
        "span[1].length", "span[1].to", "span[1].section", "span[1].material", "span[1].unbraced",
        "support[1].kind", "support[1].joint", "support[1].at", "support[1].label", "support[1].acts",
        "support[1].surface", "support[1].stiffness", "support[1].rotational_stiffness", "support[1].settlement",
        "support[1].rotation", "support[1].bearing", "support[1].bearing_allowable", "support[1].pad",
        "support[1].allowable_pressure",
        "hinge[1].joint", "hinge[1].at",
        "load[1].kind", "load[1].label", "load[1].case", "load[1].at", "load[1].force", "load[1].angle",
        "load[1].from", "load[1].to", "load[1].intensity", "load[1].intensity_end", "load[1].pressure",
        "load[1].pressure_end", "load[1].width", "load[1].total", "load[1].axial", "load[1].moment", "load[1].side",
        "self_weight.case",
        "section.bearer.shape", "section.bearer.width", "section.bearer.depth", "section.bearer.plies",
        "section.bearer.diameter", "section.bearer.wall", "section.bearer.flange_width",
        "section.bearer.flange_thickness", "section.bearer.web_thickness", "section.bearer.inertia",
        "section.bearer.area", "section.bearer.section_modulus", "section.bearer.shear_area",
        "section.bearer.weight", "section.bearer.flat",
        "material.timber.grade", "material.timber.modulus", "material.timber.shear_modulus",
        "material.timber.density", "material.timber.allowable_bending", "material.timber.allowable_shear",
        "material.timber.allowable_bearing", "material.timber.design_bending", "material.timber.design_shear",
        "material.timber.design_bearing", "material.timber.yield", "material.timber.creep",
        "material.timber.factors.duration",
        "combination[1].name", "combination[1].basis", "combination[1].factors.dead",
        "pattern[1].case",
        "rolling[1].label", "rolling[1].case", "rolling[1].impact", "rolling[1].axles[1].offset",
        "rolling[1].axles[1].force",
        "stated[1].support", "stated[1].vertical", "stated[1].horizontal", "stated[1].moment",
        "stated[1].combination", "stated[1].case", "stated[1].extreme", "stated[1].basis", "stated[1].tolerance",
        "stated[1].source",
        "tolerance.position", "tolerance.load",
        "limits.deflection", "limits.deflection_overhang", "limits.deflection_absolute", "limits.rules",
        "limits.deflection_cases.live", "limits.deflection_final", "limits.deflection_final_overhang",
        "limits.lasting.live",
    ];
}
