namespace FieldCheck.Mechanics.HandMethods;

/// <summary>How far a working by hand came.</summary>
public enum HandReach
{
    /// <summary>Every reaction is found.</summary>
    Whole,

    /// <summary>Some of the beam is beyond these methods: the reactions are not all found.</summary>
    Partial,

    /// <summary>What holds the beam cannot hold it.</summary>
    CanMove,
}
