namespace FieldCheck.Mechanics.Strength;

/// <summary>A support that only pushes and that a growing load lifts the beam off from.</summary>
/// <param name="Support">Its index in the model.</param>
/// <param name="From">It still carries up to this size: a factor on loads that stand [–], or a force [N].</param>
public sealed record SupportLetGo(int Support, double From);
