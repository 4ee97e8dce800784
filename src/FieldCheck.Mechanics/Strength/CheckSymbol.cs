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

    /// <summary>Modulus of elasticity E.</summary>
    Modulus,

    /// <summary>Modulus of elasticity with the factors for use and treatment, E' of the NDS.</summary>
    ModulusInUse,

    /// <summary>Shear modulus G.</summary>
    ShearModulus,

    /// <summary>Plastic moment Mp, with its upper bound where the rules set one.</summary>
    PlasticMoment,

    /// <summary>Nominal moment Mn of AISC 360.</summary>
    NominalMoment,

    /// <summary>Nominal shear Vn of AISC 360.</summary>
    NominalShear,

    /// <summary>Nominal force Rn or Pn of AISC 360.</summary>
    NominalForce,

    /// <summary>Width over thickness of the flange: λ of AISC 360, c/t of EN 1993.</summary>
    FlangeSlenderness,

    /// <summary>Height over thickness of the web: h/tw of AISC 360, c/t or hw/tw of EN 1993.</summary>
    WebSlenderness,

    /// <summary>Diameter over wall of a round tube, D/t.</summary>
    WallSlenderness,

    /// <summary>Slenderness up to which the wall of a round tube is compact, λp.</summary>
    CompactLimit,

    /// <summary>Slenderness up to which the wall of a round tube is noncompact, λr.</summary>
    NoncompactLimit,

    /// <summary>Slenderness up to which the flange is compact, λpf.</summary>
    FlangeCompactLimit,

    /// <summary>Slenderness up to which the flange is noncompact, λrf.</summary>
    FlangeNoncompactLimit,

    /// <summary>Slenderness up to which the web is compact, λpw.</summary>
    WebCompactLimit,

    /// <summary>Slenderness up to which the web is noncompact, λrw.</summary>
    WebNoncompactLimit,

    /// <summary>Factor by which a slender web lets its flange buckle sooner, kc.</summary>
    WebRestraint,

    /// <summary>Radius of gyration in sideways bending, ry or iz.</summary>
    RadiusOfGyration,

    /// <summary>Effective radius of gyration rts of AISC 360.</summary>
    EffectiveRadius,

    /// <summary>Distance between the middles of the flanges ho.</summary>
    FlangeDistance,

    /// <summary>Torsion constant J or It.</summary>
    TorsionConstant,

    /// <summary>Second moment of area in sideways bending, Iy or Iz.</summary>
    LateralInertia,

    /// <summary>c of AISC 360 (F2-8): 1 of an I, ho/2·√(Iy/Cw) of a channel.</summary>
    ShapeFactor,

    /// <summary>√(Iw/Iz), by which an open shape resists warping.</summary>
    WarpingRadius,

    /// <summary>Unbraced length up to which the section yields first, Lp.</summary>
    PlasticLength,

    /// <summary>Unbraced length beyond which it buckles elastically, Lr.</summary>
    ElasticLength,

    /// <summary>Factor for the run of moments between lateral supports, Cb or C1; 1.</summary>
    MomentFactor,

    /// <summary>Buckling stress Fcr.</summary>
    CriticalStress,

    /// <summary>Unbraced length times depth over the square of the width of a bar, Lb·d/t².</summary>
    BarSlenderness,

    /// <summary>Area that carries the shear Aw.</summary>
    WebArea,

    /// <summary>Share of yield in shear that buckling leaves, Cv.</summary>
    ShearCoefficient,

    /// <summary>From the outer face of the flange to where its fillet ends k.</summary>
    FilletDepth,

    /// <summary>How many fillet depths the load spreads over: 5, or 2.5 at an end of the beam.</summary>
    FilletSpread,

    /// <summary>Thickness of the web tw.</summary>
    WebThickness,

    /// <summary>Thickness of the flange, tf.</summary>
    FlangeThickness,

    /// <summary>Share of AISC 360 J10.3 by which a web cripples: 0.80, or 0.40 at an end.</summary>
    CripplingShare,

    /// <summary>Root of 235 N/mm² over the yield stress ε.</summary>
    YieldFactor,

    /// <summary>Class of the section, 1 to 3.</summary>
    SectionClass,

    /// <summary>Design resistance in bending Mc,Rd.</summary>
    BendingResistance,

    /// <summary>Shear area Av.</summary>
    ShearArea,

    /// <summary>Plastic resistance in shear Vpl,Rd.</summary>
    ShearResistance,

    /// <summary>Share by which high shear lowers the yield stress of the shear area, ρ.</summary>
    ShearReduction,

    /// <summary>Share of the bending resistance that the shear area gives.</summary>
    ShearAreaShare,

    /// <summary>Slenderness up to which no check is needed: λc0, or 72ε/η.</summary>
    SlendernessLimit,

    /// <summary>Radius of gyration of the compression flange with a third of the compressed web if,z.</summary>
    FlangeRadius,

    /// <summary>Relative slenderness of lateral buckling, λf or λLT.</summary>
    LateralSlenderness,

    /// <summary>Elastic critical moment Mcr.</summary>
    CriticalMoment,

    /// <summary>Imperfection factor of the buckling curve α.</summary>
    Imperfection,

    /// <summary>Φ, on the way to χ.</summary>
    BucklingPhi,

    /// <summary>Reduction for lateral buckling χ.</summary>
    BucklingFactor,

    /// <summary>Factor kfl of the simplified method.</summary>
    FlangeMethodFactor,

    /// <summary>Partial factor γM0 of EN 1993, for sections.</summary>
    PartialFactor,

    /// <summary>Partial factor γM1 of EN 1993, for members that buckle.</summary>
    BucklingPartialFactor,

    /// <summary>Strength of timber as its grade gives it, before any factor.</summary>
    GradeStrength,

    /// <summary>Strength of timber in tension along the grain with its factors: Ft' of the NDS, or ft,0,d.</summary>
    TensionStrength,

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

    /// <summary>Buckling stress over the strength in bending before lateral stability, FbE/Fb*.</summary>
    BucklingRatio,

    /// <summary>Beam stability factor C_L of the NDS.</summary>
    BeamStability,

    /// <summary>Factor for lateral stability k_crit of EN 1995-1-1.</summary>
    LateralFactor,

    /// <summary>Factor of the NDS for a short bearing C_b.</summary>
    BearingAreaFactor,

    /// <summary>What the grain beside a bearing adds to its length on the side of the nearer end of the beam.</summary>
    NearGrain,

    /// <summary>What the grain beside a bearing adds to its length on the side of the farther end of the beam.</summary>
    FarGrain,

    /// <summary>Length of the bearing with what the grain beside it carries: lef of EN 1995-1-1 6.1.5.</summary>
    EffectiveBearingLength,

    /// <summary>Force along the beam that may act alone.</summary>
    AxialAlone,

    /// <summary>Moment that may act alone.</summary>
    MomentAlone,

    /// <summary>Share of the width that cracks leave for shear: kcr of EN 1995-1-1.</summary>
    CrackShare,
}
