using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>Reads a grade of a catalogue file.</summary>
internal static class GradeRows
{
    /// <summary>Strengths that are reference design values of the NDS.</summary>
    internal const string Reference = "reference";

    /// <summary>Strengths that are characteristic values of EN 338 or EN 14080.</summary>
    internal const string Characteristic = "characteristic";

    /// <summary>The size factor of dimension lumber goes with the strengths.</summary>
    internal const string DimensionLumber = "dimension lumber";

    /// <summary>The depth factor of glulam goes with the strengths.</summary>
    internal const string Glulam = "glulam";

    /// <summary>The yield is that of an I or a channel.</summary>
    internal const string IOrChannel = "I or channel";

    /// <summary>The yield is that of a rectangular tube.</summary>
    internal const string RectangularTube = "rectangular tube";

    /// <summary>The yield is that of a round tube.</summary>
    internal const string RoundTube = "round tube";

    private static readonly string[] OfStrengths = ["bending", "shear", "tension", "bearing", "minimum_modulus", "size_factor"];

    /// <summary>The grade.</summary>
    /// <param name="row">Its cells.</param>
    /// <param name="name">Its name.</param>
    /// <param name="family">Its family where it names none.</param>
    /// <returns>The grade; what is wrong with it has been told, and then it is not to be used.</returns>
    internal static CatalogueGrade Read(Row row, string name, string family)
    {
        if (row.Text("source") is null)
        {
            row.Refuse("", CatalogueText.NoSource);
        }

        if (row.Has("yield_thickness") && !row.Has("yield"))
        {
            row.Refuse("yield_thickness", CatalogueText.ThicknessWithoutYield);
        }

        if (row.Has("yield_shape") && !row.Has("yield"))
        {
            row.Refuse("yield_shape", CatalogueText.ShapeWithoutYield);
        }

        TimberStrengths? timber = Timber(row);
        PieceSizes? sizes = Sizes(row);
        Material material = new()
        {
            Modulus = row.NeededPositive("modulus", CatalogueText.NoModulus),
            ShearModulus = row.Positive("shear_modulus"),
            UnitWeight = row.NotNegative("density"),
            Yield = row.Positive("yield"),
            YieldThickness = row.Positive("yield_thickness"),
            Timber = timber is null ? null : timber with { Sizes = sizes },
        };
        return new(
            name, row.Text("standard") ?? "", material, row.Text("source") ?? "", row.Text("status") ?? CatalogueText.Own)
        {
            Family = row.Text(CatalogueContent.Family) ?? family,
            Sizes = sizes,
            YieldShape = row.Text("yield_shape"),
        };
    }

    private static PieceSizes? Sizes(Row row)
    {
        PieceSizes read = new(
            row.Positive("thickness_from"), row.Positive("thickness_to"), row.Positive("width_from"), row.Positive("width_to"))
        {
            ExcessOver = row.Positive("excess_over"),
            ExcessTo = row.Positive("excess_to"),
        };
        if (read.ThicknessFrom > read.ThicknessTo)
        {
            row.Refuse("thickness_to", CatalogueText.SizesCrossed("thickness_from"));
        }

        if (read.WidthFrom > read.WidthTo)
        {
            row.Refuse("width_to", CatalogueText.SizesCrossed("width_from"));
        }

        if (read.ExcessOver >= read.ExcessTo)
        {
            row.Refuse("excess_to", CatalogueText.ExcessCrossed);
        }

        return read == new PieceSizes(null, null, null, null) ? null : read;
    }

    private static TimberStrengths? Timber(Row row)
    {
        if (!row.Has("strengths"))
        {
            foreach (string key in OfStrengths.Where(row.Has))
            {
                row.Refuse(key, CatalogueText.NoBasis);
            }

            return null;
        }

        bool isReference = row.Text("strengths") == Reference;
        if (row.Has("size_factor") && isReference != (row.Text("size_factor") == DimensionLumber))
        {
            row.Refuse("size_factor", CatalogueText.SizeFactorOfOthers);
        }

        double? bending = row.NeededPositive("bending", CatalogueText.NeedsStrength("bending"));
        double? shear = row.NeededPositive("shear", CatalogueText.NeedsStrength("shear"));
        double? bearing = row.NeededPositive("bearing", CatalogueText.NeedsStrength("bearing"));
        double? least = row.Positive("minimum_modulus");
        if (least > row.Value("modulus"))
        {
            row.Refuse("minimum_modulus", CatalogueText.MinimumAboveModulus);
        }

        return (bending, shear, bearing) is (double inBending, double inShear, double inBearing)
            ? new(isReference ? TimberBasis.Reference : TimberBasis.Characteristic, inBending, inShear, inBearing, least)
            {
                Tension = row.Positive("tension"),
                TakesSizeFactor = row.Text("size_factor") == DimensionLumber,
                IsGlulam = row.Text("size_factor") == Glulam,
            }
            : null;
    }
}
