namespace FieldCheck.Mechanics.HandMethods;

/// <summary>How a support lets the beam move at its place.</summary>
public enum HandMovement
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>Down, by what it settles.</summary>
    AsItSettles,

    /// <summary>Down, by its force over its stiffness.</summary>
    ByItsSpring,

    /// <summary>Along its sloped surface; square to it by what it settles.</summary>
    AlongItsSurface,
}
