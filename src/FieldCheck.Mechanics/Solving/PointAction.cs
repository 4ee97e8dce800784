namespace FieldCheck.Mechanics.Solving;

/// <summary>What acts at one point of the grid.</summary>
internal struct PointAction
{
    /// <summary>Whether any load of the cases at hand acts here, be it of no size.</summary>
    internal bool IsLoaded;

    /// <summary>Force across [N], positive up.</summary>
    internal DoubleDouble Up;

    /// <summary>Force along [N], positive right.</summary>
    internal DoubleDouble Right;

    /// <summary>Couple on the part to the left [N·m], positive counter-clockwise.</summary>
    internal DoubleDouble TurnLeft;

    /// <summary>Couple on the part to the right [N·m], positive counter-clockwise.</summary>
    internal DoubleDouble TurnRight;
}
