namespace FieldCheck.Mechanics.Model;

/// <summary>All figures of a shape. Areas, inertias and moduli are exact, fillets and corners counted.</summary>
internal static class SectionFigures
{
    internal static Section Of(SectionShape shape, bool flat) => shape switch
    {
        SectionShape.Rectangle one => flat
            ? Rectangle(one.Depth, one.Width, one.Plies)
            : Rectangle(one.Width, one.Depth, one.Plies),
        SectionShape.Round one => RoundTube(one.Diameter, 0, one.Diameter / 2) with
        {
            ShearArea = Math.PI / 4 * one.Diameter * one.Diameter * 9 / 10,
        },
        SectionShape.RoundTube one => RoundTube(one.Diameter, one.Diameter - 2 * one.Wall, one.Wall),
        SectionShape.RectangularTube one => flat ? Tube(one.Depth, one.Width, one) : Tube(one.Width, one.Depth, one),
        SectionShape.I one => Open(ShapeAreas.Upright(one), ShapeAreas.Flat(one), one, flat),
        SectionShape.Channel one =>
            Open(ShapeAreas.Upright(one), ShapeAreas.Flat(one), AsI(one), flat) with
            {
                TorsionConstant = Torsion.Constant(one),
                WarpingConstant = Torsion.Warping(one),
            },
        _ => throw new ArgumentException("Unknown shape.", nameof(shape)),
    };

    internal static void Check(SectionShape shape)
    {
        switch (shape)
        {
            case SectionShape.Rectangle one:
                Require.Positive(one.Width);
                Require.Positive(one.Depth);
                Require.Positive(one.Plies);
                break;
            case SectionShape.Round one:
                Require.Positive(one.Diameter);
                break;
            case SectionShape.RoundTube one:
                Require.Positive(one.Wall);
                Require.Positive(one.Diameter - 2 * one.Wall);
                break;
            case SectionShape.RectangularTube one:
                CheckTube(one);
                break;
            case SectionShape.I one:
                CheckOpen(one);
                break;
            case SectionShape.Channel one:
                CheckOpen(AsI(one));
                Require.NotNegative(one.FlangeSlope);
                Require.Positive(ShapeAreas.TipThickness(one));
                Require.Positive(one.Depth / 2 - ShapeAreas.RootThickness(one));
                break;
        }
    }

    private static SectionShape.I AsI(SectionShape.Channel shape) =>
        new(shape.FlangeWidth, shape.FlangeThickness, shape.WebThickness, shape.Depth);

    private static void CheckOpen(SectionShape.I shape)
    {
        Require.Positive(shape.FlangeThickness);
        Require.Positive(shape.WebThickness);
        Require.NotNegative(shape.RootRadius);
        double clear = Require.Positive(shape.Depth - 2 * shape.FlangeThickness);
        Require.NotNegative(clear - 2 * shape.RootRadius);
        Require.NotNegative(shape.FlangeWidth - shape.WebThickness - 2 * shape.RootRadius);
    }

    private static void CheckTube(SectionShape.RectangularTube shape)
    {
        double least = Require.Positive(Math.Min(shape.Width, shape.Depth));
        Require.Positive(shape.Wall);
        Require.NotNegative(shape.OuterRadius);
        Require.NotNegative(shape.InnerRadius);
        Require.Positive(least - 2 * shape.Wall);
        Require.NotNegative(least - 2 * shape.OuterRadius);
        Require.NotNegative(least - 2 * (shape.Wall + shape.InnerRadius));

        // Along the diagonal of a corner some wall is left.
        Require.Positive(shape.Wall * Math.Sqrt(2) + (shape.InnerRadius - shape.OuterRadius) * (Math.Sqrt(2) - 1));
    }

    private static Section Rectangle(double width, double depth, int plies)
    {
        double area = plies * width * depth;
        return new()
        {
            Area = area,
            Inertia = area * depth * depth / 12,
            SectionModulus = area * depth / 6,
            Depth = depth,
            ShearArea = area * 5 / 6,
            PlasticModulus = area * depth / 4,
            PeakShearArea = area * 2 / 3,
            LateralInertia = area * width * width / 12,
            TorsionConstant = plies * Torsion.Rectangle(width, depth),
            WarpingConstant = 0,
        };
    }

    private static Section RoundTube(double diameter, double bore, double wall)
    {
        double area = Math.PI * wall * (diameter - wall);
        double inertia = area * (diameter * diameter + bore * bore) / 16;
        double moment = wall * (diameter * diameter + diameter * bore + bore * bore) / 6;
        return new()
        {
            Area = area,
            Inertia = inertia,
            SectionModulus = inertia / (diameter / 2),
            Depth = diameter,
            ShearArea = area / 2,
            PlasticModulus = 2 * moment,
            PeakShearArea = inertia * 2 * wall / moment,
            LateralInertia = inertia,
            TorsionConstant = 2 * inertia,
            WarpingConstant = 0,
        };
    }

    private static Section Tube(double width, double depth, SectionShape.RectangularTube shape) =>
        Bent(ShapeAreas.Tube(width, depth, shape), ShapeAreas.Tube(depth, width, shape), depth) with
        {
            ShearArea = 2 * shape.Wall * depth,
            TorsionConstant = Torsion.Constant(shape),
            WarpingConstant = 0,
        };

    private static Section Open(PlaneArea upright, PlaneArea onSide, SectionShape.I plates, bool flat) =>
        (flat ? Bent(onSide, upright, plates.FlangeWidth) : Bent(upright, onSide, plates.Depth)) with
        {
            ShearArea = flat
                ? 2 * plates.FlangeWidth * plates.FlangeThickness * 5 / 6
                : plates.Depth * plates.WebThickness,
            TorsionConstant = Torsion.Constant(plates),
            WarpingConstant = Torsion.Warping(plates),
        };

    private static Section Bent(PlaneArea area, PlaneArea turned, double depth) => new()
    {
        Area = area.Area,
        Inertia = area.SecondMoment,
        SectionModulus = area.SectionModulus,
        Depth = depth,
        PlasticModulus = area.PlasticModulus,
        PeakShearArea = PeakShear.AreaOf(area),
        LateralInertia = turned.SecondMoment,
    };
}
