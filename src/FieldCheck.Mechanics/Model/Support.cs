namespace FieldCheck.Mechanics.Model;

/// <summary>A place where the beam is held: what it holds along, across and in rotation.</summary>
/// <remarks>
/// On a sloped surface (<see cref="SurfaceSlope"/> not zero) "across" is the direction normal to the surface,
/// (-sin, +cos) of the slope, and nothing is held along the surface.
/// </remarks>
/// <param name="Position">Distance from the left end of the beam [m]; zero or greater.</param>
/// <param name="Along">What resists movement along the beam: free or held.</param>
/// <param name="Across">What resists movement across the beam, or normal to a sloped surface.</param>
/// <param name="Rotation">What resists turning.</param>
/// <param name="SurfaceSlope">
/// Slope of the surface it bears on [rad], positive rising to the right; within ±π/2.
/// </param>
/// <param name="Settlement">Imposed movement [m], positive down, or along the normal away from the beam.</param>
/// <param name="ImposedRotation">
/// Imposed turn [rad], positive counter-clockwise; counts only where rotation is held.
/// </param>
/// <param name="Action">Which senses of reaction it can give.</param>
public sealed record Support(
    double Position,
    Restraint Along,
    Restraint Across,
    Restraint Rotation,
    double SurfaceSlope = 0,
    double Settlement = 0,
    double ImposedRotation = 0,
    SupportAction Action = SupportAction.Both)
{
    /// <summary>Distance from the left end of the beam [m].</summary>
    public double Position { get; } = Require.NotNegative(Position);

    /// <summary>Slope of the surface it bears on [rad], positive rising to the right.</summary>
    public double SurfaceSlope { get; } = Require.Between(SurfaceSlope, -Math.PI / 2, Math.PI / 2);

    /// <summary>Imposed movement [m], positive down, or along the normal away from the beam.</summary>
    public double Settlement { get; init; } = Require.Finite(Settlement);

    /// <summary>Imposed turn [rad], positive counter-clockwise.</summary>
    public double ImposedRotation { get; init; } = Require.Finite(ImposedRotation);

    /// <summary>Whether it can push or pull along the beam: it is held along, or it bears on a sloped surface.</summary>
    public bool HoldsAlong => Along is not Restraint.None || (SurfaceSlope != 0 && Across is not Restraint.None);

    /// <summary>The part of a vector across the beam, or normal to a sloped surface.</summary>
    internal double NormalPart(double right, double up)
    {
        if (SurfaceSlope == 0)
        {
            return up;
        }

        (double sine, double cosine) = Math.SinCos(SurfaceSlope);
        return cosine * up - sine * right;
    }

    /// <summary>A pin: holds along and across, lets the beam turn.</summary>
    /// <param name="position">Distance from the left end of the beam [m].</param>
    public static Support Pin(double position) => new(position, Restraint.Held, Restraint.Held, Restraint.Free);

    /// <summary>A roller: holds normal to its surface only.</summary>
    /// <param name="position">Distance from the left end of the beam [m].</param>
    /// <param name="surfaceSlope">Slope of that surface [rad], positive rising to the right.</param>
    public static Support Roller(double position, double surfaceSlope = 0) =>
        new(position, Restraint.Free, Restraint.Held, Restraint.Free, surfaceSlope);

    /// <summary>A built-in end: holds along, across and rotation.</summary>
    /// <param name="position">Distance from the left end of the beam [m].</param>
    public static Support Fixed(double position) => new(position, Restraint.Held, Restraint.Held, Restraint.Held);

    /// <summary>A guide: holds along and rotation, free up and down.</summary>
    /// <param name="position">Distance from the left end of the beam [m].</param>
    public static Support Guide(double position) => new(position, Restraint.Held, Restraint.Free, Restraint.Held);

    /// <summary>A spring across the beam; free along and in rotation.</summary>
    /// <param name="position">Distance from the left end of the beam [m].</param>
    /// <param name="stiffness">Force per movement [N/m].</param>
    public static Support Spring(double position, double stiffness) =>
        new(position, Restraint.Free, new Restraint.Spring(stiffness), Restraint.Free);
}
