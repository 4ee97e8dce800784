using System.Collections.Immutable;
using static FieldCheck.Mechanics.Model.AreaPart;

namespace FieldCheck.Mechanics.Model;

/// <summary>Lays a shape out in pieces, upright and on its side.</summary>
internal static class ShapeAreas
{
    internal static PlaneArea Rectangle(double breadth, double height) => new(Middle(breadth, height));

    internal static PlaneArea Upright(SectionShape.I shape)
    {
        double flange = shape.Depth / 2;
        double clear = flange - shape.FlangeThickness;
        ImmutableArray<AreaPart> plates =
        [
            new Strip(shape.FlangeWidth, clear, flange),
            new Strip(shape.FlangeWidth, -flange, -clear),
            new Strip(shape.WebThickness, -clear, clear),
        ];
        return new([.. plates, .. CornersBelow(clear, shape.RootRadius)]);
    }

    internal static PlaneArea Flat(SectionShape.I shape)
    {
        double clear = shape.Depth - 2 * shape.FlangeThickness;
        double web = shape.WebThickness / 2;
        ImmutableArray<AreaPart> plates =
        [
            Middle(2 * shape.FlangeThickness, shape.FlangeWidth),
            Middle(clear, shape.WebThickness),
        ];
        return new([.. plates, .. CornersAbove(web, shape.RootRadius)]);
    }

    internal static PlaneArea Upright(SectionShape.Channel shape)
    {
        double edge = shape.Depth / 2;
        double tip = edge - TipThickness(shape);
        double root = edge - RootThickness(shape);
        ImmutableArray<AreaPart> tapers = tip == root
            ? []
            :
            [
                new Taper(shape.WebThickness, shape.FlangeWidth, root, tip),
                new Taper(shape.FlangeWidth, shape.WebThickness, -tip, -root),
            ];
        return new(
        [
            new Strip(shape.FlangeWidth, tip, edge),
            new Strip(shape.FlangeWidth, -edge, -tip),
            new Strip(shape.WebThickness, -root, root),
            .. tapers,
        ]);
    }

    /// <summary>On its side, heights from the back of the web.</summary>
    internal static PlaneArea Flat(SectionShape.Channel shape) => shape.FlangeWidth == shape.WebThickness
        ? new(new Strip(shape.Depth, 0, shape.WebThickness))
        : new(
            new Strip(shape.Depth, 0, shape.WebThickness),
            new Taper(2 * RootThickness(shape), 2 * TipThickness(shape), shape.WebThickness, shape.FlangeWidth));

    /// <summary>Thickness of a channel's flange at its edge.</summary>
    internal static double TipThickness(SectionShape.Channel shape) => shape.FlangeThickness - Change(shape);

    /// <summary>Thickness of a channel's flange at its web.</summary>
    internal static double RootThickness(SectionShape.Channel shape) => shape.FlangeThickness + Change(shape);

    private static double Change(SectionShape.Channel shape) =>
        shape.FlangeSlope * (shape.FlangeWidth - shape.WebThickness) / 2;

    internal static PlaneArea Tube(double breadth, double height, SectionShape.RectangularTube shape)
    {
        double wall = 2 * shape.Wall;
        return new(
        [
            Middle(breadth, height),
            .. CornersBelow(height / 2, shape.OuterRadius, -1),
            Middle(breadth - wall, height - wall, -1),
            .. CornersBelow((height - wall) / 2, shape.InnerRadius),
        ]);
    }

    /// <summary>What two rounded corners leave of their squares, below a level and above its mirror image.</summary>
    private static ImmutableArray<AreaPart> CornersBelow(double level, double radius, int sign = 1)
    {
        double centre = level - radius;
        return radius == 0
            ? []
            :
            [
                new Strip(2 * radius, centre, level, sign),
                new HalfDisc(radius, centre, IsUpper: true, -sign),
                new Strip(2 * radius, -level, -centre, sign),
                new HalfDisc(radius, -centre, IsUpper: false, -sign),
            ];
    }

    /// <summary>The same above a level and below its mirror image.</summary>
    private static ImmutableArray<AreaPart> CornersAbove(double level, double radius)
    {
        double centre = level + radius;
        return radius == 0
            ? []
            :
            [
                new Strip(2 * radius, level, centre),
                new HalfDisc(radius, centre, IsUpper: false, -1),
                new Strip(2 * radius, -centre, -level),
                new HalfDisc(radius, -centre, IsUpper: true, -1),
            ];
    }

    private static Strip Middle(double breadth, double height, int sign = 1) =>
        new(breadth, -height / 2, height / 2, sign);
}
