using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Catalogue;

/// <summary>
/// Properties of a shape worked out from its published sizes, each in a way of its own: here by adding and taking away
/// rectangles and quarter circles.
/// </summary>
internal sealed record SizeProperties(
    double Area, double Inertia, double Modulus, double WeakInertia, double? PlasticModulus = null)
{
    internal static SizeProperties Of(ShippedTable table) => table.Text("form") switch
    {
        "I" => OfI(table),
        "channel" => OfChannel(table),
        "rectangle" => OfRectangle(table.Length("width"), table.Length("depth")),
        "rectangular tube" => OfTube(
            table.Length("width"), table.Length("depth"), table.Length("wall"),
            table.Length("outer_radius"), table.Length("inner_radius")),
        "round tube" => OfRoundTube(table.Length("diameter"), table.Length("wall")),
        string other => throw new InvalidDataException(other),
    };

    /// <summary>The area that the published weight belongs to: of tubes that of the nominal wall.</summary>
    internal static double WeighedArea(ShippedTable table)
    {
        if (!table.Cells.ContainsKey("nominal_wall"))
        {
            return table.Value("area", QuantityKind.Area) ?? Of(table).Area;
        }

        double wall = table.Length("nominal_wall");
        return table.Text("form") == "round tube"
            ? OfRoundTube(table.Length("diameter"), wall).Area
            : OfTube(table.Length("width"), table.Length("depth"), wall, 2 * wall, wall).Area;
    }

    private static SizeProperties OfRectangle(double width, double depth) => new(
        width * depth,
        width * Math.Pow(depth, 3) / 12,
        width * depth * depth / 6,
        depth * Math.Pow(width, 3) / 12,
        width * depth * depth / 4);

    private static SizeProperties OfRoundTube(double outer, double wall)
    {
        double bore = outer - 2 * wall;
        double inertia = Math.PI / 64 * (Math.Pow(outer, 4) - Math.Pow(bore, 4));
        return new(
            Math.PI / 4 * (outer * outer - bore * bore),
            inertia,
            inertia / (outer / 2),
            inertia,
            (Math.Pow(outer, 3) - Math.Pow(bore, 3)) / 6);
    }

    private static SizeProperties OfTube(double width, double depth, double wall, double outer, double inner)
    {
        SizeProperties whole = Rounded(width, depth, outer);
        SizeProperties hole = Rounded(width - 2 * wall, depth - 2 * wall, inner);
        double inertia = whole.Inertia - hole.Inertia;
        return new(whole.Area - hole.Area, inertia, inertia / (depth / 2), whole.WeakInertia - hole.WeakInertia);
    }

    /// <summary>A rectangle less what its four rounded corners lack.</summary>
    private static SizeProperties Rounded(double width, double depth, double radius)
    {
        (double area, double own, double centroid) = Fillet(radius);
        return new(
            width * depth - 4 * area,
            width * Math.Pow(depth, 3) / 12 - 4 * (own + area * Math.Pow(depth / 2 - centroid, 2)),
            0,
            depth * Math.Pow(width, 3) / 12 - 4 * (own + area * Math.Pow(width / 2 - centroid, 2)));
    }

    /// <summary>
    /// Three rectangles, and for the weak axis the taper of the flanges, 1 in 6 about the middle of what stands out of the
    /// web (ASTM A6, from memory); fillets and rounded toes are left out.
    /// </summary>
    private static SizeProperties OfChannel(ShippedTable table)
    {
        (double b, double d) = (table.Length("flange_width"), table.Length("depth"));
        (double tf, double tw) = (table.Length("flange_thickness"), table.Length("web_thickness"));
        double h = d - 2 * tf;
        double area = 2 * b * tf + h * tw;
        double inertia = (b * Math.Pow(d, 3) - (b - tw) * Math.Pow(h, 3)) / 12;
        double taper = Math.Pow(b - tw, 3) / 36;
        double centroid = CentroidOfChannel(table);
        double weak = 2 * tf * Math.Pow(b, 3) / 3 + h * Math.Pow(tw, 3) / 3 - taper * (b + tw) - area * centroid * centroid;
        return new(area, inertia, inertia / (d / 2), weak);
    }

    /// <summary>From the back of the web to the centroid, flanges sloping 1 in 6.</summary>
    internal static double CentroidOfChannel(ShippedTable table)
    {
        (double b, double d) = (table.Length("flange_width"), table.Length("depth"));
        (double tf, double tw) = (table.Length("flange_thickness"), table.Length("web_thickness"));
        double h = d - 2 * tf;
        double area = 2 * b * tf + h * tw;
        return (2 * b * tf * b / 2 + h * tw * tw / 2 - Math.Pow(b - tw, 3) / 36) / area;
    }

    /// <summary>Three rectangles and four fillets.</summary>
    private static SizeProperties OfI(ShippedTable table)
    {
        (double b, double d) = (table.Length("flange_width"), table.Length("depth"));
        (double tf, double tw) = (table.Length("flange_thickness"), table.Length("web_thickness"));
        double r = table.Cells.ContainsKey("root_radius")
            ? table.Length("root_radius")
            : table.Length("flange_to_fillet_foot") - tf;
        double h = d - 2 * tf;
        (double fillet, double own, double centroid) = Fillet(r);
        double inertia = (b * Math.Pow(d, 3) - (b - tw) * Math.Pow(h, 3)) / 12
            + 4 * (own + fillet * Math.Pow(h / 2 - centroid, 2));
        double weak = 2 * tf * Math.Pow(b, 3) / 12 + h * Math.Pow(tw, 3) / 12
            + 4 * (own + fillet * Math.Pow(tw / 2 + centroid, 2));
        double plastic = b * tf * (d - tf) + tw * h * h / 4 + 4 * fillet * (h / 2 - centroid);
        return new(2 * b * tf + h * tw + 4 * fillet, inertia, inertia / (d / 2), weak, plastic);
    }

    /// <summary>A square of side r less the quarter circle in it: area, own inertia, centroid from its straight edges.</summary>
    private static (double Area, double Inertia, double Centroid) Fillet(double r)
    {
        if (r == 0)
        {
            return default;
        }

        // Quarter circle about its own straight edge: pi r^4 / 16; its centroid lies 4 r / 3 pi from that edge.
        double quarter = Math.PI * r * r / 4;
        double arm = 4 * r / (3 * Math.PI);
        double quarterOwn = Math.PI * Math.Pow(r, 4) / 16 - quarter * arm * arm;
        double area = r * r - quarter;
        double centroid = (r * r * r / 2 - quarter * (r - arm)) / area;
        double own = Math.Pow(r, 4) / 3 - quarterOwn - quarter * Math.Pow(r - arm, 2) - area * centroid * centroid;
        return (area, own, centroid);
    }
}
