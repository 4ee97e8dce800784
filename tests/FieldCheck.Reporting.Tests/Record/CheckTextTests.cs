using System.Collections.Immutable;
using FieldCheck.Reporting.Record;
using FieldCheck.Sheet;
using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Record;

public sealed class CheckTextTests
{
    private static readonly CheckRequest Request =
        new("trench.toml", [new AskedPlace("1.25 m", 1.25), new AskedPlace("B", 2.70), new AskedPlace("end", 3.60)]);

    private static readonly string[] FourCases = ["dead", "live", "snow", "wind"];

    public static TheoryData<string> Presets => Sheets.PresetNames();

    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void TheTrenchBearer_IsThePage(int width) => Picture.Matches(
        $"check-trench-{width}", CheckText.Lines(Sheets.Run(Sheets.Trench), Request with { Width = width }));

    [Fact]
    public void TheTrenchBearer_InFeetAndKips_IsThePage() => Picture.Matches(
        "check-trench-us", CheckText.Lines(Sheets.Run(Sheets.Trench with { Display = "us" }), Request));

    [Fact]
    public void RowsOfEveryKind_TwoCombinations_IsThePage() => Picture.Matches(
        "check-everything",
        CheckText.Lines(Sheets.Run(Sheets.Everything), new CheckRequest("stage.toml", [new AskedPlace("end", 10.12)])));

    /// <summary>Ten combinations: those that govern nothing keep their figures and lose their pictures.</summary>
    [Fact]
    public void OfManyCombinations_OnlyThoseThatGovernAreDrawn()
    {
        BeamDocument beam = Sheets.Overhang with
        {
            Loads =
            [
                .. FourCases.Select(name =>
                    new LoadEntry { Kind = "distributed", Intensity = "1 kN/m", Case = name }),
            ],
        };
        CombinationSet set = CombinationLibrary.BuiltIn().First(one => one.Name == "asce-7-16-allowable-stress");
        BeamDocument document = beam with { Combinations = set.For(beam).AddedTo([]) };

        ImmutableArray<string> lines = Lines(document);

        int combinations = document.Combinations.Count;
        int notDrawn = lines.Count(line => line.StartsWith("Not drawn: ", StringComparison.Ordinal));
        Assert.Equal(combinations, lines.Count(line => line.StartsWith("UNDER ", StringComparison.Ordinal)));
        Assert.Equal(combinations, lines.Count(line => line == "Reactions"));
        Assert.Equal(combinations - notDrawn, lines.Count(line => line.StartsWith("moment, ", StringComparison.Ordinal)));
        Assert.InRange(notDrawn, combinations - 3, combinations - 1);
    }

    [Fact]
    public void APulledSupport_LIFTS_AndIsToldThreeTimes()
    {
        ImmutableArray<string> lines = Lines(Sheets.Overhang);

        Assert.Contains("  A  at 0.00 m    6.00 kN down   (must be held down)   LIFTS", lines);
        Assert.Contains("  CAUTION: A must hold 6.00 kN down: is it tied?", lines);
        Assert.Contains("  A support that only pushes cannot pull. A downward reaction here means that", lines);
    }

    /// <summary>A factor below nil is taken away, not added with a sign of its own.</summary>
    [Theory]
    [InlineData("1", "-0.6", "1.00 dead - 0.60 wind")]
    [InlineData("-1", "0.6", "-1.00 dead + 0.60 wind")]
    [InlineData("0", "-0.6", "-0.60 wind")]
    public void FactorBelowNil_IsTakenAway(string dead, string wind, string sum)
    {
        BeamDocument beam = Sheets.Overhang with
        {
            Loads =
            [
                new LoadEntry { Kind = "distributed", Intensity = "3 kN/m", Case = "dead" },
                new LoadEntry { Kind = "distributed", Intensity = "1 kN/m", Case = "wind" },
            ],
            Combinations =
            [
                new CombinationEntry { Name = "lifted", Factors = [new("dead", dead), new("wind", wind)] },
            ],
        };

        Assert.Contains($"  combination lifted (service): {sum}", Lines(beam));
    }

    [Fact]
    public void ASupportSaidToHoldDown_IsHELD()
    {
        SupportEntry tied = Sheets.Overhang.Supports[0] with { Acts = "both" };
        ImmutableArray<string> lines =
            Lines(Sheets.Overhang with { Supports = Sheets.Overhang.Supports.SetItem(0, tied) });

        Assert.Contains("  A  at 0.00 m    6.00 kN down   (must be held down)   HELD", lines);
    }

    [Fact]
    public void ABeamThatCanMove_SaysSo_WithTheWayOut_AndNoFigures()
    {
        ImmutableArray<string> lines = Lines(Sheets.OnePin);

        Assert.Contains("result: CAN MOVE", lines);
        Assert.Contains("CAN MOVE: the whole beam turns about A: add a support, or make A fixed", lines);
        Assert.DoesNotContain("Reactions", lines);
    }

    [Fact]
    public void ASheetThatDoesNotRead_NamesTheCells_AndNoFigures()
    {
        ImmutableArray<string> lines = Lines(Sheets.Overhang with { Spans = [new SpanEntry { Length = "2 mm m" }] });

        Assert.Contains("TO MEND", lines);
        Assert.Contains(lines, line => line.StartsWith("  span[1].length: ", StringComparison.Ordinal));
        Assert.DoesNotContain("Reactions", lines);
    }

    [Fact]
    public void EscapeBytesInATitle_DoNotReachThePage()
    {
        ImmutableArray<string> lines = Lines(Sheets.Overhang with { Title = "Tr\u00e4ger \u001b[31m \u202e \u4e2d" });

        Assert.Equal("Check of a beam: Tr\u00e4ger ?[31m ? \u4e2d", lines[0]);
    }

    [Theory]
    [MemberData(nameof(Presets))]
    public void EveryPreset_KeepsToItsWidthAndToAscii(string name)
    {
        Calculation calculation = Sheets.Preset(name);
        foreach (int width in new[] { 40, 80, 132 })
        {
            ImmutableArray<string> lines = CheckText.Lines(calculation, new CheckRequest(name, [], width));

            Assert.Contains("Reactions", lines);
            Assert.All(lines, line => Assert.InRange(line.Length, 0, width));
            Assert.All(string.Concat(lines), c => Assert.InRange(c, ' ', '~'));
        }
    }

    private static ImmutableArray<string> Lines(BeamDocument document) =>
        CheckText.Lines(Sheets.Run(document), new CheckRequest("", []));
}
