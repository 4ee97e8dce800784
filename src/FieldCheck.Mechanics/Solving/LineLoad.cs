namespace FieldCheck.Mechanics.Solving;

/// <summary>What is spread over one piece: intensities at its start and their change along it.</summary>
internal struct LineLoad
{
    /// <summary>Across at the start [N/m], positive up.</summary>
    internal DoubleDouble Up;

    /// <summary>Its change per length [N/m²].</summary>
    internal DoubleDouble UpChange;

    /// <summary>Along at the start [N/m], positive right.</summary>
    internal DoubleDouble Right;

    /// <summary>Its change per length [N/m²].</summary>
    internal DoubleDouble RightChange;

    /// <summary>
    /// How many loads begin at the start, less those that end there; then, how many stand on the piece.
    /// </summary>
    internal int Standing;
}
