using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of where a beam's sections and materials come from.</summary>
internal static class CatalogueFindings
{
    /// <summary>Entries of the person's own catalogue, which nobody else may have, or have otherwise.</summary>
    internal static IEnumerable<Message> Of(BeamDocument document, SectionCatalogue catalogue) =>
    [
        .. document.Sections
            .Select(section => section.Shape is string name ? catalogue.Shape(name) : null)
            .OfType<CatalogueShape>()
            .Where(shape => shape.File is not null)
            .Distinct()
            .Select(shape => Own(shape.Name, shape.File!, shape.IsInPlaceOfShipped)),
        .. document.Materials
            .Select(material => material.Grade is string name ? catalogue.Grade(name) : null)
            .OfType<CatalogueGrade>()
            .Where(grade => grade.File is not null)
            .Distinct()
            .Select(grade => Own(grade.Name, grade.File!, grade.IsInPlaceOfShipped)),
    ];

    private static Message Own(string name, string file, bool isInPlaceOfShipped) => new(
        Severity.Note,
        MessageCodes.OwnCatalogue,
        TextSafety.ForTerminal(
            $"{name} is of your own catalogue, {file}{(isInPlaceOfShipped ? ", in place of the shipped one" : "")}."));
}
