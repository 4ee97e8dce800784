namespace FieldCheck.Mechanics.Checks;

/// <summary>What is stated of one support across the beam, or of its moment.</summary>
/// <param name="Position">Where the support stands [m].</param>
/// <param name="Value">The stated force [N], positive up, or moment [N·m], positive counter-clockwise.</param>
/// <param name="AsWritten">How far it may be off as it is written [N or N·m]: half a unit of its last digit, or more. 0 or greater.</param>
/// <param name="Allowed">By how much it may be off and agree [N or N·m]; 0 or greater.</param>
public readonly record struct StatedForce(double Position, double Value, double AsWritten, double Allowed)
{
    /// <summary>Where the support stands [m].</summary>
    public double Position { get; } = Require.NotNegative(Position);

    /// <summary>The stated force [N], positive up, or moment [N·m], positive counter-clockwise.</summary>
    public double Value { get; } = Require.Finite(Value);

    /// <summary>How far it may be off as it is written [N or N·m]: half a unit of its last digit, or more. 0 or greater.</summary>
    public double AsWritten { get; } = Require.NotNegative(AsWritten);

    /// <summary>By how much it may be off and agree [N or N·m]; 0 or greater.</summary>
    public double Allowed { get; } = Require.NotNegative(Allowed);
}
