namespace FieldCheck.Mechanics.Model;

/// <summary>Torsion and warping constants of shapes. Open sections are counted low rather than high.</summary>
internal static class Torsion
{
    /// <summary>Torsion constant of a solid rectangle [m⁴], by Saint-Venant's series to rounding [timoshenko-goodier-1970].</summary>
    internal static double Rectangle(double one, double other)
    {
        (double thin, double wide) = one < other ? (one, other) : (other, one);

        // The sum over odd n of tanh(n·pi·wide / (2 thin)) / n^5, as the sum of 1 / n^5 and what it lacks.
        double sum = 31.0 / 32 * 1.0369277551433699263;
        for (int n = 1; n <= 13; n += 2)
        {
            sum -= 2 / (Math.Exp(n * Math.PI * wide / thin) + 1) / Math.Pow(n, 5);
        }

        return wide * Math.Pow(thin, 3) / 3 * (1 - 192 / Math.Pow(Math.PI, 5) * thin / wide * sum);
    }

    /// <summary>Of an I section [m⁴]: of its plates apart, or with its fillets [el-darwish-johnston-1965].</summary>
    internal static double Constant(SectionShape.I shape)
    {
        double apart = Apart(shape.FlangeWidth, shape.FlangeThickness, shape.WebThickness, shape.Depth);
        double web = shape.WebThickness / shape.FlangeThickness;
        double radius = shape.RootRadius / shape.FlangeThickness;

        // The fit is to rolled sections; of thicker plates or other fillets it says too much.
        bool isLikeRolled = radius is > 0 and <= 2
            && web <= 1
            && shape.FlangeWidth >= 3 * shape.FlangeThickness
            && shape.Depth >= 4 * shape.FlangeThickness;
        return isLikeRolled ? Math.Max(apart, WithFillets(shape, web, radius)) : apart;
    }

    /// <summary>Of a channel [m⁴]: of its plates apart.</summary>
    internal static double Constant(SectionShape.Channel shape) =>
        Apart(shape.FlangeWidth, shape.FlangeThickness, shape.WebThickness, shape.Depth);

    /// <summary>Of a rectangular tube [m⁴]: Bredt's of its middle line, with what the wall itself adds [en-10210-2].</summary>
    internal static double Constant(SectionShape.RectangularTube shape)
    {
        double radius = (shape.OuterRadius + shape.InnerRadius) / 2;
        double width = shape.Width - shape.Wall;
        double depth = shape.Depth - shape.Wall;
        double length = 2 * (width + depth) - 2 * (4 - Math.PI) * radius;
        double enclosed = width * depth - (4 - Math.PI) * radius * radius;
        return 4 * enclosed * enclosed * shape.Wall / length + length * Math.Pow(shape.Wall, 3) / 3;
    }

    /// <summary>Warping constant of an I section [m⁶]: of its flanges, which bend sideways against each other.</summary>
    internal static double Warping(SectionShape.I shape)
    {
        double apart = shape.Depth - shape.FlangeThickness;
        return shape.FlangeThickness * Math.Pow(shape.FlangeWidth, 3) * apart * apart / 24;
    }

    /// <summary>Of a channel [m⁶], by its middle lines [galambos-1968].</summary>
    internal static double Warping(SectionShape.Channel shape)
    {
        double height = shape.Depth - shape.FlangeThickness;
        double width = shape.FlangeWidth - shape.WebThickness / 2;
        double web = height * shape.WebThickness;
        double flange = width * shape.FlangeThickness;
        return flange * width * width * height * height / 12 * (3 * flange + 2 * web) / (6 * flange + web);
    }

    // Parts of a section, each twisting by itself, are never stiffer than the whole.
    private static double Apart(double flangeWidth, double flangeThickness, double webThickness, double depth) =>
        2 * Rectangle(flangeWidth, flangeThickness) + Rectangle(depth - 2 * flangeThickness, webThickness);

    private static double WithFillets(SectionShape.I shape, double web, double radius)
    {
        double flange = Math.Pow(shape.FlangeThickness, 4);
        double clear = shape.Depth - 2 * shape.FlangeThickness;
        double plates = 2.0 / 3 * shape.FlangeWidth * Math.Pow(shape.FlangeThickness, 3)
            + clear * Math.Pow(shape.WebThickness, 3) / 3;
        double factor = -0.042 + 0.2204 * web + 0.1355 * radius - 0.0865 * radius * web - 0.0725 * web * web;
        double disc = ((1 + radius) * (1 + radius) + web * (radius + web / 4)) / (2 * radius + 1);
        return plates + (2 * factor * Math.Pow(disc, 4) - 0.42) * flange;
    }
}
