using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of a yield that is that of other shapes: a round tube of one grade yields sooner than a rectangular one.</summary>
internal static class YieldShapeFindings
{
    internal static IEnumerable<Message> Of(BuiltBeam beam, BeamDocument document, SectionCatalogue catalogue) =>
        !YieldThickness.Counts(StrengthRows.Rules(document.Limits?.Rules))
            ? []
            : from stick in beam.Sticks.Distinct()
              let grade = GradeOf(stick, document, catalogue)
              where stick.Section?.Shape is SectionShape shape && grade?.YieldShape is string yields && !IsOf(yields, shape)
              select Caution(beam, stick, grade);

    /// <summary>The grade that its yield is that of; a yield that is typed is that of the stick.</summary>
    private static CatalogueGrade? GradeOf(Stick stick, BeamDocument document, SectionCatalogue catalogue) =>
        document.Materials.FirstOrDefault(one => one.Name == stick.MaterialName) is { Yield: null, Grade: string name }
            ? catalogue.Grade(name)
            : null;

    private static bool IsOf(string shape, SectionShape section) => section switch
    {
        SectionShape.I or SectionShape.Channel => shape == GradeRows.IOrChannel,
        SectionShape.RectangularTube => shape == GradeRows.RectangularTube,
        SectionShape.RoundTube => shape == GradeRows.RoundTube,
        _ => false,
    };

    private static Message Caution(BuiltBeam beam, Stick stick, CatalogueGrade grade)
    {
        string name = stick.SectionName is string own ? TextSafety.ForTerminal(own) : "the section";
        string standard = grade.Standard.Length > 0 ? $" ({TextSafety.ForTerminal(grade.Standard)})" : "";
        string yield = stick.Material?.Yield is double known ? $", {beam.Display.Say(known, QuantityKind.Pressure)}," : "";
        return new Message(
            Severity.Caution,
            MessageCodes.YieldShape,
            $"Section {name} is no {grade.YieldShape}, and the yield of {TextSafety.ForTerminal(grade.Name)}{yield} is that of such"
                + $"{standard}: other shapes may yield sooner, or are not made in it. Type the yield that holds for it.");
    }
}
