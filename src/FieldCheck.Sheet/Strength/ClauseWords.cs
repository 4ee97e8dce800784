using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Sheet.Strength;

/// <summary>The rule that a limit comes from, in words.</summary>
public static class ClauseWords
{
    /// <summary>Standard, clause and what it is about, as "AISC 360-16 F2.2, lateral-torsional buckling".</summary>
    /// <param name="clause">The rule.</param>
    public static string Of(CheckClause clause) => clause switch
    {
        CheckClause.Given => "as given",
        CheckClause.OverhangAsTwiceItsLength => "held against twice its length, common practice, as in a note to IBC Table 1604.3",
        CheckClause.ElasticBending => "0.60 of yield at the edge, common practice, no source",
        CheckClause.ElasticShear => "0.40 of yield in shear, common practice, no source",
        CheckClause.ElasticAxial => "0.60 of yield along the beam, common practice, no source",
        CheckClause.Aisc360Flexure => "AISC 360-16 chapter F, bending",
        CheckClause.Aisc360F2Yielding => "AISC 360-16 F2.1, yielding",
        CheckClause.Aisc360F2Lateral => "AISC 360-16 F2.2, lateral-torsional buckling",
        CheckClause.Aisc360F3Flange => "AISC 360-16 F3.2, local buckling of the flange",
        CheckClause.Aisc360F6Yielding => "AISC 360-16 F6.1, yielding about the weak axis",
        CheckClause.Aisc360F6Flange => "AISC 360-16 F6.2, local buckling of flanges about the weak axis",
        CheckClause.Aisc360F7Yielding => "AISC 360-16 F7.1, yielding of a rectangular tube",
        CheckClause.Aisc360F7Flange => "AISC 360-16 F7.2, local buckling of a tube's flange",
        CheckClause.Aisc360F7Web => "AISC 360-16 F7.3, local buckling of a tube's webs",
        CheckClause.Aisc360F7Lateral => "AISC 360-16 F7.4, lateral-torsional buckling of a tube",
        CheckClause.Aisc360F8Yielding => "AISC 360-16 F8.1, yielding of a round tube",
        CheckClause.Aisc360F8Local => "AISC 360-16 F8.2, local buckling of a round tube",
        CheckClause.Aisc360F11Yielding => "AISC 360-16 F11.1, yielding of a bar",
        CheckClause.Aisc360F11Lateral => "AISC 360-16 F11.2, lateral-torsional buckling of a bar",
        CheckClause.Aisc360Shear => "AISC 360-16 chapter G, shear",
        CheckClause.Aisc360G2 => "AISC 360-16 G2.1, shear of the web",
        CheckClause.Aisc360G4 => "AISC 360-16 G4, shear of a rectangular tube",
        CheckClause.Aisc360G5 => "AISC 360-16 G5, shear of a round tube",
        CheckClause.Aisc360G6 => "AISC 360-16 G6, shear about the weak axis",
        CheckClause.SolidBarShear => "0.60 of yield as the greatest shear stress of a solid bar, common practice, no source",
        CheckClause.Aisc360WebCrippling => "AISC 360-16 J10.3, local crippling of the web",
        CheckClause.Aisc360WebYielding => "AISC 360-16 J10.2, local yielding of the web",
        CheckClause.Aisc360Tension => "AISC 360-16 D2, yielding in tension",
        CheckClause.Aisc360Squash => "yield on the whole area with the factors of AISC 360-16 E1, buckling left out",
        CheckClause.En1993Class => "EN 1993-1-1 5.5.2, class of the section",
        CheckClause.En1993Bending => "EN 1993-1-1 6.2.5, bending",
        CheckClause.En1993BendingWithShear => "EN 1993-1-1 6.2.8, bending beside high shear",
        CheckClause.En1993Shear => "EN 1993-1-1 6.2.6, plastic shear",
        CheckClause.En1993ElasticShear => "EN 1993-1-1 6.2.6(4), elastic shear stress",
        CheckClause.En1993SimplifiedLateral => "EN 1993-1-1 6.3.2.4, lateral-torsional buckling, simplified",
        CheckClause.En1993GeneralLateral => "EN 1993-1-1 6.3.2.2, lateral-torsional buckling, general case",
        CheckClause.En1993Tension => "EN 1993-1-1 6.2.3, tension",
        CheckClause.En1993Squash => "EN 1993-1-1 6.2.4, compression, buckling left out",
        CheckClause.NdsBending => "NDS 3.3 and 4.3, bending",
        CheckClause.NdsLateralStability => "NDS 3.3.3, beam stability",
        CheckClause.NdsShear => "NDS 3.4, shear along the grain",
        CheckClause.NdsBearing => "NDS 3.10, bearing across the grain",
        CheckClause.NdsTension => "NDS 3.8, tension",
        CheckClause.En1995Tension => "EN 1995-1-1 6.1.2, tension along the grain",
        CheckClause.En1995Bending => "EN 1995-1-1 6.1.6, bending",
        CheckClause.En1995LateralStability => "EN 1995-1-1 6.3.3, lateral stability",
        CheckClause.En1995Shear => "EN 1995-1-1 6.1.7, shear",
        CheckClause.En1995Bearing => "EN 1995-1-1 6.1.5, compression across the grain",
        _ => throw new ArgumentOutOfRangeException(nameof(clause), clause, "No words for it."),
    };
}
