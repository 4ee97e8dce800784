namespace FieldCheck.Mechanics.Solving;

/// <summary>A stretch between hinges or ends that moves as one rigid part.</summary>
/// <param name="From">Its left end [m from the left end of the beam].</param>
/// <param name="To">Its right end [m from the left end of the beam].</param>
/// <param name="Centre">The place it turns about [m from the left end], or null: it moves bodily up or down.</param>
public sealed record MovingPart(double From, double To, double? Centre)
{
    /// <summary>Its left end [m from the left end of the beam].</summary>
    public double From { get; } = From;

    /// <summary>Its right end [m from the left end of the beam].</summary>
    public double To { get; } = To;
}
