namespace FieldCheck.Mechanics.HandMethods;

/// <summary>What lies on a stretch between two marks.</summary>
public enum HandStretchLoad
{
    /// <summary>Nothing: the shear stays as it is.</summary>
    Nothing,

    /// <summary>The same all along: the shear runs straight.</summary>
    Uniform,

    /// <summary>It varies in a straight line: the shear runs in a curve.</summary>
    Varying,
}
