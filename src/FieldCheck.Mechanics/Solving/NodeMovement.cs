namespace FieldCheck.Mechanics.Solving;

/// <summary>How a node moves.</summary>
internal struct NodeMovement
{
    /// <summary>To the right [m].</summary>
    internal DoubleDouble Right;

    /// <summary>Up [m].</summary>
    internal DoubleDouble Up;

    /// <summary>Turn of the part to the left [rad], counter-clockwise.</summary>
    internal DoubleDouble TurnLeft;

    /// <summary>Turn of the part to the right [rad]; differs from the left at a hinge only.</summary>
    internal DoubleDouble TurnRight;
}
