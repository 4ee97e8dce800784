namespace FieldCheck.Mechanics.HandMethods;

/// <summary>By which rule a load adds to the load term of a bay's end.</summary>
public enum HandLoadTerm
{
    /// <summary>A force at one place.</summary>
    Point,

    /// <summary>The same along a part of the bay.</summary>
    Uniform,

    /// <summary>Growing along a part of the bay, towards the end in question.</summary>
    GrowsNear,

    /// <summary>Growing along a part of the bay, away from the end in question.</summary>
    GrowsAway,

    /// <summary>The same along the whole bay.</summary>
    WholeUniform,

    /// <summary>Growing along the whole bay, towards the end in question.</summary>
    WholeGrowsNear,

    /// <summary>Growing along the whole bay, away from the end in question.</summary>
    WholeGrowsAway,

    /// <summary>A couple.</summary>
    Couple,
}
