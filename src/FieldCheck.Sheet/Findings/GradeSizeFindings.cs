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
              let grade = GradeOf(stick, document, catalogue)
              where grade?.Sizes?.Holds(stick.Section) == false
              select Caution(beam, stick, grade!);

    private static CatalogueGrade? GradeOf(Stick stick, BeamDocument document, SectionCatalogue catalogue) =>
        document.Materials.FirstOrDefault(entry => entry.Name == stick.MaterialName)?.Grade is string name
            ? catalogue.Grade(name)
            : null;

    private static Message Caution(BuiltBeam beam, Stick stick, CatalogueGrade grade)
    {
        PieceSizes sizes = grade.Sizes!;
        DisplayUnits display = beam.Display;
        (double thickness, double width) = PieceSizes.PieceOf(stick.Section)!.Value;
        string name = TextSafety.ForTerminal(stick.SectionName!);
        string size = stick.Section!.Shape is SectionShape.Round
            ? $"Section {name} is round, counted as a square of {display.Movement(thickness)}"
            : $"A piece of section {name} is {display.Movement(thickness)} thick and {display.Movement(width)} wide";
        string[] told =
        [
            .. sizes.HasThickness(thickness) ? [] : new[] { $"{Range(display, sizes.ThicknessFrom, sizes.ThicknessTo)} thick" },
            .. sizes.HasWidth(width) ? [] : new[] { $"{Range(display, sizes.WidthFrom, sizes.WidthTo)} wide" },
            .. sizes.HasExcess(width - thickness) ? [] : new[] { $"{Excess(display, sizes)} wider than thick" },
        ];
        return new Message(
            Severity.Caution,
            MessageCodes.GradeSize,
            $"{size}, and the figures of {TextSafety.ForTerminal(grade.Name)} are for pieces "
                + $"{string.Join(" and ", told)}: name the grade of this size.");
    }

    private static string Excess(DisplayUnits display, PieceSizes sizes) => (sizes.ExcessOver, sizes.ExcessTo) switch
    {
        (double over, double most) => $"more than {display.Movement(over)} to {display.Movement(most)}",
        (double over, null) => $"more than {display.Movement(over)}",
        (null, double most) => $"at most {display.Movement(most)}",
        _ => "any length",
    };

    private static string Range(DisplayUnits display, double? from, double? to) => (from, to) switch
    {
        (double least, double most) => $"{display.Movement(least)} to {display.Movement(most)}",
        (double least, null) => $"{display.Movement(least)} and more",
        (null, double most) => $"up to {display.Movement(most)}",
        _ => "of any size",
    };
}
