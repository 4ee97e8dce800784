using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Strength;

/// <summary>The sizes of a section by the signs that <see cref="FormulaWords"/> uses, as the section is bent.</summary>
public static class SectionSizes
{
    /// <summary>The sizes in metres; none of a solid section, whose sizes are among the numbers of its checks.</summary>
    /// <param name="section">The section.</param>
    public static ImmutableArray<(string Sign, double Metres)> Of(Section section)
    {
        ArgumentNullException.ThrowIfNull(section);
        return section.Shape switch
        {
            SectionShape.I shape => OfFlanged(
                shape.FlangeWidth, shape.FlangeThickness, shape.WebThickness, shape.Depth,
                shape.FilletDepth ?? shape.FlangeThickness + shape.RootRadius).Add(("r", shape.RootRadius)),
            SectionShape.Channel shape => OfFlanged(
                shape.FlangeWidth, shape.FlangeThickness, shape.WebThickness, shape.Depth,
                shape.FilletDepth ?? shape.FlangeThickness),
            SectionShape.RectangularTube shape =>
            [
                ("b", section.IsFlat ? shape.Depth : shape.Width), ("d", section.IsFlat ? shape.Width : shape.Depth),
                ("t", shape.Wall), ("r", shape.InnerRadius),
            ],
            _ => [],
        };
    }

    private static ImmutableArray<(string Sign, double Metres)> OfFlanged(
        double width, double flange, double web, double depth, double fillet) =>
        [("bf", width), ("tf", flange), ("tw", web), ("d", depth), ("hw", depth - 2 * flange), ("k", fillet)];
}
