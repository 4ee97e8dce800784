using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of a piece of timber whose grade has figures for other sizes.</summary>
internal static class GradeSizeFindings
{
    internal static IEnumerable<Message> Of(BuiltBeam beam, BeamDocument document, SectionCatalogue catalogue) =>
        document.Limits?.Rules is null
            ? []
            : from stick in beam.Sticks.Distinct()
              where stick.Section?.Shape is SectionShape.Rectangle
              let piece = (SectionShape.Rectangle)stick.Section!.Shape!
              let grade = GradeOf(stick, document, catalogue)
              where grade?.Sizes is not null
              let thickness = Math.Min(piece.Width, piece.Depth)
              let width = Math.Max(piece.Width, piece.Depth)
              where !grade!.Sizes!.HasThickness(thickness) || !grade.Sizes.HasWidth(width)
              select Caution(beam, stick, thickness, width, grade!);

    private static CatalogueGrade? GradeOf(Stick stick, BeamDocument document, SectionCatalogue catalogue) =>
        document.Materials.FirstOrDefault(entry => entry.Name == stick.MaterialName)?.Grade is string name
            ? catalogue.Grade(name)
            : null;

    private static Message Caution(BuiltBeam beam, Stick stick, double thickness, double width, CatalogueGrade grade)
    {
        PieceSizes sizes = grade.Sizes!;
        DisplayUnits display = beam.Display;
        string[] told =
        [
            .. sizes.HasThickness(thickness) ? [] : new[] { $"{Range(display, sizes.ThicknessFrom, sizes.ThicknessTo)} thick" },
            .. sizes.HasWidth(width) ? [] : new[] { $"{Range(display, sizes.WidthFrom, sizes.WidthTo)} wide" },
        ];
        return new Message(
            Severity.Caution,
            MessageCodes.GradeSize,
            $"A piece of section {TextSafety.ForTerminal(stick.SectionName!)} is {display.Movement(thickness)} thick and "
                + $"{display.Movement(width)} wide, and the figures of {TextSafety.ForTerminal(grade.Name)} are for pieces "
                + $"{string.Join(" and ", told)}: name the grade of this size.");
    }

    private static string Range(DisplayUnits display, double? from, double? to) => (from, to) switch
    {
        (double least, double most) => $"{display.Movement(least)} to {display.Movement(most)}",
        (double least, null) => $"{display.Movement(least)} and more",
        (null, double most) => $"up to {display.Movement(most)}",
        _ => "of any size",
    };
}
