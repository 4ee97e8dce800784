namespace FieldCheck.Mechanics.Response;

/// <summary>The state just inside one end of a piece.</summary>
/// <param name="Axial">N [N], tension.</param>
/// <param name="Shear">V [N].</param>
/// <param name="Moment">M [N·m], sagging.</param>
/// <param name="Turn">
/// Turn of the section [rad], counter-clockwise; the slope of the line but for the flexibility in shear.
/// </param>
/// <param name="Rise">Movement up [m].</param>
internal readonly record struct PieceEnd(double Axial, double Shear, double Moment, double Turn, double Rise);
