using System.Collections.Immutable;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Tables;

public sealed class ResultsPanelTests
{
    public static TheoryData<string> Presets => Sheets.PresetNames();

    [Theory]
    [InlineData(38, 9)]
    [InlineData(38, 6)]
    [InlineData(60, 14)]
    public void TheTrenchBearer_IsThePicture(int width, int height) => Picture.Matches(
        $"panel-trench-{width}x{height}", ResultsPanel.Lines(Sheets.Run(Sheets.Trench), width, height));

    [Fact]
    public void APulledSupport_SaysThatItMustBeHeld() => Picture.Matches(
        "panel-overhang", ResultsPanel.Lines(Sheets.Run(Sheets.Overhang), 38, 12));

    [Fact]
    public void ABeamThatCanMove_HasTheWordInPlaceOfResults() => Picture.Matches(
        "panel-can-move", ResultsPanel.Lines(Sheets.Run(Sheets.OnePin), 38, 9));

    [Fact]
    public void WhileACellIsTyped_TheHeaderSaysWhichBeamItIs() => Assert.Equal(
        "RESULTS  before this cell",
        ResultsPanel.Lines(Sheets.Run(Sheets.Trench), 38, 9, ResultsAge.BeforeThisCell)[0]);

    [Fact]
    public void AnAnswerWithoutWhatRolls_SaysSoInTheHeader_WhereThereIsNoRoomBelow()
    {
        Calculation calculation = Sheets.Preset("hand-truck-bridge");

        Assert.Equal("RESULTS  up to date  NOT THE WORST", ResultsPanel.Lines(calculation, 38, 3)[0]);
        Assert.Equal("RESULTS  up to date  NOT THE WORST", ResultsPanel.Lines(calculation, 200, 1)[0]);
        ImmutableArray<string> all = ResultsPanel.Lines(calculation, 60, 40);
        Assert.Equal("RESULTS  up to date", all[0]);
        Assert.Single(all, line => line.StartsWith("NOT THE WORST: ", StringComparison.Ordinal));
    }

    /// <summary>1.2 kN/m on 4 m hold 9.6 kNm; 5 kN ± 20 % at 1.8 m beyond come to 9.0, and to 10.8 at the most.</summary>
    [Fact]
    public void ABeamThatMayTipWithinWhatWasMeasured_SaysSoFirst_OrInTheHeader()
    {
        Calculation calculation = Sheets.Run(new BeamDocument
        {
            Spans = [new() { Length = "4 m" }, new() { Length = "1.8 m" }],
            Supports = [new() { Kind = "pin", Joint = "0", Acts = "up" }, new() { Kind = "roller", Joint = "1", Acts = "up" }],
            Loads =
            [
                new() { Kind = "point", At = "end", Force = "5 kN ± 20 %" },
                new() { Kind = "distributed", From = "0 m", To = "4 m", Intensity = "1.2 kN/m" },
            ],
        });

        Assert.Equal("RESULTS  up to date  MAY TIP", ResultsPanel.Lines(calculation, 38, 3)[0]);
        ImmutableArray<string> some = ResultsPanel.Lines(calculation, 38, 12);
        Assert.Equal("RESULTS  up to date", some[0]);
        Assert.Single(some, line => line.Contains("Within what was measured", StringComparison.Ordinal));
        Assert.StartsWith("..", some[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void ACellThatDoesNotRead_LeavesNoFigure()
    {
        Calculation unread = Sheets.Run(Sheets.Trench with { Spans = [new SpanEntry { Length = "3.6 mk" }] });
        ImmutableArray<string> lines = ResultsPanel.Lines(unread, 38, 12);

        Assert.Equal("RESULTS  1 cell to mend", lines[0]);
        Assert.Contains("V  --", lines);
        Assert.DoesNotContain(lines, line => line.Contains("kN", StringComparison.Ordinal));
    }

    [Fact]
    public void WhatFindsNoRoom_IsCounted_AndShearAndMomentKeepARow()
    {
        ImmutableArray<string> lines = ResultsPanel.Lines(Sheets.Run(ManySupports(12)), 38, 9);

        Assert.Equal(9, lines.Length);
        Assert.StartsWith("E ", lines[5], StringComparison.Ordinal);
        Assert.StartsWith("V ", lines[6], StringComparison.Ordinal);
        Assert.StartsWith("M ", lines[7], StringComparison.Ordinal);
        Assert.Equal("..10 more", lines[^1]);
        Assert.StartsWith("A ", lines[1], StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Presets))]
    public void EveryPreset_KeepsToItsRoom(string name)
    {
        Calculation calculation = Sheets.Preset(name);
        foreach ((int width, int height) in new[] { (30, 3), (38, 9), (60, 30) })
        {
            ImmutableArray<string> lines = ResultsPanel.Lines(calculation, width, height);

            Assert.InRange(lines.Length, 2, height);
            Assert.All(lines, line => Assert.InRange(line.Length, 1, width));
        }
    }

    private static BeamDocument ManySupports(int count) => new()
    {
        Spans = RowsBuilder.Of<SpanEntry>([.. Enumerable.Repeat(new SpanEntry { Length = "2 m" }, count - 1)]),
        Supports = RowsBuilder.Of<SupportEntry>(
        [
            .. Enumerable.Range(0, count)
                .Select(i => new SupportEntry { Kind = i == 0 ? "pin" : "roller", Joint = $"{i}" }),
        ]),
        Loads = [new LoadEntry { Kind = "distributed", Intensity = "3 kN/m" }],
    };
}
