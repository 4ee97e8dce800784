namespace FieldCheck.Mechanics.Strength;

/// <summary>What one number of a check is.</summary>
public enum CheckSymbol
{
    /// <summary>Greatest moment M.</summary>
    Moment,

    /// <summary>Greatest shear V.</summary>
    Shear,

    /// <summary>Force along the beam N.</summary>
    Axial,

    /// <summary>Reaction R.</summary>
    Reaction,

    /// <summary>Elastic section modulus S.</summary>
    SectionModulus,

    /// <summary>Plastic section modulus Z.</summary>
    PlasticModulus,

    /// <summary>Area A.</summary>
    Area,

    /// <summary>Shear force over the greatest shear stress, I·t/Q.</summary>
    PeakShearArea,

    /// <summary>Yield stress.</summary>
    Yield,

    /// <summary>Stress given with the material.</summary>
    GivenStress,

    /// <summary>Length of the bearing.</summary>
    BearingLength,

    /// <summary>Width of the bearing.</summary>
    BearingWidth,

    /// <summary>Length of bearing that would be enough.</summary>
    NeededBearingLength,

    /// <summary>Area of the pad.</summary>
    PadArea,

    /// <summary>Length of the bay or overhang.</summary>
    BayLength,

    /// <summary>Length over deflection.</summary>
    Ratio,

    /// <summary>Deflection at once.</summary>
    InstantDeflection,

    /// <summary>What lasting loads add in time.</summary>
    CreepDeflection,

    /// <summary>Share by which a lasting deflection grows in time.</summary>
    CreepFactor,

    /// <summary>Unbraced length.</summary>
    UnbracedLength,

    /// <summary>Safety factor Ω of AISC 360.</summary>
    SafetyFactor,

    /// <summary>Resistance factor φ of AISC 360.</summary>
    ResistanceFactor,

    /// <summary>Strength of timber as its grade gives it, before any factor.</summary>
    GradeStrength,

    /// <summary>Strength of timber in bending before lateral stability counts: Fb* of the NDS, or fm,d.</summary>
    BracedStrength,

    /// <summary>Width of one ply, which alone is counted on against sideways buckling.</summary>
    PlyWidth,

    /// <summary>Depth in the direction of the load.</summary>
    Depth,

    /// <summary>Effective length for sideways buckling: le or lef.</summary>
    EffectiveLength,

    /// <summary>Modulus for lateral stability: Emin' of the NDS, or E0,05.</summary>
    StabilityModulus,

    /// <summary>Slenderness ratio RB of the NDS.</summary>
    SlendernessRatio,

    /// <summary>Relative slenderness λrel,m of EN 1995-1-1.</summary>
    RelativeSlenderness,

    /// <summary>Bending stress at which the beam buckles sideways: FbE, or σm,crit.</summary>
    BucklingStress,

    /// <summary>Length of the bearing with what the grain beside it carries: lef of EN 1995-1-1 6.1.5.</summary>
    EffectiveBearingLength,

    /// <summary>Share of the width that cracks leave for shear: kcr of EN 1995-1-1.</summary>
    CrackShare,
}
