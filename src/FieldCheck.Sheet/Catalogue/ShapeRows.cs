using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>Reads a shape of a catalogue file.</summary>
internal static class ShapeRows
{
    private static readonly string[] Published =
    [
        "area", "inertia", "section_modulus", "plastic_modulus", "shear_area", "weak_inertia", "weak_section_modulus",
        "torsion_constant", "weight",
    ];

    // Five figures, the last one off by a half.
    private const double Rounding = 1.0005;

    private static readonly string[] Always = [CatalogueContent.Family, "form", "source", "status"];

    /// <summary>The shape.</summary>
    /// <param name="row">Its cells.</param>
    /// <param name="name">Its name.</param>
    /// <param name="family">Its family where it names none.</param>
    /// <returns>The shape; null where it cannot be used, which has been told.</returns>
    internal static CatalogueShape? Read(Row row, string name, string family)
    {
        if (row.Text("source") is null)
        {
            row.Refuse("", CatalogueText.NoSource);
        }

        foreach (string key in Published)
        {
            row.Positive(key);
        }

        if (ShapeForms.Of(row.Text("form")) is not ShapeForm form)
        {
            if (!row.Has("form"))
            {
                row.Refuse("", CatalogueText.NoForm);
            }

            return null;
        }

        row.TakesOnly([.. form.Sizes, .. form.More, .. Published.Except(form.Sizes), .. Always], $"form \"{form.Word}\"");
        return HasSizes(row, form) && Sections(row, form) is var (upright, flat)
            ? new CatalogueShape(name, upright, flat, row.Text("source") ?? "", row.Text("status") ?? CatalogueText.Own)
            {
                Family = row.Text(CatalogueContent.Family) ?? family,
            }
            : null;
    }

    private static bool HasSizes(Row row, ShapeForm form)
    {
        bool areSound = true;
        foreach (string key in form.Sizes)
        {
            areSound &= row.NeededPositive(key, CatalogueText.Needs(form.Word, key)) is not null;
        }

        foreach (string key in form.More)
        {
            areSound &= !row.Has(key) || row.NotNegative(key) is not null;
        }

        return areSound;
    }

    private static (Section Upright, Section? Flat)? Sections(Row row, ShapeForm form)
    {
        if (form.Word == ShapeForms.Figures)
        {
            return (Upright(row, new Section()), row.Has("weak_inertia") ? Flat(row, new Section()) : null);
        }

        if (form.Outline(row) is not SectionShape shape)
        {
            return null;
        }

        (Section upright, Section flat) = (Section.Of(shape), Section.Of(shape, flat: true));
        return !AgreesWith(row, upright, flat, form.IsExact) ? null
            : form.IsExact ? (Weighing(row, upright), Weighing(row, flat))
            : upright.Inertia == flat.Inertia && !row.Has("weak_inertia") ? (Upright(row, upright), AsUpright(row, upright))
            : (Upright(row, upright), Flat(row, flat));
    }

    /// <summary>Published figures in place of those of the outline; what hangs on them goes with them.</summary>
    private static Section Upright(Row row, Section outline) => outline with
    {
        Area = row.Value("area") ?? outline.Area,
        Inertia = row.Value("inertia") ?? outline.Inertia,
        SectionModulus = row.Value("section_modulus") ?? Scaled(outline.SectionModulus, row.Value("inertia"), outline.Inertia),
        Depth = outline.Depth ?? row.Value("depth"),
        PlasticModulus = row.Value("plastic_modulus") ?? outline.PlasticModulus,
        ShearArea = row.Value("shear_area") ?? outline.ShearArea,
        LateralInertia = row.Value("weak_inertia") ?? LateralOf(row, outline),
        TorsionConstant = row.Value("torsion_constant") ?? outline.TorsionConstant,
        WarpingConstant = Scaled(outline.WarpingConstant, row.Value("weak_inertia"), outline.LateralInertia),
        WeightPerLength = row.Value("weight"),
    };

    private static double? LateralOf(Row row, Section outline) =>
        outline.LateralInertia == outline.Inertia ? row.Value("inertia") ?? outline.Inertia : outline.LateralInertia;

    private static Section Flat(Row row, Section outline) => outline with
    {
        Area = row.Value("area") ?? outline.Area,
        Inertia = row.Value("weak_inertia") ?? outline.Inertia,
        SectionModulus = row.Value("weak_section_modulus")
            ?? Scaled(outline.SectionModulus, row.Value("weak_inertia"), outline.Inertia),
        LateralInertia = row.Value("inertia") ?? outline.LateralInertia,
        TorsionConstant = row.Value("torsion_constant") ?? outline.TorsionConstant,
        WarpingConstant = Scaled(outline.WarpingConstant, row.Value("weak_inertia"), outline.Inertia),
        WeightPerLength = row.Value("weight"),
        IsFlat = true,
    };

    /// <summary>What is the same both ways, as a pipe: the published figures are those of either.</summary>
    private static Section AsUpright(Row row, Section outline) => Upright(row, outline) with { IsFlat = true };

    private static Section Weighing(Row row, Section outline) => outline with { WeightPerLength = row.Value("weight") };

    private static double? Scaled(double? figure, double? published, double? computed) =>
        published is double ? figure * (published / computed) : figure;

    private static bool AgreesWith(Row row, Section upright, Section flat, bool isExact)
    {
        (string Key, double? Computed, double Factor)[] figures =
        [
            ("area", upright.Area, 1.25),
            ("inertia", upright.Inertia, 1.25),
            ("section_modulus", upright.SectionModulus, 1.25),
            ("plastic_modulus", upright.PlasticModulus, 1.25),
            ("weak_inertia", flat.Inertia, 1.5),
            ("weak_section_modulus", flat.SectionModulus, 1.5),
        ];
        bool agrees = true;
        foreach ((string key, double? computed, double factor) in figures)
        {
            double most = isExact ? Rounding : factor;
            double ratio = row.Value(key) / computed ?? 1;
            if (ratio > most || ratio < 1 / most)
            {
                row.Refuse(key, CatalogueText.UnlikeItsSizes(ratio));
                agrees = false;
            }
        }

        return agrees;
    }
}
