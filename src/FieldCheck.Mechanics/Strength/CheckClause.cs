namespace FieldCheck.Mechanics.Strength;

/// <summary>The rule that a limit comes from.</summary>
public enum CheckClause
{
    /// <summary>A stress, ratio or length given with the beam.</summary>
    Given,

    /// <summary>Common practice, no source: 0.60 of yield at the edge.</summary>
    ElasticBending,

    /// <summary>Common practice, no source: 0.40 of yield in shear.</summary>
    ElasticShear,

    /// <summary>Common practice, no source: 0.60 of yield along the member.</summary>
    ElasticAxial,
}
