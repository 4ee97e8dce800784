using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Figures and stresses of a printed section.</summary>
internal static class PublishedSection
{
    /// <summary>Key words that <see cref="Computed"/> understands.</summary>
    internal static readonly string[] Words =
    [
        "area", "ybar", "I", "S", "Q_neutral_axis", "Q_above", "shear_stress", "shear_stress_max",
        "bending_stress_top", "bending_stress_bottom", "shear_form_factor",
    ];

    internal static double Computed(PublishedCase example, PublishedValue value)
    {
        PlaneArea area = AreaOf(example);
        return value.What switch
        {
            "area" => area.Area,
            "ybar" => area.Centroid - area.Bottom,
            "I" => area.SecondMoment,
            "S" => area.SectionModulus,
            "Q_neutral_axis" => area.FirstMomentAbove(area.Centroid),
            "Q_above" => area.FirstMomentAbove(value.Cut!.Value),
            "shear_stress" => ShearStress(area, value),
            "shear_stress_max" => value.Shear!.Value / PeakShear.AreaOf(area),
            "bending_stress_top" => -value.Moment!.Value * (area.Top - area.Centroid) / area.SecondMoment,
            "bending_stress_bottom" => value.Moment!.Value * (area.Centroid - area.Bottom) / area.SecondMoment,
            "shear_form_factor" => FormFactor(example),
            string other => throw new InvalidDataException($"Unknown quantity {other}."),
        };
    }

    /// <summary>The shape of the program that it is; null where there is none.</summary>
    internal static SectionShape? ShapeOf(PublishedCase example) => (example.Tube, example.Plates) switch
    {
        ((double diameter, 0), _) => new SectionShape.Round(diameter),
        ((double diameter, double bore), _) => new SectionShape.RoundTube(diameter, (diameter - bore) / 2),
        (_, [var plate]) => new SectionShape.Rectangle(plate.Breadth, plate.Height),
        (_, [var lower, var web, var upper]) when (lower.Breadth, lower.Height) == (upper.Breadth, upper.Height) =>
            new SectionShape.I(lower.Breadth, lower.Height, web.Breadth, web.Height + 2 * lower.Height),
        _ => null,
    };

    private static PlaneArea AreaOf(PublishedCase example)
    {
        if (example.Tube is (double diameter, double bore))
        {
            return bore == 0
                ? new([Half(diameter, true, 1), Half(diameter, false, 1)])
                : new([Half(diameter, true, 1), Half(diameter, false, 1), Half(bore, true, -1), Half(bore, false, -1)]);
        }

        return new([.. example.Plates.Select(plate => new AreaPart.Strip(
            plate.Breadth, plate.Middle - plate.Height / 2, plate.Middle + plate.Height / 2))]);
    }

    private static AreaPart.HalfDisc Half(double diameter, bool isUpper, int sign) =>
        new(diameter / 2, 0, isUpper, sign);

    // The width that the source takes is that of one side of the cut; both are at hand.
    private static double ShearStress(PlaneArea area, PublishedValue value)
    {
        double cut = value.Cut!.Value;
        double[] widths = [area.Width(cut, above: true), area.Width(cut, above: false)];
        Assert.Contains(value.Thickness!.Value, widths);
        return value.Shear!.Value * area.FirstMomentAbove(cut) / (area.SecondMoment * value.Thickness.Value);
    }

    private static double FormFactor(PublishedCase example)
    {
        Section section = Section.Of(ShapeOf(example)!);
        return section.Area!.Value / section.ShearArea!.Value;
    }
}
