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

    /// <summary>Rows of every kind, two combinations, and things that are asked for.</summary>
    internal static BeamDocument Everything { get; } = new()
    {
        Title = "Stage over the loading bay",
        Record = new RecordEntry { Job = "Hall 3", Location = "north door", PreparedBy = "R. Okafor" },
        Spans =
        [
            new SpanEntry { Length = "12 ft 6 in", Unbraced = "braced" },
            new SpanEntry { To = "7.62 m", Unbraced = "4 ft" },
            new SpanEntry { Length = "2.5 m" },
        ],
        Supports =
        [
            new SupportEntry { Kind = "fixed", Joint = "0", Rotation = "2 mrad" },
            new SupportEntry { Kind = "spring", At = "joint 1", Stiffness = "8 kN/mm", Label = "Jack" },
            new SupportEntry { Kind = "roller", Joint = "2", Surface = "10 deg", Settlement = "3 mm" },
            new SupportEntry { Kind = "roller", Joint = "3", Acts = "up", RotationalStiffness = "50 kNm/rad" },
        ],
        Hinges = [new HingeEntry { At = "5.5 m" }],
        Loads =
        [
            new LoadEntry { Kind = "point", At = "Jack + 4 ft", Force = "1850 lbf", Angle = "20 deg", Label = "Winch" },
            new LoadEntry { Kind = "distributed", Pressure = "2 kPa", PressureEnd = "3 kPa", Width = "1.5 m" },
            new LoadEntry { Kind = "distributed", Intensity = "0.4 kN/m", Axial = "true", To = "2 m", Case = "wind" },
            new LoadEntry { Kind = "couple", At = "mid 2", Moment = "6 kNm" },
            new LoadEntry { Kind = "point", At = "end", Force = "-2 kN", Case = "wind", Label = "Gust" },
        ],
        SelfWeight = new SelfWeightEntry { Case = "dead" },
        Sections = [new SectionEntry { Name = "stick", Shape = "W10x30" }],
        Materials = [new MaterialEntry { Name = "steel", Grade = "A992" }],
        Combinations =
        [
            new CombinationEntry
            {
                Name = "in use",
                Factors = [new NamedFigure("dead", "1"), new NamedFigure("live", "1")],
            },
            new CombinationEntry
            {
                Name = "storm",
                Basis = "factored",
                Factors = [new NamedFigure("dead", "0.9"), new NamedFigure("wind", "1.5")],
            },
        ],
        Patterns = [new PatternEntry { Case = "live" }],
        Rolling =
        [
            new RollingEntry
            {
                Label = "Hand truck",
                Axles =
                [
                    new AxleEntry { Offset = "0 m", Force = "2 kN" },
                    new AxleEntry { Offset = "1.2 m", Force = "3 kN" },
                ],
                Impact = "30 %",
            },
        ],
        Stated = [new StatedEntry { Support = "A", Vertical = "12 kN", Combination = "in use" }],
        Limits = new LimitsEntry { Deflection = "L/360" },
    };

    internal static BeamDocument OnePin { get; } = Overhang with { Supports = [Overhang.Supports[0]] };

    internal static Calculation Run(BeamDocument document) => Calculation.Run(document, Catalogue, new BeamSolver());

    public static TheoryData<string> PresetNames() => new(PresetLibrary.BuiltIn().Select(preset => preset.Name));

    internal static Calculation Preset(string name)
    {
        BeamFileText text = PresetLibrary.BuiltIn().Single(preset => preset.Name == name).Text;
        return Run(Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read(text.Name, text.Text)).Document);
    }
}
