namespace FieldCheck.Mechanics.Response;

/// <summary>What one support does to the beam.</summary>
/// <param name="Horizontal">Force along the beam [N], positive to the right.</param>
/// <param name="Vertical">Force across the beam [N], positive up.</param>
/// <param name="Moment">Moment [N·m], positive counter-clockwise.</param>
/// <param name="Normal">
/// On a sloped surface, the push normal to it [N], positive from the surface into the beam; else null.
/// </param>
/// <param name="IsLiftedOff">True: the support has let go and gives nothing.</param>
public sealed record Reaction(double Horizontal, double Vertical, double Moment, double? Normal, bool IsLiftedOff);
