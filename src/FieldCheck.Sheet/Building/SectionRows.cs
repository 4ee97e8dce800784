using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.Sheet.Building;

/// <summary>Reads a named section in whichever of its forms it is given.</summary>
internal static class SectionRows
{
    private static readonly ImmutableArray<SectionForm> Forms =
    [
        new("a catalogue shape", ["shape"], ["shape", "flat"], FromCatalogue),
        new("a rectangle", ["width", "plies"], ["width", "depth", "plies", "flat"], (row, _) => Rectangle(row)),
        new("a round section", ["diameter", "wall"], ["diameter", "wall", "flat"], (row, _) => Round(row)),
        new(
            "an I section",
            ["flange_width", "flange_thickness", "web_thickness"],
            ["flange_width", "flange_thickness", "web_thickness", "depth", "flat"],
            (row, _) => BuiltUpI(row)),
        new(
            "a section given by its figures",
            ["inertia", "area", "section_modulus", "shear_area", "weight"],
            ["inertia", "area", "section_modulus", "depth", "shear_area", "weight"],
            (row, _) => Figures(row)),
    ];

    /// <returns>The section, or null when it is not known, which has been told.</returns>
    internal static Section? Read(Row row, SectionCatalogue catalogue)
    {
        string[] given = [.. row.KeysGiven];
        SectionForm[] forms = [.. Forms.Where(form => form.TellingKeys.Any(given.Contains))];
        switch (forms)
        {
            case []:
                row.Refuse("", ProblemText.NoSectionForm);
                return null;
            case [SectionForm form]:
                row.TakesOnly(form.Keys, form.Name);
                return form.Read(row, catalogue);
            default:
                row.Refuse("", ProblemText.TwoForms("a section", forms[0].Name, forms[1].Name));
                return null;
        }
    }

    private static Section? FromCatalogue(Row row, SectionCatalogue catalogue)
    {
        string name = row.Text("shape")!;
        if (catalogue.Shape(name) is CatalogueShape shape)
        {
            if (row.IsTrue("flat") && shape.Flat is null)
            {
                row.Refuse("flat", CatalogueText.NotFlat(name));
            }

            return row.IsTrue("flat") ? shape.Flat : shape.Upright;
        }

        row.Refuse("shape", CatalogueText.UnknownShape(name, catalogue));
        return null;
    }

    private static Section? Rectangle(Row row)
    {
        double? width = row.NeededPositive("width", ProblemText.Needs("a rectangle", "width"));
        double? plies = row.Has("plies") ? row.Value("plies") : 1;
        double? depth = row.NeededPositive("depth", ProblemText.Needs("a rectangle", "depth"));
        // Flat is about the weak axis: what is written as it lies, wider than deep, lies flat already.
        return (width, depth, plies) is (double across, double along, double count)
            ? Section.Of(new SectionShape.Rectangle(across, along, (int)count), row.IsTrue("flat") && across < along)
            : null;
    }

    private static Section? Round(Row row)
    {
        double? diameter = row.NeededPositive("diameter", ProblemText.Needs("a round section", "diameter"));
        double? wall = row.Positive("wall");
        if (!row.Has("wall"))
        {
            return diameter is double solid ? Section.Of(new SectionShape.Round(solid), row.IsTrue("flat")) : null;
        }

        if (wall >= diameter / 2)
        {
            row.Refuse("wall", ProblemText.WallTooThick);
            return null;
        }

        return (diameter, wall) is (double outer, double thickness)
            ? Section.Of(new SectionShape.RoundTube(outer, thickness), row.IsTrue("flat"))
            : null;
    }

    private static Section? BuiltUpI(Row row)
    {
        double? width = row.NeededPositive("flange_width", ProblemText.Needs("an I section", "flange_width"));
        double? flange = row.NeededPositive("flange_thickness", ProblemText.Needs("an I section", "flange_thickness"));
        double? web = row.NeededPositive("web_thickness", ProblemText.Needs("an I section", "web_thickness"));
        double? depth = row.NeededPositive("depth", ProblemText.Needs("an I section", "depth"));
        if (2 * flange >= depth)
        {
            row.Refuse("flange_thickness", ProblemText.FlangesTooThick);
            return null;
        }

        if (web > width)
        {
            row.Refuse("web_thickness", ProblemText.WebTooThick);
            return null;
        }

        return (width, flange, web, depth) is (double b, double tf, double tw, double d)
            ? Section.Of(new SectionShape.I(b, tf, tw, d), row.IsTrue("flat"))
            : null;
    }

    private static Section Figures(Row row) => new()
    {
        Inertia = row.NeededPositive("inertia", ProblemText.Needs("a section given by its figures", "inertia")),
        Area = row.Positive("area"),
        SectionModulus = row.Positive("section_modulus"),
        Depth = row.Positive("depth"),
        ShearArea = row.Positive("shear_area"),
        WeightPerLength = row.NotNegative("weight"),
    };

    /// <summary>One way to give a section.</summary>
    /// <param name="Name">What it is called in a message.</param>
    /// <param name="TellingKeys">The keys that only this form has.</param>
    /// <param name="Keys">All keys it takes.</param>
    /// <param name="Read">Makes its figures; null when one of them is not known.</param>
    private sealed record SectionForm(
        string Name, string[] TellingKeys, string[] Keys, Func<Row, SectionCatalogue, Section?> Read);
}
