namespace FieldCheck.Mechanics.Strength;

/// <summary>The greatest actions on one member over all situations of one basis, none of them less than zero.</summary>
/// <param name="Sagging">Greatest sagging moment [N·m].</param>
/// <param name="Hogging">Greatest hogging moment, as a size [N·m].</param>
/// <param name="Shear">Greatest shear, as a size [N].</param>
/// <param name="Tension">Greatest tension [N].</param>
/// <param name="Compression">Greatest compression, as a size [N].</param>
internal sealed record MemberActions(
    double Sagging, double Hogging, double Shear, double Tension, double Compression);
