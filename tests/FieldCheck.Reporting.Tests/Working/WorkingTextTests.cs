using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Record;
using FieldCheck.Reporting.Working;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Working;

public sealed class WorkingTextTests
{
    public static TheoryData<string> Names() => new(WorkedSheets.All.Select(one => one.Name));

    public static TheoryData<string> Presets() => Sheets.PresetNames();

    [Theory]
    [MemberData(nameof(Names))]
    public void Working_ReadsAsExpected(string name)
    {
        BeamDocument sheet = WorkedSheets.All.Single(one => one.Name == name).Sheet;

        Picture.Matches("working-" + name, Lines(sheet).Select(line => line.Text));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Working_ComesOutAgainWhenWorkedFromThePage(string name)
    {
        BeamDocument sheet = WorkedSheets.All.Single(one => one.Name == name).Sheet;

        Assert.True(PrintedPage.WorkAgain(Lines(sheet, new WorkingRequest(Workings.Unbroken))) > 15);
    }

    [Fact]
    public void ShortForm_HasTheFiguresAndResultsOfTheFullOne()
    {
        WorkingLine[] full = Lines(WorkedSheets.Hinged);
        WorkingLine[] brief = Lines(WorkedSheets.Hinged, new WorkingRequest(80) { IsShort = true });

        Assert.Equal(
            full.Where(line => line.Kind != WorkingLineKind.Words), brief.Where(line => line.Kind != WorkingLineKind.Words));
        Assert.Empty(brief.Except(full));
        Assert.True(brief.Length < full.Length - 10);
        Assert.Contains("Moments about", Text(brief), StringComparison.Ordinal);
    }

    [Fact]
    public void WithoutStepNames_OnlyTheNamesAreGone()
    {
        WorkingLine[] full = Lines(WorkedSheets.Hinged);
        WorkingLine[] without = Lines(WorkedSheets.Hinged, new WorkingRequest(80) { HasStepNames = false });

        Assert.Equal(full.Where(line => line.Kind != WorkingLineKind.Step), without);
    }

    [Fact]
    public void PointAskedFor_IsTheOneThatMomentsAreTakenAbout()
    {
        string page = Text(Lines(WorkedSheets.Sloped, new WorkingRequest(80) { About = 3 }));

        Assert.Contains("Moments about x = 3.00 m, the point asked for", page, StringComparison.Ordinal);
        Assert.Contains("row 1: V_A + V_B = ", page, StringComparison.Ordinal);
    }

    [Fact]
    public void TapeReading_StandsBesideItsDecimals()
    {
        string page = Text(Lines(WorkedSheets.Overhang));

        Assert.Contains("at x = 1.25 ft (1'-3\")", page, StringComparison.Ordinal);
        Assert.Contains("Span 1: 12.5417 ft (12'-6 1/2\")", page, StringComparison.Ordinal);
    }

    [Fact]
    public void BeamThatCanMove_IsCountedAndSaidToMove()
    {
        string page = Text(Lines(Sheets.OnePin));

        Assert.Contains("Fewer unknowns than equations", page, StringComparison.Ordinal);
        Assert.Contains("CAN MOVE: the whole beam turns about A", page, StringComparison.Ordinal);
    }

    [Fact]
    public void BeamThatTips_IsWorkedUntilNothingHoldsIt()
    {
        BeamDocument tips = Sheets.Overhang with { Supports = [.. Sheets.Overhang.Supports.Select(one => one with { Acts = "up" })] };

        string page = Text(Lines(tips));

        Assert.Contains("A would have to pull the beam down, and it can only push", page, StringComparison.Ordinal);
        Assert.Contains("CAN MOVE: it tips", page, StringComparison.Ordinal);
    }

    [Fact]
    public void CellToMend_IsNamed()
    {
        string page = Text(Lines(Sheets.Overhang with { Spans = [new SpanEntry { Length = "2 fx" }] }));

        Assert.Contains("Nothing can be worked before these cells are mended:", page, StringComparison.Ordinal);
        Assert.Contains("span[1].length", page, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Presets))]
    public void Preset_IsWorkedToTheEndAndAgrees(string name)
    {
        Calculation calculation = Sheets.Preset(name);
        int combinations = Assert.IsType<BeamOutcome.Stands>(calculation.Outcome).Combinations.Length;

        Assert.All(Enumerable.Range(0, combinations), combination =>
        {
            string page = Text(WorkingText.Lines(calculation, combination, new WorkingRequest(Workings.Unbroken)));
            Assert.Contains("they agree", page, StringComparison.Ordinal);
            Assert.DoesNotContain("DOES NOT CLOSE", page, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void WhatRollsOrMayBeAway_IsSaidToBeLeftOut(bool isShort)
    {
        BeamDocument varied = Sheets.Trench with
        {
            Patterns = [new() { Case = "live" }],
            Rolling = [new() { Label = "Cart", Axles = [new() { Offset = "0 m", Force = "1 kN" }] }],
        };

        string page = Text(Lines(varied, new WorkingRequest(Workings.Unbroken) { IsShort = isShort }));

        Assert.StartsWith(
            "NOT THE WORST: this works all loads without Cart, with live on every bay. What rolls or may be away is not worked here; "
                + "the worst of all that may happen stands in the envelope of the check.",
            page,
            StringComparison.Ordinal);
        Assert.DoesNotContain("NOT THE WORST", Text(Lines(Sheets.Trench)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("8 mm", "up", "It only pushes up (V_B). It cannot hold along the beam or against turning. There is a gap of 8.0 mm to close first.")]
    [InlineData("-8 mm", "down", "It only holds down (V_B). It cannot hold along the beam or against turning. There is a gap of 8.0 mm to close first.")]
    [InlineData("-8 mm", "up", "It only pushes up (V_B). It cannot hold along the beam or against turning. C, roller")]
    [InlineData("8 mm", "down", "It only holds down (V_B). It cannot hold along the beam or against turning. C, roller")]
    [InlineData("8 mm", "both", "It pushes up or holds down (V_B). It cannot hold along the beam or against turning. C, roller")]
    public void SettlementOfASupportThatActsOneWayOnly_IsAGap(string settlement, string acts, string said)
    {
        BeamDocument sheet = new()
        {
            Spans = [new() { Length = "3 m", Section = "s", Material = "m" }, new() { Length = "3 m", Section = "s", Material = "m" }],
            Supports =
            [
                new() { Kind = "pin", Joint = "0" },
                new() { Kind = "roller", Joint = "1", Acts = acts, Settlement = settlement },
                new() { Kind = "roller", Joint = "2" },
            ],
            Loads = [new() { Kind = "distributed", Intensity = "12 kN/m" }],
            Sections = [new() { Name = "s", Inertia = "8360 cm4", Area = "53.8 cm2" }],
            Materials = [new() { Name = "m", Modulus = "210 GPa" }],
        };
        bool isGap = said.EndsWith("first.", StringComparison.Ordinal);

        Assert.Contains(said, Text(Lines(sheet, new WorkingRequest(Workings.Unbroken))), StringComparison.Ordinal);
        Assert.Equal(
            isGap, CheckText.Lines(Sheets.Run(sheet), new CheckRequest("", [], 200))
                .Any(line => line.Contains($"settlement {settlement}, a gap to close first", StringComparison.Ordinal)));
    }

    private static WorkingLine[] Lines(BeamDocument sheet, WorkingRequest? request = null) =>
        [.. WorkingText.Lines(Sheets.Run(sheet), 0, request ?? new WorkingRequest(80))];

    private static string Text(IEnumerable<WorkingLine> lines) =>
        string.Join(' ', lines.Select(line => line.Text.Trim()));
}
