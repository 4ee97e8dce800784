namespace FieldCheck.Mechanics.HandMethods;

/// <summary>How a piece of a load is spread.</summary>
public enum HandShape
{
    /// <summary>Not: it acts at one place.</summary>
    Point,

    /// <summary>The same all along.</summary>
    Uniform,

    /// <summary>From nothing at its left to its greatest at its right.</summary>
    Rising,

    /// <summary>From its greatest at its left to nothing at its right.</summary>
    Falling,
}
