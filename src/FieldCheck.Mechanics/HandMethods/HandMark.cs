namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Shear and moment at a place; positive as in docs/conventions.md.</summary>
/// <param name="Place">The place.</param>
/// <param name="ShearLeft">Shear just left of it.</param>
/// <param name="ShearRight">Shear just right of it; the same number where it does not jump.</param>
/// <param name="MomentLeft">Moment just left of it.</param>
/// <param name="MomentRight">Moment just right of it; the same number where it does not jump.</param>
public sealed record HandMark(
    HandNumber Place, HandNumber ShearLeft, HandNumber ShearRight, HandNumber MomentLeft, HandNumber MomentRight)
{
    /// <summary>True: no load or support stands there, but the shear is nothing and the moment has a peak.</summary>
    public bool IsPeak { get; init; }
}
