using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Sides of one ply of a solid rectangle, as it is bent.</summary>
/// <param name="Width">Across the load [m].</param>
/// <param name="Depth">In the direction of the load [m].</param>
internal readonly record struct BarSides(double Width, double Depth)
{
    internal static BarSides Of(SectionShape.Rectangle bar, bool isFlat) =>
        isFlat ? new BarSides(bar.Depth, bar.Width) : new BarSides(bar.Width, bar.Depth);
}
