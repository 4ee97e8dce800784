using System.Collections.Immutable;
using FieldCheck.Reporting.Record;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Tables;

/// <summary>The part of the check that says how well it is known.</summary>
public sealed class BandWordsTests
{
    /// <summary>12 ft; 1200 lb at 4 ft and 100 plf from 6 ft on. A 950 lb; 847 to 1056 lb by the corners.</summary>
    private static readonly BeamDocument Shelf = new()
    {
        Display = "us",
        Spans = [new() { Length = "12 ft" }],
        Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
        Loads =
        [
            new() { Kind = "point", At = "4 ft ± 1 in", Force = "1200 lb ± 10 %" },
            new() { Kind = "distributed", From = "6 ft +- 2 in", Intensity = "100 plf ± 5 plf" },
        ],
    };

    [Fact]
    public void LoadsKnownToPlusOrMinus_AreExact() => Picture.Matches("known-exact", Known(Shelf));

    [Fact]
    public void LengthsToo_AreEstimates() => Picture.Matches(
        "known-estimate",
        Known(Shelf with
        {
            Supports = [new() { Kind = "fixed", Joint = "0" }, new() { Kind = "roller", At = "11 ft ± 1/2 in" }],
            Combinations =
            [
                new() { Name = "service", Factors = [new("live", "1.0")] },
                new() { Name = "strength", Basis = "factored", Factors = [new("live", "1.6")] },
            ],
        }));

    /// <summary>4 m and 1.5 m; 6 kN at the tip, 1.2 kN/m before: A 0.15 kN, and it tips beyond 6.4 kN.</summary>
    private static readonly BeamDocument NearTipping = new()
    {
        Spans = [new() { Length = "4 m" }, new() { Length = "1.5 m" }],
        Supports = [new() { Kind = "pin", Joint = "0", Acts = "up" }, new() { Kind = "roller", Joint = "1", Acts = "up" }],
        Loads =
        [
            new() { Kind = "point", At = "end", Force = "6 kN ± 12 %" },
            new() { Kind = "distributed", To = "B", Intensity = "1.2 kN/m" },
        ],
    };

    [Fact]
    public void PartInWhichItTips_MakesNoBandWhole() => Picture.Matches("known-not-whole", Known(NearTipping));

    [Fact]
    public void BeamThatTipsWithinWhatWasMeasured_IsSaidToStandAtTheFiguresTypedOnly()
    {
        string[] lines = [.. CheckText.Lines(Sheets.Run(NearTipping), new CheckRequest("", [], 120))];

        Assert.Contains("result: STANDS at the figures typed, but tips or has no answer within what was measured", lines);
        Assert.Equal(
            "Reactions: A 0.15 kilonewtons up, B 10.65 kilonewtons up. Within what was measured the beam tips: with +12 % of load 1. "
                + "The bands are without that.",
            SpokenAnswer.InShort(Sheets.Run(NearTipping), 0));
    }

    /// <summary>Bands are of what stands; nothing may let them be taken for bands of the worst.</summary>
    [Fact]
    public void WhatRollsIsSaidNotToBeInThem()
    {
        BeamDocument rolled = Shelf with
        {
            Rolling = [new() { Label = "Truck", Axles = [new() { Offset = "0 ft", Force = "1 kip ± 10 %" }] }],
            Stated = [new() { Support = "A", Vertical = "1.95 kip", Extreme = "max" }],
        };

        ImmutableArray<string> check = CheckText.Lines(Sheets.Run(rolled), new CheckRequest("", [], 120));

        Assert.Equal(
            "  under all loads, NOT THE WORST: without Truck; how well the worst is known is not told",
            check.SkipWhile(line => line != "HOW WELL IT IS KNOWN").ElementAt(1));
        Assert.Contains(check, line => line.Contains("   plus or minus not counted", StringComparison.Ordinal));
        Assert.Contains(
            ResultsPanel.Lines(Sheets.Run(rolled), 120, 1000),
            line => line.StartsWith("  under all loads, NOT THE WORST: without Truck", StringComparison.Ordinal));
    }

    [Fact]
    public void NothingUncertain_NothingSaid() => Assert.Empty(Known(Sheets.Trench));

    /// <summary>The panel beside the form, and all results.</summary>
    [Fact]
    public void Panel_HasItWhereThereIsRoom()
    {
        ImmutableArray<string> all = ResultsPanel.Lines(Sheets.Run(Shelf), 60, 1000);

        Assert.Equal(
            [
                "HOW WELL IT IS KNOWN",
                "  A vertical +0.847 to +1.056 kip, exact",
                "  B vertical +0.772 to +0.930 kip, exact",
                "  exact: nothing can come out beyond",
                "  greatest moment +3.359 kip-ft to +4.235 kip-ft, exact",
            ],
            all.SkipWhile(line => line != "HOW WELL IT IS KNOWN").Take(5));
        Assert.Contains("  10 % of load 1 moves A by 0.080 kip, then 2 in at the left", all);
        Assert.DoesNotContain("HOW WELL IT IS KNOWN", ResultsPanel.Lines(Sheets.Run(Shelf), 60, 7));
    }

    /// <summary>The check takes its time; the form must answer every key.</summary>
    [Fact]
    public void Panel_SaysWhereItWouldTakeTooLong_AndTheCheckHasIt()
    {
        BeamDocument many = Shelf with
        {
            Loads = [.. Enumerable.Repeat(Shelf.Loads[0], 70)],
            Stated = [new() { Support = "A", Vertical = "52 kip" }],
        };
        Calculation calculation = Sheets.Run(many);
        const string said = "too much is uncertain for this to be followed at every key: fieldcheck check FILE says it";

        Assert.Contains($"  {said}", ResultsPanel.Lines(calculation, 120, 1000));
        Assert.Equal($"  {said}", StatedPanel.Lines(calculation, 120)[^1]);
        Assert.Contains(Known(many), line => line.StartsWith("  10 % of load 1 moves A by", StringComparison.Ordinal));
    }

    [Fact]
    public void Aloud_OneFactALine() => Assert.Contains(
        "How well it is known: 10 % of load 1 moves A by 0.080 kips, then 2 in at the left end of load 2 by 0.00845 kips, then 1 in at load 1 by 0.00833 kips.",
        PlainText.Lines(Sheets.Run(Shelf), new CheckRequest("", [])));

    private static ImmutableArray<string> Known(BeamDocument document) =>
    [
        .. CheckText.Lines(Sheets.Run(document), new CheckRequest("", []))
            .SkipWhile(line => line != "HOW WELL IT IS KNOWN")
            .TakeWhile(line => line.Length > 0),
    ];
}
