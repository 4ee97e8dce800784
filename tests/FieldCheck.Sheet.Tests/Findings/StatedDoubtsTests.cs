using FieldCheck.Mechanics.Checks;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Findings;

/// <summary>What is said of stated figures that agree, and yet are not to be relied on.</summary>
public sealed class StatedDoubtsTests
{
    /// <summary>29.4 kN in the middle of 4 m: 14.7 kN at either end, which is 1.499 t.</summary>
    private static readonly BeamDocument Single = new()
    {
        Spans = [new() { Length = "4 m" }],
        Supports = [Beams.Pin, Beams.Roller],
        Loads = [new() { Kind = "point", At = "2 m", Force = "29.4 kN" }],
        Display = "si",
    };

    /// <summary>
    /// Twice 4 m, 2 kN/m of live load that may stand on either: 3, 10 and 3 kN with all of it, 3.5 at the ends with one bay empty
    /// (Hicks, Civil Engineering Formulas, Table 2.1).
    /// </summary>
    private static readonly BeamDocument TwoBays = Beams.TwoSpans with
    {
        Spans = [new() { Length = "4 m" }, new() { Length = "4 m" }],
        Patterns = [new() { Case = "live" }],
        Display = "si",
    };

    private static readonly LoadEntry Standing = new() { Kind = "distributed", Intensity = "1 kN/m" };

    [Theory]
    [InlineData("1 t", true)]
    [InlineData("1.0 t", false)] // low
    [InlineData("14 kN", false)] // 4.8 % short, half a digit allowed: rounding, but not much of it
    [InlineData("13.9 kN", false)] // low
    [InlineData("1.5 t", false)]
    [InlineData("2 t", false)] // too much is the safe side
    [InlineData("1 t ± 0.6 t", false)] // said by whoever states it
    public void FigureOfFewDigits_IsDoubted(string stated, bool isDoubted)
    {
        Calculation calculation = CalculationTests.Run(Single with { Stated = [new() { Support = "A", Vertical = stated }] });

        string[] said = [.. calculation.Messages.Where(one => one.Code == MessageCodes.StatedRough).Select(one => one.Text)];

        Assert.Equal(
            isDoubted
                ? ["1 t stated as the vertical reaction of A: agrees only because it is written to so few digits; computed 14.70 kN up. Ask for more digits."]
                : [],
            said);
        if (isDoubted)
        {
            Assert.Equal(ReactionVerdict.Agrees, Assert.Single(calculation.Stated).Verdict);
        }
    }

    [Theory]
    [InlineData("A", "3.00 kN", null, "held against the loads as they stand; with what may roll or be away it comes to 3.50 kN up. If the worst is stated, say extreme = \"max\".")]
    [InlineData("A", "3.50 kN", null, "it agrees with the worst of all that may stand or roll, 3.50 kN up. If that is meant, say extreme = \"max\".")]
    [InlineData("A", "3.50 kN", "max", null)]
    [InlineData("B", "10.0 kN", null, null)] // the worst is with all of it
    public void FigureBesideWhichMoreMayHappen_IsDoubted(string support, string stated, string? extreme, string? says)
    {
        Calculation calculation = CalculationTests.Run(
            TwoBays with { Stated = [new() { Support = support, Vertical = stated, Extreme = extreme }] });

        string[] said = [.. calculation.Messages.Where(one => one.Code == MessageCodes.StatedNotWorst).Select(one => one.Text)];

        Assert.Equal(says is null ? [] : [$"{stated} stated as the vertical reaction of {support}: {says}"], said);
    }

    /// <summary>Supports that let go while a bay is empty and an axle rolls: nobody knows the worst for certain.</summary>
    [Theory]
    [InlineData("up", true)]
    [InlineData("both", false)]
    public void ExtremeHeldAgainstAnEstimate_IsDoubted(string acts, bool isDoubted)
    {
        Calculation calculation = CalculationTests.Run(TwoBays with
        {
            Supports = [.. TwoBays.Supports.Select(support => support with { Acts = acts })],
            Rolling = [new() { Case = "live", Axles = [new() { Offset = "0 m", Force = "4 kN" }] }],
            Stated = [new() { Support = "A", Vertical = "7 kN", Extreme = "max" }],
        });

        Assert.Equal(
            isDoubted
                ? ["7 kN stated as the vertical reaction of A: held against an estimate, found among what was tried; something else may give more."]
                : [],
            calculation.Messages.Where(one => one.Code == MessageCodes.StatedEstimate).Select(one => one.Text));
    }

    [Fact]
    public void WhereNothingMayBeAway_NothingIsSaid() => Assert.DoesNotContain(
        CalculationTests.Run(TwoBays with { Patterns = [], Stated = [new() { Support = "A", Vertical = "3.00 kN" }] }).Messages,
        one => one.Code == MessageCodes.StatedNotWorst);

    /// <summary>
    /// Thirty bays of 3 m on supports that only push, a standing load of 1 kN/m and as much that may be away: the envelope would take
    /// long at every key, so that what governs is looked for as if all could pull. The second support bears 1.1340 wL of a load
    /// that stands and 1.2189 wL of the worst pattern (three-moment equations with every bay loaded alone, added up apart from the
    /// program), together 6.804 and 7.059 kN.
    /// </summary>
    [Fact]
    public void OnALargeBeamThatMayLiftOff_ItIsAtLeastWhatIsFoundFast()
    {
        Calculation calculation = CalculationTests.Run(new BeamDocument
        {
            Spans = [.. Enumerable.Repeat(new SpanEntry { Length = "3 m" }, 30)],
            Supports =
            [
                .. Enumerable.Range(0, 31).Select(joint => new SupportEntry
                {
                    Joint = $"{joint}", Kind = joint == 0 ? "pin" : "roller", Acts = "up",
                }),
            ],
            Loads = [Standing with { Case = "dead" }, Standing with { Case = "live" }],
            Patterns = [new() { Case = "live" }],
            Combinations =
            [
                new() { Name = "both", Basis = "service", Factors = [new("dead", "1"), new("live", "1")] },
                new() { Name = "dead", Basis = "service", Factors = [new("dead", "1")] },
            ],
            Stated = [new() { Support = "B", Vertical = "6.80 kN", Combination = "both" }],
            Display = "si",
        });

        string said = Assert.Single(calculation.Messages, one => one.Code == MessageCodes.StatedNotWorst).Text;

        Assert.Equal(
            "6.80 kN stated as the vertical reaction of B: held against the loads as they stand; with what may roll or be away it comes "
                + "to at least 7.06 kN up. If the worst is stated, say extreme = \"max\".",
            said);
    }
}
