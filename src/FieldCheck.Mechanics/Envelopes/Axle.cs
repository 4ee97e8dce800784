namespace FieldCheck.Mechanics.Envelopes;

/// <summary>One force of a rolling load.</summary>
/// <param name="Offset">Distance from the first axle [m]; zero or greater.</param>
/// <param name="Down">Its force [N], positive down.</param>
/// <exception cref="ArgumentOutOfRangeException">A value is not finite, or breaks the bound given above.</exception>
public readonly record struct Axle(double Offset, double Down)
{
    /// <summary>Distance from the first axle [m]; zero or greater.</summary>
    public double Offset { get; } = Require.NotNegative(Offset);

    /// <summary>Its force [N], positive down.</summary>
    public double Down { get; } = Require.Finite(Down);
}
