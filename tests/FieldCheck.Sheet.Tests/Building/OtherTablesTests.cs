using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class OtherTablesTests
{
    public static TheoryData<BeamDocument, string[]> Wrong => new()
    {
        { Beams.Simple with { Display = "metric" }, ["display: expected us or si, found 'metric'"] },
        { Beams.Simple with { ShearDeformation = "yes" }, ["shear_deformation: expected true or false"] },
        {
            Beams.Simple with { Ask = ["span[1].length", "load[2].force"] },
            ["ask[2]: 'load[2].force' is no cell of this beam"]
        },
        {
            Beams.Simple with { Patterns = [new() { Case = "snow" }], Renames = [new("live", "snow"), new("snow", "ice"), new("gone", "x")] },
            [
                "rename.live: there is a case 'snow' already: choose another name, or give its loads that case instead",
                "rename.snow: no other case is called 'ice' any more: type it once more and this one is",
                "rename.gone: no case is called 'gone'",
            ]
        },
        { Beams.Simple with { Patterns = [new()] }, ["pattern[1].case: needs the name of a case, as \"live\""] },
        {
            Beams.Simple with { Patterns = [new() { Case = "sonw" }] },
            [
                "pattern[1].case: no load stands in a case 'sonw', and it is none of the usual ones: did you mean snow?",
            ]
        },
        {
            Beams.Simple with { Patterns = [new() { Case = "live" }, new() { Case = "snow" }, new() { Case = "live" }] },
            ["pattern[3].case: case 'live' has a pattern already: one is enough"]
        },
        {
            Beams.Simple with { Rolling = [new()] },
            ["rolling[1].axles: a rolling load needs at least one axle, as { offset = \"0 m\", force = \"20 kN\" }"]
        },
        {
            Beams.Simple with
            {
                Rolling = [new() { Impact = "-5 %", Axles = [new() { Offset = "-1 m", Force = "4 kN" }, new()] }],
            },
            [
                "rolling[1].impact: '-5 %' is less than zero",
                "rolling[1].axles[1].offset: '-1 m' is less than zero",
                "rolling[1].axles[2].offset: an axle needs its offset from the first axle, as \"1.2 m\"",
                "rolling[1].axles[2].force: an axle needs its force, as \"20 kN\"",
            ]
        },
        {
            Beams.Simple with { Stated = [new()] },
            [
                "stated[1].support: a stated figure needs the label of its support, as \"A\"",
                "stated[1].vertical: nothing is stated here: give vertical, horizontal or moment",
            ]
        },
        {
            Beams.Simple with { Stated = [new() { Support = "C", Vertical = "4 kN" }] },
            ["stated[1].support: no support is called C: there is A, B"]
        },
        {
            Beams.Simple with { Stated = [new() { Support = "a", Vertical = "4 kN", Combination = "service" }] },
            ["stated[1].combination: no combination is called 'service'"]
        },
        {
            Beams.Simple with
            {
                Stated = [new() { Support = "A", Moment = "4 kNm", Combination = "all loads", Case = "live" }],
            },
            ["stated[1].case: a figure is stated for a combination or for a case, not both"]
        },
        {
            Beams.Simple with { Stated = [new() { Support = "A", Vertical = "4 kN", Case = "livee" }] },
            ["stated[1].case: no load stands in a case 'livee', and it is none of the usual ones: did you mean live?"]
        },
        {
            Beams.Simple with { Tolerance = new() { Position = "-1 in", Load = "-10 %" } },
            ["tolerance.position: '-1 in' is less than zero", "tolerance.load: '-10 %' is less than zero"]
        },
        {
            Beams.Simple with
            {
                Limits = new() { DeflectionAbsolute = "0 mm", DeflectionCases = [new("lve", "L/360")] },
            },
            [
                "limits.deflection_absolute: '0 mm' is not greater than zero",
                "limits.deflection_cases.lve: no load stands in a case 'lve', and it is none of the usual ones: "
                    + "did you mean live?",
            ]
        },
        {
            Beams.Simple with { Limits = new() { Lasting = [new("lve", "1"), new("dead", "1.1"), new("live", "-0.1")] } },
            [
                "limits.lasting.lve: no load stands in a case 'lve', and it is none of the usual ones: did you mean live?",
                "limits.lasting.dead: '1.1' is no share of a case: it lies between 0, none of it lasts, and 1, all of it "
                    + "does",
                "limits.lasting.live: '-0.1' is no share of a case: it lies between 0, none of it lasts, and 1, all of it "
                    + "does",
            ]
        },
        {
            Beams.Simple with { Limits = new() { Rules = "AISC 360-16" } },
            [
                "limits.rules: expected elastic allowable, AISC 360-16 ASD, AISC 360-16 LRFD, EN 1993-1-1, NDS or "
                    + "EN 1995-1-1, found 'AISC 360-16'",
            ]
        },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void WrongTable_IsToldThoughTheModelDoesNotHoldIt(BeamDocument document, string[] problems) =>
        Assert.Equal(problems, Beams.Problems(document));

    [Theory]
    [InlineData("span[1].unbraced", "loose")]
    [InlineData("support[1].pad", "24 in")]
    [InlineData("support[1].bearing_allowable", "24 in")]
    [InlineData("stated[1].vertical", "2 ton")]
    [InlineData("stated[1].tolerance", "2")]
    [InlineData("stated[1].basis", "limit")]
    [InlineData("stated[1].extreme", "most")]
    [InlineData("rolling[1].impact", "30")]
    [InlineData("rolling[1].axles[1].force", "4")]
    [InlineData("tolerance.load", "10")]
    [InlineData("limits.deflection", "1/360")]
    [InlineData("limits.deflection_cases.live", "L/")]
    [InlineData("material.m.design_shear", "2.5")]
    [InlineData("material.m.factors.duration", "1.25 kN")]
    [InlineData("section.s.weight", "3 kN")]
    public void CellThatDoesNotRead_IsToldWhateverItsTable(string key, string text)
    {
        BeamDocument sound = Beams.Simple with
        {
            Rolling = [new() { Axles = [new() { Offset = "0 m", Force = "4 kN" }] }],
            Stated = [new() { Support = "A", Vertical = "8 kN" }],
            Tolerance = new(),
            Limits = new(),
            Materials = [new() { Name = "m", Modulus = "11 GPa" }],
            Sections = [new() { Name = "s", Inertia = "100 cm4" }],
        };

        Assert.Empty(Beams.Problems(sound));
        Assert.Equal([key], Beams.ProblemKeys(DocumentCells.Set(sound, key, text)!));
    }

    [Fact]
    public void Problems_StandInTheOrderOfTheTables() => Assert.Equal(
        ["display", "span[1].length", "span[10].length", "support[2].joint", "load[1].force", "stated[1].support"],
        Beams.ProblemKeys(new BeamDocument
        {
            Display = "metric",
            Stated = [new() { Vertical = "1 kN" }],
            Loads = [new() { Kind = "point", At = "1 m" }],
            Supports = [Beams.Pin, new() { Kind = "pin" }],
            Spans =
            [
                .. Enumerable.Range(1, 10)
                    .Select(span => new SpanEntry { Length = span is 1 or 10 ? "1 furlong" : "1 m" }),
            ],
        }));
}
