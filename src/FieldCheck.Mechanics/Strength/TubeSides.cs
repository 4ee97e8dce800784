using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Sides of a rectangular tube, as it is bent.</summary>
/// <param name="Width">Over all, across the load [m].</param>
/// <param name="Depth">Over all, in the direction of the load [m].</param>
/// <param name="Wall">Thickness of the wall [m].</param>
/// <param name="InnerRadius">Inner radius of the corners [m].</param>
internal readonly record struct TubeSides(double Width, double Depth, double Wall, double InnerRadius)
{
    /// <summary>Slenderness of the wall that is pressed, b/t.</summary>
    internal double FlangeSlenderness => FlatPart(Width) / Wall;

    /// <summary>Slenderness of the walls beside it, h/t.</summary>
    internal double WebSlenderness => FlatPart(Depth) / Wall;

    /// <summary>Height of the flat part of the walls that carry the shear [m].</summary>
    internal double ShearHeight => Depth - 2 * Wall - 2 * InnerRadius;

    internal static TubeSides Of(SectionShape.RectangularTube tube, bool isFlat) => isFlat
        ? new TubeSides(tube.Depth, tube.Width, tube.Wall, tube.InnerRadius)
        : new TubeSides(tube.Width, tube.Depth, tube.Wall, tube.InnerRadius);

    /// <summary>Corners may be sharper than their nominal radius, so no more than half a wall is taken off for one.</summary>
    private double FlatPart(double side) => side - 2 * Wall - 2 * Math.Min(InnerRadius, Wall / 2);
}
