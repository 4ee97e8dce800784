using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Tables;

/// <summary>The panel of envelopes. Its figures are proved where they are found; here it is how they are said.</summary>
public sealed class EnvelopeSummaryTests
{
    /// <summary>
    /// Two bays of 4 m with 10 kN/m of live load bay by bay. One bay loaded gives 7/16, 10/16 and -1/16 of qL, both give
    /// 6/16 and 20/16 (usual tables of continuous beams); sagging at 7/16 of the bay is 49/512 of qL², at B -1/8 of qL².
    /// </summary>
    private static readonly BeamDocument TwoBays = new()
    {
        Spans = [new SpanEntry { Length = "4 m" }, new SpanEntry { Length = "4 m" }],
        Supports =
        [
            new SupportEntry { Kind = "pin", Joint = "0" },
            new SupportEntry { Kind = "roller", Joint = "1" },
            new SupportEntry { Kind = "roller", Joint = "2" },
        ],
        Loads = [new LoadEntry { Kind = "distributed", Intensity = "10 kN/m" }],
        Patterns = [new PatternEntry { Case = "live" }],
        Combinations =
        [
            new CombinationEntry { Name = "SLS", Factors = [new("live", "1")] },
            new CombinationEntry { Name = "ULS", Basis = "factored", Factors = [new("live", "1.5")] },
        ],
    };

    [Fact]
    public void EveryBasis_HasItsWorst_WithWhatGoverns() => Assert.Equal(
        [
            "SERVICE  SLS, live bay by bay",
            "A       max 17.50 kN up           live on bay 1",
            "        min  2.50 kN down LIFTS   live on bay 2",
            "B       max 50.00 kN up           live on bays 1 and 2",
            "        min  0.00 kN              no live",
            "C       max 17.50 kN up           live on bay 2",
            "        min  2.50 kN down LIFTS   live on bay 1",
            "shear   max +25.00 kN at B        live on bays 1 and 2",
            "        min -25.00 kN at B        live on bays 1 and 2",
            "moment  max +15.31 kNm at 1.75 m  live on bay 1",
            "        min -20.00 kNm at B       live on bays 1 and 2",
            "FACTORED  ULS, live bay by bay",
        ],
        EnvelopeSummary.Lines(Sheets.Run(TwoBays), 70)[..12].AsEnumerable());

    [Theory]
    [InlineData(1, "live bay by bay")]
    [InlineData(2, "live and c2 bay by bay")]
    [InlineData(3, "live, c2 and c3 bay by bay")]
    [InlineData(12, "12 cases bay by bay")]
    public void BayByBay_IsSaidOnce(int cases, string said)
    {
        string[] names = ["live", .. Enumerable.Range(2, cases - 1).Select(number => $"c{number}")];
        BeamDocument beam = TwoBays with
        {
            Loads = [.. names.Select(name => TwoBays.Loads[0] with { Case = name })],
            Patterns = [.. names.Select(name => new PatternEntry { Case = name })],
            Combinations = [new CombinationEntry { Name = "SLS", Factors = [.. names.Select(name => new NamedFigure(name, "1"))] }],
        };

        Assert.Equal("SERVICE  SLS, " + said, EnvelopeSummary.Lines(Sheets.Run(beam), 70)[0]);
    }

    [Fact]
    public void NarrowPanel_HasWhatGovernsBelow()
    {
        string[] lines = [.. EnvelopeSummary.Lines(Sheets.Run(TwoBays), 40)];

        Assert.Equal(["SERVICE  SLS, live bay by bay", "A       max 17.50 kN up", "    live on bay 1"], lines[..3]);
        Assert.All(lines, line => Assert.InRange(line.Length, 1, 40));
    }

    [Fact]
    public void SupportMeantToHold_IsSaidToHold()
    {
        BeamDocument tied = TwoBays with { Supports = TwoBays.Supports.SetItem(0, TwoBays.Supports[0] with { Acts = "both" }) };

        Assert.Contains("        min  2.50 kN down HELD    live on bay 2", EnvelopeSummary.Lines(Sheets.Run(tied), 70));
    }

    [Fact]
    public void OneCombinationAlone_HasOneValueOfEachSupport() => Assert.Equal(
        ["SERVICE  all loads", "A           15.00 kN up", "B           50.00 kN up", "C           15.00 kN up"],
        EnvelopeSummary.Lines(Sheets.Run(TwoBays with { Patterns = [], Combinations = [] }), 70)[..4].AsEnumerable());

    [Fact]
    public void CaseInNoCombination_IsToldBelow()
    {
        CombinationEntry dead = new() { Name = "dead alone", Factors = [new("dead", "1")] };
        BeamDocument leftOut = TwoBays with { Combinations = [dead, TwoBays.Combinations[1]] };

        Assert.Contains(
            EnvelopeSummary.Lines(Sheets.Run(leftOut), 100),
            line => line.StartsWith("Case live stands in no service combination", StringComparison.Ordinal));
    }
}
