using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of a yield that holds up to a thickness.</summary>
internal static class YieldFindings
{
    internal static IEnumerable<Message> Of(BuiltBeam beam, BeamDocument document, SectionCatalogue catalogue) =>
        !YieldThickness.Counts(StrengthRows.Rules(document.Limits?.Rules))
            ? []
            : beam.Sticks.Distinct()
                .Where(stick => YieldThickness.IsOver(stick) || YieldThickness.IsOpen(stick))
                .Select(stick => Caution(beam, document, stick, catalogue));

    private static Message Caution(BuiltBeam beam, BeamDocument document, Stick stick, SectionCatalogue catalogue)
    {
        Material material = stick.Material!;
        string? name = document.Materials.FirstOrDefault(entry => entry.Name == stick.MaterialName)?.Grade;
        string grade = name is null ? "the material" : catalogue.Grade(name)?.Name ?? name;
        string standard = name is not null && catalogue.Grade(name) is { Standard.Length: > 0 } found ? $" ({found.Standard})" : "";
        string section = stick.SectionName is string own ? TextSafety.ForTerminal(own) : "the section";
        string thick = stick.Section?.Shape?.Thickest is double thickest
            ? $"Section {section} is up to {beam.Display.Movement(thickest)} thick"
            : $"The thickness of section {section} is not known";
        return new Message(
            Severity.Caution,
            MessageCodes.YieldThickness,
            $"{thick}, and the yield of {TextSafety.ForTerminal(grade)}, {beam.Display.Say(material.Yield!.Value, QuantityKind.Pressure)}, holds up to "
                + $"{beam.Display.Movement(material.YieldThickness!.Value)}{TextSafety.ForTerminal(standard)}: thicker plates yield sooner. "
                + "Type the yield that holds for it.");
    }
}
