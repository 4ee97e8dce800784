namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The greatest and least of what one support does to the beam.</summary>
/// <param name="Horizontal">Force along the beam [N], positive to the right.</param>
/// <param name="Vertical">Force across the beam [N], positive up.</param>
/// <param name="Moment">Moment [N·m], positive counter-clockwise.</param>
public sealed record ReactionEnvelope(GovernedRange Horizontal, GovernedRange Vertical, GovernedRange Moment);
