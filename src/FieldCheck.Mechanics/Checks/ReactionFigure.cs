namespace FieldCheck.Mechanics.Checks;

/// <summary>One part of a reaction as somebody states it.</summary>
/// <param name="Support">Index of the support.</param>
/// <param name="Part">Which part.</param>
/// <param name="Value">Its value [N or N·m], signed as a reaction.</param>
/// <param name="HalfDigit">Half a unit of the last digit written [N or N·m]; zero or greater.</param>
public sealed record ReactionFigure(int Support, ReactionPart Part, double Value, double HalfDigit)
{
    /// <summary>Its value [N or N·m], signed as a reaction.</summary>
    public double Value { get; } = Require.Finite(Value);

    /// <summary>Half a unit of the last digit written [N or N·m].</summary>
    public double HalfDigit { get; } = Require.NotNegative(HalfDigit);
}
