namespace FieldCheck.Mechanics.Model;

/// <summary>What the strengths of a grade of timber are.</summary>
public enum TimberBasis
{
    /// <summary>Reference design values of the NDS, for service combinations.</summary>
    Reference,

    /// <summary>Characteristic values of EN 338 or EN 14080, for factored combinations by EN 1995-1-1.</summary>
    Characteristic,
}
