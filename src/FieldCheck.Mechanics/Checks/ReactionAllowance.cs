namespace FieldCheck.Mechanics.Checks;

/// <summary>How far a stated reaction may lie from the computed one and still agree.</summary>
/// <param name="AsWritten">How far it may be off as it is written [N or N·m]: half a unit of its last digit, or more. 0 or greater.</param>
/// <param name="Share">Part of the computed reaction by which it may be off [–]; 0 or greater.</param>
/// <param name="Size">Size by which it may be off, whatever the reaction [N or N·m]; 0 or greater.</param>
/// <param name="Whole">
/// For a force, the total load [N]; for a moment, the greatest moment along the beam [N·m]. 0 or greater.
/// </param>
public readonly record struct ReactionAllowance(double AsWritten, double Share, double Size, double Whole)
{
    /// <summary>Part of the whole that is never called a difference [–]; common practice, no source.</summary>
    public const double ShareOfWhole = 0.001;

    /// <summary>How far it may be off as it is written [N or N·m]: half a unit of its last digit, or more. 0 or greater.</summary>
    public double AsWritten { get; } = Require.NotNegative(AsWritten);

    /// <summary>Part of the computed reaction by which it may be off [–]; 0 or greater.</summary>
    public double Share { get; } = Require.NotNegative(Share);

    /// <summary>Size by which it may be off, whatever the reaction [N or N·m]; 0 or greater.</summary>
    public double Size { get; } = Require.NotNegative(Size);

    /// <summary>The total load [N], or the greatest moment along the beam [N·m]; 0 or greater.</summary>
    public double Whole { get; } = Require.NotNegative(Whole);

    /// <summary>The allowed difference to either side [N or N·m].</summary>
    /// <param name="computed">The computed reaction [N or N·m].</param>
    public double For(double computed) =>
        AsWritten + Math.Max(Math.Max(Share * Math.Abs(Require.Finite(computed)), Size), ShareOfWhole * Whole);
}
