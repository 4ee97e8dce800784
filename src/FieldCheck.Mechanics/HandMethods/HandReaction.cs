namespace FieldCheck.Mechanics.HandMethods;

/// <summary>What one support does to the beam, as worked by hand.</summary>
/// <param name="Horizontal">Force along the beam, positive right; null: it does not hold that way.</param>
/// <param name="Vertical">Force across the beam, positive up; null: it does not hold that way.</param>
/// <param name="Couple">Couple, positive counter-clockwise; null: it does not hold that way.</param>
/// <param name="Normal">Push square to a sloped surface; null: not sloped.</param>
/// <param name="HasLetGo">True: it would have to act as it cannot, and gives nothing.</param>
public sealed record HandReaction(
    HandNumber? Horizontal, HandNumber? Vertical, HandNumber? Couple, HandNumber? Normal, bool HasLetGo);
