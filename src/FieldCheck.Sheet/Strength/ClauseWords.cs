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
        CheckClause.NdsBending => "NDS 3.3 and 4.3, bending",
        CheckClause.NdsLateralStability => "NDS 3.3.3, beam stability",
        CheckClause.NdsShear => "NDS 3.4, shear along the grain",
        CheckClause.NdsBearing => "NDS 3.10, bearing across the grain",
        CheckClause.En1995Bending => "EN 1995-1-1 6.1.6, bending",
        CheckClause.En1995LateralStability => "EN 1995-1-1 6.3.3, lateral stability",
        CheckClause.En1995Shear => "EN 1995-1-1 6.1.7, shear",
        CheckClause.En1995Bearing => "EN 1995-1-1 6.1.5, compression across the grain",
        _ => throw new ArgumentOutOfRangeException(nameof(clause), clause, "No words for it."),
    };
}
