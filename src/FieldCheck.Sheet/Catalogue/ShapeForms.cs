using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>The outlines that a shape of the catalogue can have, and the sizes that make each.</summary>
internal static class ShapeForms
{
    /// <summary>The form of a shape whose outline is not known.</summary>
    internal const string Figures = "figures";

    private static readonly double Diagonal = Math.Sqrt(2);

    private static readonly ImmutableArray<ShapeForm> Known =
    [
        new("I", ["depth", "flange_width", "web_thickness", "flange_thickness"],
            ["root_radius", "flange_to_fillet_foot"], I),
        new("channel", ["depth", "flange_width", "web_thickness", "flange_thickness"],
            ["flange_slope", "flange_to_fillet_foot"], Channel),
        new("rectangle", ["depth", "width"], [], row => new SectionShape.Rectangle(Size(row, "width"), Size(row, "depth"))),
        new("rectangular tube", ["depth", "width", "wall"],
            ["nominal_wall", "outer_radius", "inner_radius"], RectangularTube),
        new("round tube", ["diameter", "wall"], ["nominal_wall"], RoundTube),
        new("round bar", ["diameter"], [], row => new SectionShape.Round(Size(row, "diameter"))),
        new(Figures, ["inertia"], ["depth"], _ => null),
    ];

    /// <summary>The words for them, as a file has them.</summary>
    internal static IEnumerable<string> Words => Known.Select(form => form.Word);

    /// <summary>The form of a word; null for another.</summary>
    internal static ShapeForm? Of(string? word) => Known.FirstOrDefault(form => form.Word == word);

    private static SectionShape.I? I(Row row)
    {
        (double depth, double width) = (Size(row, "depth"), Size(row, "flange_width"));
        (double web, double flange) = (Size(row, "web_thickness"), Size(row, "flange_thickness"));
        double? foot = row.Value("flange_to_fillet_foot");
        double radius = row.Value("root_radius") ?? foot - flange ?? 0;
        return HasWeb(row, depth, width, web, flange)
            && Holds(row, radius < 0, "flange_to_fillet_foot", CatalogueText.FootInFlange)
            && Holds(row, flange + radius > depth / 2 || web / 2 + radius > width / 2,
                row.Has("root_radius") ? "root_radius" : "flange_to_fillet_foot", CatalogueText.FilletTooLarge)
            ? new SectionShape.I(width, flange, web, depth, radius, row.Has("root_radius") || foot is not null)
            {
                FilletDepth = foot,
            }
            : null;
    }

    private static SectionShape.Channel? Channel(Row row)
    {
        (double depth, double width) = (Size(row, "depth"), Size(row, "flange_width"));
        (double web, double flange) = (Size(row, "web_thickness"), Size(row, "flange_thickness"));
        double? foot = row.Value("flange_to_fillet_foot");
        double slope = row.Value("flange_slope") ?? 0;
        double growth = slope * (width - web) / 2;
        return HasWeb(row, depth, width, web, flange)
            && Holds(row, foot < flange, "flange_to_fillet_foot", CatalogueText.FootInFlange)
            && Holds(row, foot > depth / 2, "flange_to_fillet_foot", CatalogueText.FilletTooLarge)
            && Holds(row, growth >= Math.Min(flange, depth / 2 - flange), "flange_slope", CatalogueText.TooSteep)
            ? new SectionShape.Channel(width, flange, web, depth) { FilletDepth = foot, FlangeSlope = slope }
            : null;
    }

    private static SectionShape.RectangularTube? RectangularTube(Row row)
    {
        (double depth, double width, double wall) = (Size(row, "depth"), Size(row, "width"), Size(row, "wall"));
        double least = Math.Min(depth, width);
        double outer = row.Value("outer_radius") ?? 0;
        double inner = row.Value("inner_radius") ?? Math.Max(0, outer - wall);
        return Holds(row, 2 * wall >= least, "wall", CatalogueText.NoHollow)
            && Holds(row, 2 * outer > least, "outer_radius", CatalogueText.CornerTooLarge)
            && Holds(row, 2 * (wall + inner) > least, "inner_radius", CatalogueText.CornerTooLarge)
            && Holds(row, wall * Diagonal <= (outer - inner) * (Diagonal - 1), "outer_radius", CatalogueText.NoCorner)
            ? new SectionShape.RectangularTube(width, depth, wall, outer, inner)
            : null;
    }

    private static SectionShape.RoundTube? RoundTube(Row row)
    {
        (double diameter, double wall) = (Size(row, "diameter"), Size(row, "wall"));
        return Holds(row, 2 * wall >= diameter, "wall", ProblemText.WallTooThick)
            ? new SectionShape.RoundTube(diameter, wall)
            : null;
    }

    private static bool HasWeb(Row row, double depth, double width, double web, double flange) =>
        Holds(row, 2 * flange >= depth, "flange_thickness", ProblemText.FlangesTooThick)
        && Holds(row, web >= width, "web_thickness", ProblemText.WebTooThick);

    private static double Size(Row row, string key) => row.Value(key)!.Value;

    /// <returns>False where it was refused.</returns>
    private static bool Holds(Row row, bool isWrong, string key, string text)
    {
        if (isWrong)
        {
            row.Refuse(key, text);
        }

        return !isWrong;
    }
}
