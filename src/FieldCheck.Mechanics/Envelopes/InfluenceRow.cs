namespace FieldCheck.Mechanics.Envelopes;

/// <summary>What a force down of one does to one figure: a cubic an element, as far as it does anything.</summary>
/// <param name="First">The first element on which it does anything.</param>
/// <param name="Cubics">
/// From there on the coefficients, four an element, in the share of its length at which the force stands; on all other
/// elements it does nothing.
/// </param>
internal sealed record InfluenceRow(int First, double[] Cubics)
{
    private static readonly double[] Nothing = new double[ForceInfluence.Cubic];

    /// <summary>The first element after them.</summary>
    internal int End => First + Cubics.Length / ForceInfluence.Cubic;

    internal bool IsNothing => Cubics.Length == 0;

    /// <summary>The cubic of any element.</summary>
    internal ReadOnlySpan<double> On(int element) => element >= First && element < End
        ? Cubics.AsSpan(ForceInfluence.Cubic * (element - First), ForceInfluence.Cubic)
        : Nothing;
}
