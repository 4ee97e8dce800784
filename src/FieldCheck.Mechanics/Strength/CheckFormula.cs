namespace FieldCheck.Mechanics.Strength;

/// <summary>How a number of a check comes from those before it.</summary>
/// <remarks>The rules that they are of stand in docs/methods.md; the words in the sheet write them out.</remarks>
public enum CheckFormula
{
    /// <summary>Moment over section modulus.</summary>
    EdgeStress,

    /// <summary>Shear over I·t/Q.</summary>
    ShearStress,

    /// <summary>Shear over I·t/Q of the width that cracks leave.</summary>
    CrackedShearStress,

    /// <summary>Force along over area, and moment over section modulus.</summary>
    AxialAndEdgeStress,

    /// <summary>Force along and moment, each over what may act alone.</summary>
    SumOfShares,

    /// <summary>Push over width and length of the bearing.</summary>
    BearingStress,

    /// <summary>Push over width and effective length of the bearing.</summary>
    EffectiveBearingStress,

    /// <summary>Push over the area of the pad.</summary>
    PadPressure,

    /// <summary>Length over the ratio.</summary>
    LengthOverRatio,

    /// <summary>Twice the length of an overhang over the ratio.</summary>
    TwiceLengthOverRatio,

    /// <summary>What lasting loads add: the deflection at once and in time.</summary>
    DeflectionInTime,

    /// <summary>0.60 of yield.</summary>
    EdgeShareOfYield,

    /// <summary>0.40 of yield.</summary>
    ShearShareOfYield,

    /// <summary>0.60 of yield on the area.</summary>
    AxialShareOfYield,

    /// <summary>Mn/Ω.</summary>
    AllowableMoment,

    /// <summary>φ·Mn.</summary>
    DesignMoment,

    /// <summary>Vn/Ω.</summary>
    AllowableShear,

    /// <summary>φ·Vn.</summary>
    DesignShear,

    /// <summary>Rn/Ω.</summary>
    AllowableForce,

    /// <summary>φ·Rn.</summary>
    DesignForce,

    /// <summary>b/2t of the flange of an I.</summary>
    HalfFlange,

    /// <summary>b/t of the flange of a channel.</summary>
    WholeFlange,

    /// <summary>Clear height between fillets over thickness.</summary>
    WebBetweenFillets,

    /// <summary>Flat part of the pressed wall of a tube over its thickness.</summary>
    TubeFlange,

    /// <summary>Flat part of the walls of a tube beside the pressed one over their thickness.</summary>
    TubeWeb,

    /// <summary>AISC 360 Table B4.1b, λp of a flange.</summary>
    AiscFlangeCompact,

    /// <summary>AISC 360 Table B4.1b, λr of a rolled flange.</summary>
    AiscFlangeNoncompact,

    /// <summary>AISC 360 Table B4.1b, λr of a flange that is built up.</summary>
    AiscBuiltFlangeNoncompact,

    /// <summary>AISC 360 Table B4.1b, kc.</summary>
    AiscWebRestraint,

    /// <summary>AISC 360 Table B4.1b, λp of a web.</summary>
    AiscWebCompact,

    /// <summary>AISC 360 Table B4.1b, λp of the flange of a tube.</summary>
    AiscTubeFlangeCompact,

    /// <summary>AISC 360 Table B4.1b, λr of the flange of a tube.</summary>
    AiscTubeFlangeNoncompact,

    /// <summary>AISC 360 Table B4.1b, λp of the web of a tube.</summary>
    AiscTubeWebCompact,

    /// <summary>AISC 360 Table B4.1b, λr of the web of a tube.</summary>
    AiscTubeWebNoncompact,

    /// <summary>AISC 360 Table B4.1b, λp of a round wall.</summary>
    AiscWallCompact,

    /// <summary>AISC 360 Table B4.1b, λr of a round wall.</summary>
    AiscWallNoncompact,

    /// <summary>Fy·Z.</summary>
    PlasticMoment,

    /// <summary>Fy·Z, of a shape that yields far before all of it does at most 1.6 Fy·S.</summary>
    BoundedPlasticMoment,

    /// <summary>The plastic moment.</summary>
    Yielding,

    /// <summary>AISC 360 (F3-1) and (F6-2): a noncompact flange.</summary>
    AiscNoncompactFlange,

    /// <summary>AISC 360 (F3-2): a slender flange.</summary>
    AiscSlenderFlange,

    /// <summary>AISC 360 (F6-3) and (F6-4): a slender flange about the weak axis.</summary>
    AiscSlenderWeakFlange,

    /// <summary>AISC 360 (F7-2).</summary>
    AiscTubeFlangeMoment,

    /// <summary>AISC 360 (F7-6).</summary>
    AiscTubeWebMoment,

    /// <summary>AISC 360 (F8-2), as a stress on S.</summary>
    AiscNoncompactWall,

    /// <summary>AISC 360 (F8-4).</summary>
    AiscSlenderWall,

    /// <summary>A buckling stress on S, at most the plastic moment.</summary>
    MomentOfCriticalStress,

    /// <summary>√(Iy/A).</summary>
    RadiusOfGyration,

    /// <summary>AISC 360 (F2-7).</summary>
    AiscEffectiveRadius,

    /// <summary>AISC 360 (F2-8b): c of a channel.</summary>
    AiscChannelFactor,

    /// <summary>AISC 360 (F2-5).</summary>
    AiscPlasticLength,

    /// <summary>AISC 360 (F2-6).</summary>
    AiscElasticLength,

    /// <summary>AISC 360 (F2-4).</summary>
    AiscLateralStress,

    /// <summary>AISC 360 (F2-2) and (F7-10): between the two lengths.</summary>
    AiscBetweenLengths,

    /// <summary>AISC 360 (F7-12).</summary>
    AiscTubePlasticLength,

    /// <summary>AISC 360 (F7-13).</summary>
    AiscTubeElasticLength,

    /// <summary>AISC 360 (F7-11).</summary>
    AiscTubeLateralMoment,

    /// <summary>AISC 360 (F11-2).</summary>
    AiscBarBetween,

    /// <summary>AISC 360 (F11-3) and (F11-4).</summary>
    AiscBarElastic,

    /// <summary>AISC 360 G2.1: depth times thickness of the web.</summary>
    AiscWebArea,

    /// <summary>AISC 360 G4: both flat walls.</summary>
    AiscTubeShearArea,

    /// <summary>AISC 360 G5: half of the area.</summary>
    HalfArea,

    /// <summary>Both flanges.</summary>
    BothFlanges,

    /// <summary>AISC 360 (G2-4), kv 5.34.</summary>
    AiscWebCoefficient,

    /// <summary>AISC 360 (G2-10), kv 5.</summary>
    AiscTubeCoefficientBetween,

    /// <summary>AISC 360 (G2-11), kv 5.</summary>
    AiscTubeCoefficientElastic,

    /// <summary>AISC 360 (G2-10), kv 1.2.</summary>
    AiscFlangeCoefficientBetween,

    /// <summary>AISC 360 (G2-11), kv 1.2.</summary>
    AiscFlangeCoefficientElastic,

    /// <summary>AISC 360 (G2-1).</summary>
    AiscShear,

    /// <summary>AISC 360 (G5-2b), at most 0.6 Fy.</summary>
    AiscRoundShearStress,

    /// <summary>AISC 360 (G5-1).</summary>
    AiscRoundShear,

    /// <summary>AISC 360 (J10-2) and (J10-3).</summary>
    AiscWebYielding,

    /// <summary>AISC 360 (J10-4) and (J10-5a).</summary>
    AiscWebCrippling,

    /// <summary>AISC 360 (J10-5b).</summary>
    AiscWebCripplingOnLong,

    /// <summary>Fy·A.</summary>
    YieldOfArea,

    /// <summary>ε of EN 1993-1-1 Table 5.2.</summary>
    EnYieldFactor,

    /// <summary>c/t of the flange of an I, EN 1993-1-1 Table 5.2.</summary>
    EnOutstand,

    /// <summary>c/t of the flange of a channel, EN 1993-1-1 Table 5.2.</summary>
    EnChannelOutstand,

    /// <summary>Fy·Z/γM0.</summary>
    EnPlasticMoment,

    /// <summary>Fy·S/γM0.</summary>
    EnElasticMoment,

    /// <summary>Fy·A/γM0.</summary>
    EnAxial,

    /// <summary>hw/tw.</summary>
    EnWebSlenderness,

    /// <summary>hw/t of a tube.</summary>
    EnTubeWebSlenderness,

    /// <summary>72ε/η, EN 1993-1-1 6.2.6(6).</summary>
    EnWebLimit,

    /// <summary>EN 1993-1-1 6.2.6(3) a).</summary>
    EnRolledShearArea,

    /// <summary>EN 1993-1-1 6.2.6(3) d).</summary>
    EnBuiltShearArea,

    /// <summary>EN 1993-1-1 6.2.6(3) b).</summary>
    EnChannelShearArea,

    /// <summary>EN 1993-1-1 6.2.6(3) f).</summary>
    EnTubeShearArea,

    /// <summary>EN 1993-1-1 6.2.6(3) g).</summary>
    EnRoundShearArea,

    /// <summary>EN 1993-1-1 (6.18).</summary>
    EnShear,

    /// <summary>EN 1993-1-1 6.2.6(4).</summary>
    EnPeakShear,

    /// <summary>ρ of EN 1993-1-1 6.2.8(3).</summary>
    EnShearReduction,

    /// <summary>Share of the moment that the web carries, of EN 1993-1-1 (6.30).</summary>
    EnWebShare,

    /// <summary>Share of the area that carries the shear.</summary>
    EnAreaShare,

    /// <summary>EN 1993-1-1 (6.30).</summary>
    EnReducedMoment,

    /// <summary>Elastic critical moment under an even moment.</summary>
    CriticalMoment,

    /// <summary>The same of a shape that does not warp.</summary>
    CriticalMomentWithoutWarping,

    /// <summary>λLT of EN 1993-1-1 6.3.2.2.</summary>
    EnLateralSlenderness,

    /// <summary>Φ of EN 1993-1-1 (6.56).</summary>
    EnBucklingPhi,

    /// <summary>χ of EN 1993-1-1 (6.56).</summary>
    EnBucklingFactor,

    /// <summary>EN 1993-1-1 (6.55).</summary>
    EnLateralMoment,

    /// <summary>if,z of EN 1993-1-1 6.3.2.4.</summary>
    EnFlangeRadius,

    /// <summary>λf of EN 1993-1-1 (6.59).</summary>
    EnFlangeSlenderness,

    /// <summary>EN 1993-1-1 (6.60).</summary>
    EnFlangeMoment,

    /// <summary>Ft' or ft,0,d on the area.</summary>
    TensionForce,

    /// <summary>Fb* of the NDS: every factor but C_L and C_fu.</summary>
    NdsBracedStrength,

    /// <summary>le of NDS Table 3.3.3 below 7 depths.</summary>
    NdsShortLength,

    /// <summary>le of NDS Table 3.3.3 from 7 to 14.3 depths.</summary>
    NdsMiddleLength,

    /// <summary>le of NDS Table 3.3.3 above 14.3 depths.</summary>
    NdsLongLength,

    /// <summary>NDS (3.3-5).</summary>
    NdsSlenderness,

    /// <summary>FbE of NDS 3.3.3.8.</summary>
    NdsBucklingStress,

    /// <summary>FbE/Fb*.</summary>
    BucklingRatio,

    /// <summary>NDS (3.3-6).</summary>
    NdsBeamStability,

    /// <summary>NDS (3.10-2).</summary>
    NdsBearingArea,

    /// <summary>fm,d without k_crit.</summary>
    EnTimberBending,

    /// <summary>lef of EN 1995-1-1 Table 6.1, loaded on top.</summary>
    EnTimberLength,

    /// <summary>EN 1995-1-1 (6.32).</summary>
    EnTimberBuckling,

    /// <summary>EN 1995-1-1 (6.30).</summary>
    EnTimberSlenderness,

    /// <summary>EN 1995-1-1 (6.34), in its middle.</summary>
    EnTimberBetween,

    /// <summary>EN 1995-1-1 (6.34), of slender beams.</summary>
    EnTimberSlender,

    /// <summary>lef of EN 1995-1-1 6.1.5.</summary>
    EnTimberBearingLength,
}
