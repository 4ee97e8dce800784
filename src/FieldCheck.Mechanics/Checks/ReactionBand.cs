namespace FieldCheck.Mechanics.Checks;

/// <summary>What a reaction may be, the entered values being known only so well.</summary>
/// <param name="Low">Its least value [N or N·m].</param>
/// <param name="High">Its greatest value [N or N·m]; not below <paramref name="Low"/>.</param>
public readonly record struct ReactionBand(double Low, double High)
{
    /// <summary>Its least value [N or N·m].</summary>
    public double Low { get; } = Require.Finite(Low);

    /// <summary>Its greatest value [N or N·m].</summary>
    public double High { get; } = Require.Finite(High);

    /// <summary>Whether a value lies inside, or nearer to it than half its last digit.</summary>
    /// <param name="value">The value [N or N·m].</param>
    /// <param name="halfDigit">Half a unit of its last digit [N or N·m].</param>
    public bool Holds(double value, double halfDigit) => value >= Low - halfDigit && value <= High + halfDigit;
}
