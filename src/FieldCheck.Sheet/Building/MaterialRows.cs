using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.Sheet.Building;

/// <summary>Reads a named material, by grade or by its figures.</summary>
internal static class MaterialRows
{
    /// <returns>The material, or null when it is not known, which has been told.</returns>
    internal static Material? Read(Row row, SectionCatalogue catalogue)
    {
        Material own = new()
        {
            Modulus = row.Positive("modulus"),
            ShearModulus = row.Positive("shear_modulus"),
            UnitWeight = row.NotNegative("density"),
            Yield = row.Positive("yield"),
            Allowable = StrengthsOf(row, "allowable"),
            Design = StrengthsOf(row, "design"),
            Creep = row.NotNegative("creep"),
        };
        switch (row.Text("grade"), row.Has("modulus"))
        {
            case (null, false):
                row.Refuse("modulus", ProblemText.NoModulus);
                return null;
            case (null, true):
                return own;
            case (not null, true):
                row.Refuse("modulus", ProblemText.GradeAndModulus);
                return null;
            case (string grade, false):
                return OfGrade(row, grade, own, catalogue);
        }
    }

    /// <summary>The grade's figures, with what the file gives beside them in their place.</summary>
    private static Material? OfGrade(Row row, string name, Material own, SectionCatalogue catalogue)
    {
        if (catalogue.Grade(name) is not CatalogueGrade grade)
        {
            row.Refuse("grade", CatalogueText.UnknownGrade(name, catalogue));
            return null;
        }

        return own with
        {
            Modulus = grade.Material.Modulus,
            ShearModulus = own.ShearModulus ?? grade.Material.ShearModulus,
            UnitWeight = own.UnitWeight ?? grade.Material.UnitWeight,
            Yield = own.Yield ?? grade.Material.Yield,
            YieldThickness = own.Yield is null ? grade.Material.YieldThickness : null,
            Timber = grade.Material.Timber,
        };
    }

    private static Strengths? StrengthsOf(Row row, string basis)
    {
        Strengths given = new(
            row.Positive(basis + "_bending"), row.Positive(basis + "_shear"), row.Positive(basis + "_bearing"));
        return given == new Strengths(null, null, null) ? null : given;
    }
}
