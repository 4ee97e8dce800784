namespace FieldCheck.Sheet.Editing;

/// <summary>The columns of the blocks.</summary>
public enum FormColumn
{
    /// <summary>Length of a span.</summary>
    Length,

    /// <summary>Tape reading of a span's far end.</summary>
    Reading,

    /// <summary>Section of a span.</summary>
    Section,

    /// <summary>Material of a span.</summary>
    Material,

    /// <summary>Where a support stands: a distance, or "joint 1".</summary>
    Place,

    /// <summary>What a support is, with its figure: "roller 30 deg", "spring 12 kip/in".</summary>
    Kind,

    /// <summary>By how much a support settles.</summary>
    Settles,

    /// <summary>Which senses of reaction a support can give.</summary>
    Acts,

    /// <summary>What a support or a rolling load is called.</summary>
    Label,

    /// <summary>Size of a load, which tells its kind; for own weight, on or off.</summary>
    Size,

    /// <summary>Where a load stands or begins.</summary>
    From,

    /// <summary>Where a load ends.</summary>
    To,

    /// <summary>Case that a load belongs to, or what a case is called.</summary>
    Case,

    /// <summary>What a load is.</summary>
    Note,

    /// <summary>Stated vertical reaction.</summary>
    Vertical,

    /// <summary>Stated horizontal reaction.</summary>
    Horizontal,

    /// <summary>Stated moment.</summary>
    Moment,

    /// <summary>Combination or case that a figure is stated for, or which extreme it is.</summary>
    Under,

    /// <summary>Whether a figure is stated as service or factored, or a combination is one of these.</summary>
    Basis,

    /// <summary>By how much a stated figure may differ.</summary>
    Allow,

    /// <summary>Where a figure is stated.</summary>
    Source,

    /// <summary>The support that a figure is stated of.</summary>
    Support,

    /// <summary>What stands in a case: follows from other cells, is never typed in.</summary>
    Holds,

    /// <summary>Whether the loads of a case may stand in some bays and not in others.</summary>
    Pattern,

    /// <summary>Whether own weight belongs to a case.</summary>
    OwnWeight,

    /// <summary>What a combination is called.</summary>
    Name,

    /// <summary>Axles of a rolling load.</summary>
    Axles,

    /// <summary>Share that is added to a rolling load for impact.</summary>
    Impact,

    /// <summary>Shape of the catalogue that a section is.</summary>
    Shape,

    /// <summary>Width of a rectangle, one ply's.</summary>
    Width,

    /// <summary>Depth of a section over all.</summary>
    Depth,

    /// <summary>How many plies of a rectangle stand side by side.</summary>
    Plies,

    /// <summary>Whether a section lies flat or stands on edge.</summary>
    Flat,

    /// <summary>Diameter of a round section.</summary>
    Diameter,

    /// <summary>Wall of a round tube.</summary>
    Wall,

    /// <summary>Width of the flanges of an I section.</summary>
    FlangeWidth,

    /// <summary>Thickness of the flanges of an I section.</summary>
    FlangeThickness,

    /// <summary>Thickness of the web of an I section.</summary>
    WebThickness,

    /// <summary>Second moment of area of a section.</summary>
    Inertia,

    /// <summary>Section modulus.</summary>
    SectionModulus,

    /// <summary>Area of a section.</summary>
    Area,

    /// <summary>Shear area of a section.</summary>
    ShearArea,

    /// <summary>Weight of a section on each length.</summary>
    Weight,

    /// <summary>Grade of the catalogue that a material is.</summary>
    Grade,

    /// <summary>Modulus of elasticity.</summary>
    Modulus,

    /// <summary>Allowable bending stress.</summary>
    AllowableBending,

    /// <summary>Allowable shear stress.</summary>
    AllowableShear,

    /// <summary>Allowable bearing stress.</summary>
    AllowableBearing,

    /// <summary>Design bending strength.</summary>
    DesignBending,

    /// <summary>Design shear strength.</summary>
    DesignShear,

    /// <summary>Design bearing strength.</summary>
    DesignBearing,

    /// <summary>Yield stress.</summary>
    Yield,

    /// <summary>Factors on the strengths of timber.</summary>
    Factors,

    /// <summary>Creep factor of a material.</summary>
    Creep,

    /// <summary>Shear modulus.</summary>
    ShearModulus,

    /// <summary>Mass or weight per volume.</summary>
    Density,

    /// <summary>Rules that strengths are judged by.</summary>
    Rules,

    /// <summary>Limit of deflection of each bay.</summary>
    Deflection,

    /// <summary>Limit of deflection of each overhang.</summary>
    Overhang,

    /// <summary>Limit of deflection as a length.</summary>
    Absolute,

    /// <summary>Limit of each bay with what lasting loads add in time.</summary>
    Final,

    /// <summary>Limit of each overhang with what lasting loads add in time.</summary>
    FinalOverhang,

    /// <summary>Limits of deflection under single cases.</summary>
    CaseLimits,

    /// <summary>Share of each case that lasts.</summary>
    Lasting,

    /// <summary>Length over which the compression side of a span is not held, or braced.</summary>
    Unbraced,

    /// <summary>Length of the bearing along the beam.</summary>
    Bearing,

    /// <summary>Allowable stress of what the beam bears on.</summary>
    BearingAllowable,

    /// <summary>Sides of the pad below a support.</summary>
    Pad,

    /// <summary>Allowable pressure under the pad.</summary>
    Pressure,

    /// <summary>
    /// Factor of the first case of <see cref="CaseRows"/> in a combination. Those of the other cases follow it, numbered
    /// on: <see cref="FormColumns.OfCase"/>.
    /// </summary>
    Factor,
}
