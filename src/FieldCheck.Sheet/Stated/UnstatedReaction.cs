namespace FieldCheck.Sheet.Stated;

/// <summary>A pull, a thrust or a moment that the beam puts on a support and that nobody states.</summary>
/// <param name="Support">The support, as an index into those of the model.</param>
/// <param name="Label">The support's label.</param>
/// <param name="Component">Which component.</param>
/// <param name="Value">The computed one [N or N·m]: positive up, to the right, counter-clockwise.</param>
/// <param name="Against">The combination or case in which it is greatest.</param>
public sealed record UnstatedReaction(
    int Support, string Label, ReactionComponent Component, double Value, StatedAgainst Against);
