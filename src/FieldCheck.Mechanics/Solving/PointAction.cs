namespace FieldCheck.Mechanics.Solving;

/// <summary>What acts at one point of the grid.</summary>
internal struct PointAction
{
    /// <summary>Force across [N], positive up.</summary>
    internal DoubleDouble Up;

    /// <summary>Force along [N], positive right.</summary>
    internal DoubleDouble Right;

    /// <summary>Couple on the part to the left [N·m], positive counter-clockwise.</summary>
    internal DoubleDouble TurnLeft;

    /// <summary>Couple on the part to the right [N·m], positive counter-clockwise.</summary>
    internal DoubleDouble TurnRight;
}
