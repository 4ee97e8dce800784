namespace FieldCheck.Mechanics.Checks;

/// <summary>The range that a figure may lie in.</summary>
/// <param name="Low">The least, in the figure's own SI unit [N, N·m or m].</param>
/// <param name="High">The greatest, in the figure's own SI unit [N, N·m or m].</param>
/// <param name="Certainty">What is known of the two ends.</param>
public readonly record struct Band(double Low, double High, BandCertainty Certainty)
{
    /// <summary>The least, in the figure's own SI unit [N, N·m or m].</summary>
    public double Low { get; } = Low;

    /// <summary>The greatest, in the figure's own SI unit [N, N·m or m].</summary>
    public double High { get; } = High;

    /// <summary>Half of the distance between the ends, in the figure's own SI unit [N, N·m or m].</summary>
    public double HalfWidth => (High - Low) / 2;

    /// <summary>Whether a value lies inside, ends included.</summary>
    /// <param name="value">In the figure's own SI unit [N, N·m or m].</param>
    public bool Holds(double value) => value >= Low && value <= High;

    /// <summary>The smallest band around two; as certain as the less certain one.</summary>
    internal Band Around(Band other) => new(
        Math.Min(Low, other.Low),
        Math.Max(High, other.High),
        (BandCertainty)Math.Max((int)Certainty, (int)other.Certainty));

    internal Band Widened(double down, double up) => new(Low + down, High + up, Certainty);

    internal Band AtBest(BandCertainty best) => new(Low, High, (BandCertainty)Math.Max((int)Certainty, (int)best));
}
