using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Sheet.Strength;

/// <summary>How long a bay may become.</summary>
/// <param name="Length">The greatest length [m], and what ends it; null where the question makes no sense.</param>
/// <param name="Why">Why it makes none; null where it does.</param>
public sealed record BayHeadroom(Headroom? Length, string? Why)
{
    /// <summary>How the bay is held sideways; null where nothing hangs on it.</summary>
    public BayLateral? Lateral { get; init; }
}
