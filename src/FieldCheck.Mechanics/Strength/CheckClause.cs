namespace FieldCheck.Mechanics.Strength;

/// <summary>The rule that a limit comes from.</summary>
public enum CheckClause
{
    /// <summary>A stress, ratio or length given with the beam.</summary>
    Given,

    /// <summary>
    /// A ratio given for one case, of an overhang against twice its length: footnote to IBC Table 1604.3, common practice.
    /// </summary>
    OverhangAsTwiceItsLength,

    /// <summary>Common practice, no source: 0.60 of yield at the edge.</summary>
    ElasticBending,

    /// <summary>Common practice, no source: 0.40 of yield in shear.</summary>
    ElasticShear,

    /// <summary>Common practice, no source: 0.60 of yield along the member.</summary>
    ElasticAxial,

    /// <summary>AISC 360-16 chapter F, where no section of it could be reached.</summary>
    Aisc360Flexure,

    /// <summary>AISC 360-16 F2.1: yielding of an I or a channel about its strong axis.</summary>
    Aisc360F2Yielding,

    /// <summary>AISC 360-16 F2.2: lateral-torsional buckling of an I or a channel.</summary>
    Aisc360F2Lateral,

    /// <summary>AISC 360-16 F3.2: local buckling of the compression flange of an I.</summary>
    Aisc360F3Flange,

    /// <summary>AISC 360-16 F6.1: yielding of an I or a channel about its weak axis.</summary>
    Aisc360F6Yielding,

    /// <summary>AISC 360-16 F6.2: local buckling of flanges bent about the weak axis.</summary>
    Aisc360F6Flange,

    /// <summary>AISC 360-16 F7.1: yielding of a rectangular tube.</summary>
    Aisc360F7Yielding,

    /// <summary>AISC 360-16 F7.2: local buckling of the flange of a rectangular tube.</summary>
    Aisc360F7Flange,

    /// <summary>AISC 360-16 F7.3: local buckling of the webs of a rectangular tube.</summary>
    Aisc360F7Web,

    /// <summary>AISC 360-16 F7.4: lateral-torsional buckling of a rectangular tube.</summary>
    Aisc360F7Lateral,

    /// <summary>AISC 360-16 F8.1: yielding of a round tube.</summary>
    Aisc360F8Yielding,

    /// <summary>AISC 360-16 F8.2: local buckling of a round tube.</summary>
    Aisc360F8Local,

    /// <summary>AISC 360-16 F11.1: yielding of a solid bar.</summary>
    Aisc360F11Yielding,

    /// <summary>AISC 360-16 F11.2: lateral-torsional buckling of a rectangular bar.</summary>
    Aisc360F11Lateral,

    /// <summary>AISC 360-16 chapter G, where no section of it could be reached.</summary>
    Aisc360Shear,

    /// <summary>AISC 360-16 G2.1: shear of the web of an I or a channel.</summary>
    Aisc360G2,

    /// <summary>AISC 360-16 G4: shear of a rectangular tube.</summary>
    Aisc360G4,

    /// <summary>AISC 360-16 G5: shear of a round tube.</summary>
    Aisc360G5,

    /// <summary>AISC 360-16 G6: shear of flanges bent about the weak axis.</summary>
    Aisc360G6,

    /// <summary>Common practice, no source: 0.60 of yield as the greatest shear stress in a solid bar; chapter G has none.</summary>
    SolidBarShear,

    /// <summary>AISC 360-16 J10.2: local yielding of the web over a support.</summary>
    Aisc360WebYielding,

    /// <summary>AISC 360-16 J10.3, local crippling of the web.</summary>
    Aisc360WebCrippling,

    /// <summary>AISC 360-16 D2: yielding of the whole area in tension.</summary>
    Aisc360Tension,

    /// <summary>Yield on the whole area in compression, with the factors of AISC 360-16 E1; buckling left out.</summary>
    Aisc360Squash,

    /// <summary>EN 1993-1-1 5.5.2 and Table 5.2: the class of the section.</summary>
    En1993Class,

    /// <summary>EN 1993-1-1 6.2.5: bending.</summary>
    En1993Bending,

    /// <summary>EN 1993-1-1 6.2.8: bending beside high shear.</summary>
    En1993BendingWithShear,

    /// <summary>EN 1993-1-1 6.2.6(2): plastic resistance in shear.</summary>
    En1993Shear,

    /// <summary>EN 1993-1-1 6.2.6(4): the greatest elastic shear stress.</summary>
    En1993ElasticShear,

    /// <summary>EN 1993-1-1 6.3.2.4: lateral-torsional buckling, the simplified method by the compression flange.</summary>
    En1993SimplifiedLateral,

    /// <summary>EN 1993-1-1 6.3.2.2: lateral-torsional buckling, the general case.</summary>
    En1993GeneralLateral,

    /// <summary>EN 1993-1-1 6.2.3: yielding of the whole area in tension.</summary>
    En1993Tension,

    /// <summary>EN 1993-1-1 6.2.4: the whole area in compression; buckling left out.</summary>
    En1993Squash,

    /// <summary>NDS 3.3 and 4.3: bending.</summary>
    NdsBending,

    /// <summary>NDS 3.3.3: beam stability factor.</summary>
    NdsLateralStability,

    /// <summary>NDS 3.4: shear along the grain.</summary>
    NdsShear,

    /// <summary>NDS 3.10: bearing across the grain.</summary>
    NdsBearing,

    /// <summary>NDS 3.8: tension along the grain.</summary>
    NdsTension,

    /// <summary>EN 1995-1-1 6.1.2: tension along the grain.</summary>
    En1995Tension,

    /// <summary>EN 1995-1-1 6.1.6: bending.</summary>
    En1995Bending,

    /// <summary>EN 1995-1-1 6.3.3: beams in bending that may turn over sideways.</summary>
    En1995LateralStability,

    /// <summary>EN 1995-1-1 6.1.7: shear.</summary>
    En1995Shear,

    /// <summary>EN 1995-1-1 6.1.5: compression across the grain.</summary>
    En1995Bearing,
}
