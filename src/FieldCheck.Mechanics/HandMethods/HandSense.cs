namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Which way something acts whose number has no sign.</summary>
public enum HandSense
{
    /// <summary>Not said: the number has its sign, or needs none.</summary>
    None,

    /// <summary>Down.</summary>
    Down,

    /// <summary>Up.</summary>
    Up,

    /// <summary>To the right.</summary>
    Right,

    /// <summary>To the left.</summary>
    Left,

    /// <summary>Counter-clockwise.</summary>
    CounterClockwise,

    /// <summary>Clockwise.</summary>
    Clockwise,
}
