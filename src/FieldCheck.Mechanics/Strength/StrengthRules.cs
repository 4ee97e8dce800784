namespace FieldCheck.Mechanics.Strength;

/// <summary>Rules that a strength may be judged by, beside stresses given outright.</summary>
public enum StrengthRules
{
    /// <summary>None: only stresses given outright are judged.</summary>
    None,

    /// <summary>Shares of the yield stress on the elastic section, for service combinations; common practice.</summary>
    ElasticAllowable,

    /// <summary>AISC 360-16, allowable strength design, for service combinations.</summary>
    Aisc360Asd,

    /// <summary>AISC 360-16, load and resistance factor design, for factored combinations.</summary>
    Aisc360Lrfd,

    /// <summary>EN 1993-1-1, for factored combinations.</summary>
    En1993,

    /// <summary>National Design Specification for wood, allowable stress design, for service combinations.</summary>
    Nds,

    /// <summary>EN 1995-1-1, for factored combinations.</summary>
    En1995,
}
