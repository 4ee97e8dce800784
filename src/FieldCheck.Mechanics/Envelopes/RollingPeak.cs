namespace FieldCheck.Mechanics.Envelopes;

/// <summary>A value that a train gives, and where it stands.</summary>
/// <param name="Value">The value.</param>
/// <param name="Interval">The interval between two events.</param>
/// <param name="Share">Where in it, as a share of its length [–].</param>
/// <param name="Lean">
/// On which side of that place the value holds where it jumps there: 1 right, -1 left, 0 where it cannot jump.
/// </param>
internal readonly record struct RollingPeak(double Value, int Interval, double Share, int Lean)
{
    internal static RollingPeak None => new(double.NegativeInfinity, 0, 0, 0);

    /// <summary>Nothing, which a train gives wherever it stands outside some intervals; none where there is no such place.</summary>
    internal static RollingPeak Outside(int first, int end, int intervals) =>
        first > 0 ? new(0, 0, 0, 0) : end < intervals ? new(0, intervals - 1, 0, 0) : None;
}
