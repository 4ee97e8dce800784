namespace FieldCheck.Mechanics.Solving;

/// <summary>
/// How large a figure of one solution may be and still be nothing but the rounding of double-double arithmetic.
/// </summary>
/// <remarks>
/// That rounding is near 1e-32 of what was added up. Taken as nothing: less than 1e-20 of the greatest internal force,
/// or 1e-28 of the greatest product of a stiffness and a movement, whichever is more. Both lie far below the rounding
/// of a double (1e-16), so no figure that a double can tell from zero beside the others is lost.
/// </remarks>
internal struct NoiseFloor(double length)
{
    private const double OfForce = 1e-20;
    private const double OfStiffForce = 1e-28;
    private double _force = 0;
    private double _movement = 0;

    /// <summary>The greatest internal force, moments over the beam's length [N].</summary>
    internal double GreatestForce { get; private set; } = 0;

    /// <summary>The greatest movement, turns times the beam's length [m].</summary>
    internal double GreatestMovement { get; private set; } = 0;

    /// <summary>Takes in one element of the solution.</summary>
    internal void Take(in Element element, in NodeMovement left, in NodeMovement right, in ElementForces forces)
    {
        double across = Size(left.Up) + Size(right.Up);
        double turn = Size(left.TurnRight) + Size(right.TurnLeft);
        double along = Size(left.Right) + Size(right.Right);
        double stiff = (double)element.Sway * across
            + (double)element.SwayMoment * turn
            + (double)element.Stretch * along;
        GreatestForce = Math.Max(GreatestForce, Size(forces));
        GreatestMovement = Math.Max(GreatestMovement, across + along + turn * length);
        _force = Math.Max(_force, Math.Max(Size(forces) * OfForce, stiff * OfStiffForce));
        _movement = GreatestMovement * OfForce;
    }

    /// <summary>A force [N], or zero.</summary>
    internal readonly double Force(DoubleDouble value) => Size(value) <= _force ? 0 : (double)value;

    /// <summary>A moment [N·m], or zero.</summary>
    internal readonly double Moment(DoubleDouble value) => Size(value) <= _force * length ? 0 : (double)value;

    /// <summary>A movement [m], or zero.</summary>
    internal readonly double Movement(double value) => Math.Abs(value) <= _movement ? 0 : value;

    /// <summary>A turn [rad], or zero.</summary>
    internal readonly double Turn(double value) => Math.Abs(value) * length <= _movement ? 0 : value;

    private readonly double Size(in ElementForces forces) => Math.Max(Size(forces.Start), Size(forces.End));

    private readonly double Size(in SectionForces forces) =>
        Math.Max(Math.Max(Size(forces.Axial), Size(forces.Shear)), Size(forces.Moment) / length);

    private static double Size(DoubleDouble value) => Math.Abs((double)value);
}
