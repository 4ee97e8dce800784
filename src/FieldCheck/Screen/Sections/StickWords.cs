using FieldCheck.Mechanics.Model;
using FieldCheck.Screen.Details;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Sections;

/// <summary>What is said of the cells of sections, materials, limits, bracing and bearings.</summary>
internal static class StickWords
{
    /// <summary>What an empty cell says because of other cells: of a grade, its figures.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="place">The cell.</param>
    internal static string? Following(Calculation calculation, FormPlace place) => place.Column switch
    {
        FormColumn.Flat => "on edge",
        FormColumn.Plies => "1",
        FormColumn.Wall => "solid",
        FormColumn.Rules => "none",
        FormColumn.Modulus => Say(calculation, MaterialAt(calculation, place.Row)?.Modulus, QuantityKind.Pressure),
        FormColumn.ShearModulus => Say(calculation, MaterialAt(calculation, place.Row)?.ShearModulus, QuantityKind.Pressure),
        FormColumn.Density => Say(calculation, MaterialAt(calculation, place.Row)?.UnitWeight, QuantityKind.UnitWeight),
        FormColumn.Yield => Say(calculation, MaterialAt(calculation, place.Row)?.Yield, QuantityKind.Pressure),
        _ => "-",
    };

    /// <summary>What can be typed, with examples.</summary>
    /// <param name="column">The column.</param>
    internal static string Hint(FormColumn column) => column switch
    {
        FormColumn.Shape => "of the catalogue: IPE 200, W10x30; or sides: 75x225",
        FormColumn.Width => "of one ply, across the beam: 75, 1.5 in",
        FormColumn.Depth => "over all: 225, 9.25 in",
        FormColumn.Plies => "how many side by side: 2",
        FormColumn.Flat => "Space: on edge, or flat (weak axis)",
        FormColumn.Diameter => "of a bar, or of a tube outside: 48.3",
        FormColumn.Wall => "of a tube; empty for a solid bar",
        FormColumn.FlangeWidth => "width of its flanges: 100",
        FormColumn.FlangeThickness => "of its flanges: 8.5",
        FormColumn.WebThickness => "thickness of the web: 5.6",
        FormColumn.Inertia => "second moment of area: 1940 cm4",
        FormColumn.SectionModulus => "section modulus: 194 cm3",
        FormColumn.Area => "its area: 28.5 cm2",
        FormColumn.ShearArea => "for shear deformation: 14 cm2",
        FormColumn.Weight => "on each length: 0.22 kN/m",
        FormColumn.Grade => "of the catalogue: C24, S275, A992",
        FormColumn.Modulus => "modulus of elasticity: 9000, 11 GPa",
        FormColumn.AllowableBending or FormColumn.AllowableShear or FormColumn.AllowableBearing =>
            "all safety inside, against service loads: 12",
        FormColumn.DesignBending or FormColumn.DesignShear or FormColumn.DesignBearing =>
            "after all factors, against factored loads: 16",
        FormColumn.Yield => "yield stress, used only by rules: 275",
        FormColumn.Factors => "of timber: duration 1.25, size 1.1",
        FormColumn.Creep => "what lasting loads add: 0.6",
        FormColumn.ShearModulus => "shear modulus: 690",
        FormColumn.Density => "mass or weight per volume: 420 kg/m3",
        FormColumn.Rules => "Space: the rules that strengths are judged by",
        FormColumn.Deflection => "of each bay: L/360, 360",
        FormColumn.Overhang => "of each overhang, its own length: L/180",
        FormColumn.Absolute => "nowhere more than: 12 mm",
        FormColumn.Final => "of each bay, in the end: L/250",
        FormColumn.FinalOverhang => "of each overhang, in the end: L/125",
        FormColumn.CaseLimits => "under one case alone: live L/360",
        FormColumn.Lasting => "share that lasts: live 0.3, snow 0.2",
        FormColumn.Unbraced => "length free to go sideways, or Space: braced",
        FormColumn.Bearing => "its length along the beam: 75, 3 in",
        FormColumn.BearingAllowable => "what the beam may press on it: 2.1",
        FormColumn.Pad => "sides of the pad below: 600 x 600",
        _ => "what the ground below may carry: 100",
    };

    /// <summary>A cell read back; null where there is nothing to say.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="place">The cell.</param>
    /// <param name="text">What stands in it.</param>
    internal static string? ReadBack(Calculation calculation, FormPlace place, string text) => place.Column switch
    {
        FormColumn.Flat => text == "flat" ? "flat: bent about its weak axis" : "on edge: bent about its strong axis",
        FormColumn.Unbraced when text == "braced" => "braced: its compression side is held all along",
        FormColumn.Shape => OfSection(calculation, place.Row) is string figures ? $"{text}: {figures}" : null,
        FormColumn.Rules => $"strengths are judged by {text}",
        _ => DetailWords.ReadBackOf(calculation.Document, StickCells.WantedOf(place) switch
        {
            Wanted.LengthOr => new Wanted.Measure(QuantityKind.Length),
            Wanted wanted => wanted,
            null => null,
        }, text),
    };

    /// <summary>What is said of a text that a cell of figures by name cannot take; null where it can.</summary>
    /// <param name="place">The cell.</param>
    /// <param name="text">What was typed.</param>
    internal static string? NotTaken(FormPlace place, string text) => place.Column switch
    {
        FormColumn.Factors or FormColumn.Lasting or FormColumn.CaseLimits when FigureText.Read(text) is null =>
            $"Names with a figure each, by commas: {Example(place.Column)}.",
        _ => null,
    };

    private static string Example(FormColumn column) => column switch
    {
        FormColumn.Factors => "duration 1.25, size 1.1",
        FormColumn.Lasting => "live 0.3, snow 0.2",
        _ => "live L/360, snow L/250",
    };

    private static string? OfSection(Calculation calculation, int row)
    {
        string? name = StickRows.Sections(calculation.Document).ElementAtOrDefault(row);
        Section? section = calculation.Beam?.Sticks.FirstOrDefault(stick => stick.SectionName == name)?.Section;
        DisplayUnits units = new(calculation.Document.Units);
        return section is null ? null : string.Join(", ", new[]
        {
            Part("I", section.Inertia, QuantityKind.Inertia, units),
            Part("S", section.SectionModulus, QuantityKind.SectionModulus, units),
            Part("A", section.Area, QuantityKind.Area, units),
        }.OfType<string>());
    }

    private static string? Part(string sign, double? value, QuantityKind kind, DisplayUnits units) =>
        value is double known ? $"{sign} {units.Say(known, kind)}" : null;

    private static Material? MaterialAt(Calculation calculation, int row)
    {
        string? name = StickRows.Materials(calculation.Document).ElementAtOrDefault(row);
        return calculation.Beam?.Sticks.FirstOrDefault(stick => stick.MaterialName == name)?.Material;
    }

    private static string Say(Calculation calculation, double? value, QuantityKind kind) => value is double known
        ? new DisplayUnits(calculation.Document.Units).Say(known, kind)
        : "-";
}
