using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>What one span of the model is made of and how it is held sideways; null where it is not known.</summary>
/// <param name="Section">Its section.</param>
/// <param name="Material">Its material.</param>
/// <param name="Lateral">How its compression side is held.</param>
public sealed record Member(Section? Section, Material? Material, LateralSupport? Lateral);
