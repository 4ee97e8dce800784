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

    /// <summary>NDS 3.3 and 4.3: bending.</summary>
    NdsBending,

    /// <summary>NDS 3.3.3: beam stability factor.</summary>
    NdsLateralStability,

    /// <summary>NDS 3.4: shear along the grain.</summary>
    NdsShear,

    /// <summary>NDS 3.10: bearing across the grain.</summary>
    NdsBearing,

    /// <summary>EN 1995-1-1 6.1.6: bending.</summary>
    En1995Bending,

    /// <summary>EN 1995-1-1 6.3.3: beams in bending that may turn over sideways.</summary>
    En1995LateralStability,

    /// <summary>EN 1995-1-1 6.1.7: shear.</summary>
    En1995Shear,

    /// <summary>EN 1995-1-1 6.1.5: compression across the grain.</summary>
    En1995Bearing,
}
