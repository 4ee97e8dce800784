namespace FieldCheck.Mechanics.Strength;

/// <summary>How far a load may grow.</summary>
/// <param name="Most">
/// The greatest that still holds: a factor on loads that stand [–], or a force [N]; null: there is no greatest, or none
/// holds.
/// </param>
/// <param name="End">What ends it.</param>
/// <param name="First">The check that is over first beyond it, or that is then not judged; null where none is.</param>
public sealed record Headroom(double? Most, HeadroomEnd End, SectionCheck? First);
