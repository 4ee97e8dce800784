using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Working;

/// <summary>One sheet for each kind of working, as a person on site would type it.</summary>
internal static class WorkedSheets
{
    /// <summary>A tailgate ramp bearer that reaches past its second trestle, measured in feet and inches.</summary>
    internal static BeamDocument Overhang { get; } = new()
    {
        Title = "Ramp bearer past the second trestle",
        Display = "us",
        Spans = [new SpanEntry { Length = "12'-6 1/2\"" }],
        Supports =
        [
            new SupportEntry { Kind = "pin", At = "1'-3\"" },
            new SupportEntry { Kind = "roller", At = "9'-6\"" },
        ],
        Loads =
        [
            new LoadEntry { Kind = "distributed", Intensity = "65 plf", Label = "boards", Case = "dead" },
            new LoadEntry { Kind = "distributed", Intensity = "0 plf", IntensityEnd = "120 plf", From = "2'-6\"", Label = "spoil heap" },
            new LoadEntry { Kind = "point", Force = "850 lbf", At = "end", Label = "barrow" },
        ],
        Combinations =
        [
            new CombinationEntry
            {
                Name = "in use",
                Factors = [new NamedFigure("dead", "1.2"), new NamedFigure("live", "1.6")],
                Basis = "factored",
            },
        ],
    };

    /// <summary>A footbridge of three lengths: the middle one hangs between two hinges.</summary>
    internal static BeamDocument Hinged { get; } = new()
    {
        Title = "Footbridge in three lengths",
        Spans = [new SpanEntry { Length = "5 m" }, new SpanEntry { Length = "6.4 m" }, new SpanEntry { Length = "5 m" }],
        Supports =
        [
            new SupportEntry { Kind = "pin", Joint = "0" },
            new SupportEntry { Kind = "roller", Joint = "1" },
            new SupportEntry { Kind = "roller", Joint = "2" },
            new SupportEntry { Kind = "roller", Joint = "3" },
        ],
        Hinges = [new HingeEntry { At = "6.2 m" }, new HingeEntry { At = "10.2 m" }],
        Loads =
        [
            new LoadEntry { Kind = "distributed", Intensity = "1.8 kN/m", Label = "deck", Case = "dead" },
            new LoadEntry { Kind = "point", Force = "7.5 kN", At = "8 m", Label = "cart" },
        ],
    };

    /// <summary>Three bays of a rail, the middle bay stiffer, one bent settled.</summary>
    internal static BeamDocument ThreeSpans { get; } = new()
    {
        Title = "Monorail over four bents",
        Spans =
        [
            new SpanEntry { Length = "4 m", Section = "light" },
            new SpanEntry { Length = "5.5 m", Section = "heavy" },
            new SpanEntry { Length = "4 m", Section = "light" },
        ],
        Supports =
        [
            new SupportEntry { Kind = "pin", Joint = "0" },
            new SupportEntry { Kind = "roller", Joint = "1", Settlement = "4 mm" },
            new SupportEntry { Kind = "roller", Joint = "2" },
            new SupportEntry { Kind = "roller", Joint = "3" },
        ],
        Loads =
        [
            new LoadEntry { Kind = "distributed", Intensity = "0.9 kN/m", Label = "rail", Case = "dead" },
            new LoadEntry { Kind = "point", Force = "16 kN", At = "mid 2", Label = "hoist" },
        ],
        Sections =
        [
            new SectionEntry { Name = "light", Inertia = "2000 cm4" },
            new SectionEntry { Name = "heavy", Inertia = "5000 cm4" },
        ],
        Materials = [new MaterialEntry { Name = "steel", Modulus = "210 GPa" }],
    };

    /// <summary>A stringer that leans on a sloped bank, with a pull that is not square to it.</summary>
    internal static BeamDocument Sloped { get; } = new()
    {
        Title = "Stringer on the bank",
        Spans = [new SpanEntry { Length = "4.2 m" }],
        Supports =
        [
            new SupportEntry { Kind = "pin", At = "0.2 m" },
            new SupportEntry { Kind = "roller", At = "4 m", Surface = "25 deg" },
        ],
        Loads =
        [
            new LoadEntry { Kind = "distributed", Intensity = "1.1 kN/m", Label = "treads", Case = "dead" },
            new LoadEntry { Kind = "point", Force = "3 kN", Angle = "-35 deg", At = "2.6 m", Label = "winch line" },
        ],
    };

    /// <summary>A bracket built into a wall, with a couple from a motor.</summary>
    internal static BeamDocument Fixed { get; } = new()
    {
        Title = "Motor bracket",
        Spans = [new SpanEntry { Length = "1.6 m" }],
        Supports = [new SupportEntry { Kind = "fixed", Joint = "0" }],
        Loads =
        [
            new LoadEntry { Kind = "distributed", Intensity = "2 kN/m", IntensityEnd = "0.8 kN/m", Label = "casing", Case = "dead" },
            new LoadEntry { Kind = "couple", Moment = "-0.75 kNm", At = "1.2 m", Label = "motor" },
        ],
    };

    /// <summary>A plank over three trestles that it only rests on, with a load past the last.</summary>
    internal static BeamDocument LiftOff { get; } = new()
    {
        Title = "Plank over three trestles",
        Spans = [new SpanEntry { Length = "2 m" }, new SpanEntry { Length = "2.5 m" }, new SpanEntry { Length = "1.4 m" }],
        Supports =
        [
            new SupportEntry { Kind = "pin", Joint = "0", Acts = "up" },
            new SupportEntry { Kind = "roller", Joint = "1", Acts = "up" },
            new SupportEntry { Kind = "roller", Joint = "2", Acts = "up" },
        ],
        Loads =
        [
            new LoadEntry { Kind = "distributed", Intensity = "0.3 kN/m", Label = "plank", Case = "dead" },
            new LoadEntry { Kind = "point", Force = "1.2 kN", At = "0.5 m", Label = "mason" },
            new LoadEntry { Kind = "point", Force = "2.6 kN", At = "5.7 m", Label = "bricks" },
        ],
    };

    /// <summary>A gangway that lies on two sloped banks besides its pin and a spring pad: beyond the hand methods.</summary>
    internal static BeamDocument OutOfReach { get; } = new()
    {
        Title = "Gangway on two banks",
        Spans = [new SpanEntry { Length = "6 m", Section = "deck" }],
        Supports =
        [
            new SupportEntry { Kind = "pin", Joint = "0" },
            new SupportEntry { Kind = "roller", At = "2 m", Surface = "15 deg" },
            new SupportEntry { Kind = "spring", At = "4 m", Stiffness = "2 kN/mm", Settlement = "1 mm" },
            new SupportEntry { Kind = "roller", Joint = "1", Surface = "-20 deg" },
        ],
        Loads = [new LoadEntry { Kind = "distributed", Intensity = "3 kN/m", Label = "deck" }],
        Sections = [new SectionEntry { Name = "deck", Inertia = "3000 cm4", Area = "60 cm2" }],
        Materials = [new MaterialEntry { Name = "steel", Modulus = "210 GPa" }],
    };

    internal static IEnumerable<(string Name, BeamDocument Sheet)> All =>
    [
        ("overhang", Overhang),
        ("hinged", Hinged),
        ("three-spans", ThreeSpans),
        ("sloped", Sloped),
        ("fixed", Fixed),
        ("lift-off", LiftOff),
        ("out-of-reach", OutOfReach),
    ];
}
