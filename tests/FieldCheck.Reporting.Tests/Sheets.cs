using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Reporting.Tests;

/// <summary>Sheets as a person would type them, and what comes of them.</summary>
internal static class Sheets
{
    private static readonly SectionCatalogue Catalogue = SectionCatalogue.BuiltIn();

    internal static BeamDocument Trench { get; } = new()
    {
        Title = "Bearer over the service trench",
        Notes = "Measured on the north side.",
        Spans = [new SpanEntry { Length = "3.60 m" }],
        Supports =
        [
            new SupportEntry { Kind = "pin", At = "300 mm" },
            new SupportEntry { Kind = "roller", At = "end - 0.9 m" },
        ],
        Loads =
        [
            new LoadEntry { Kind = "distributed", Intensity = "0.25 kN/m", Label = "decking", Case = "dead" },
            new LoadEntry { Kind = "distributed", Total = "12 kN", From = "0.6 m", To = "1.6 m", Label = "pallets L" },
            new LoadEntry { Kind = "distributed", Pressure = "10 kPa", Width = "1.2 m", From = "1.8 m", To = "2.8 m" },
            new LoadEntry { Kind = "point", Force = "1.5 kN", At = "3.40 m", Label = "chain block" },
        ],
        Sections = [new SectionEntry { Name = "bearer", Width = "75 mm", Depth = "225 mm" }],
        Materials = [new MaterialEntry { Name = "softwood", Modulus = "9000 MPa" }],
    };

    /// <summary>A back span of 2 m with 3 m of overhang and the load at its tip: A is pulled.</summary>
    internal static BeamDocument Overhang { get; } = new()
    {
        Title = "Gantry arm",
        Spans = [new SpanEntry { Length = "2 m" }, new SpanEntry { Length = "3 m" }],
        Supports =
        [
            new SupportEntry { Kind = "pin", Joint = "0" },
            new SupportEntry { Kind = "roller", Joint = "1" },
        ],
        Loads = [new LoadEntry { Kind = "point", Force = "4 kN", At = "end" }],
    };

    internal static BeamDocument OnePin { get; } = Overhang with { Supports = [Overhang.Supports[0]] };

    internal static Calculation Run(BeamDocument document) => Calculation.Run(document, Catalogue, new BeamSolver());

    internal static TheoryData<string> PresetNames() => new(PresetLibrary.BuiltIn().Select(preset => preset.Name));

    internal static Calculation Preset(string name)
    {
        BeamFileText text = PresetLibrary.BuiltIn().Single(preset => preset.Name == name).Text;
        return Run(Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read(text.Name, text.Text)).Document);
    }
}
