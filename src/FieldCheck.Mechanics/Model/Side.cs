namespace FieldCheck.Mechanics.Model;

/// <summary>The part of the beam just left or just right of a place.</summary>
public enum Side
{
    /// <summary>Just left of the place.</summary>
    Left,

    /// <summary>Just right of the place.</summary>
    Right,
}
