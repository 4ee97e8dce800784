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
}
