using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Findings;

/// <summary>What may be within the plus or minus and is not so at the figures typed; by hand.</summary>
public sealed class BandFindingsTests
{
    /// <summary>
    /// 4 m and an overhang of 1.5 m, 1.2 kN/m between the supports and 6 kN at the tip: A gives (9.6 - 9.0) / 4 = 0.15 kN.
    /// </summary>
    private static readonly BeamDocument Overhang = new()
    {
        Spans = [new() { Length = "4 m" }, new() { Length = "1.5 m" }],
        Supports = [Beams.Pin, Beams.Roller],
        Loads =
        [
            new() { Kind = "point", At = "end", Force = "6 kN ± 12 %" },
            new() { Kind = "distributed", To = "B", Intensity = "1.2 kN/m ± 10 %" },
        ],
    };

    // At worst (1.2 · 0.9 · 8 - 6 · 1.12 · 1.5) / 4 = -0.36 kN; the loads by themselves move A by 0.27 and by 0.24 kN.
    [Fact]
    public void SupportPulledOnlyWithinWhatWasMeasured_IsAskedAfter()
    {
        Calculation calculation = CalculationTests.Run(Overhang);

        Assert.Equal(
            new(
                Severity.Caution,
                "uplift_within",
                "A may have to hold 0.36 kN down within what was measured (12 % of load 1, then 10 % of load 2): is it tied?"),
            calculation.Messages.Single());
        Assert.Equal(CheckStatus.DoesNotHold, calculation.Status);
    }

    [Fact]
    public void SupportThatIsSaidToHold_IsANote()
    {
        Calculation calculation = CalculationTests.Run(
            Overhang with { Supports = [Beams.Pin with { Acts = "both" }, Beams.Roller] });

        Assert.Equal(
            "A may have to hold 0.36 kN down within what was measured (12 % of load 1, then 10 % of load 2), as written.",
            calculation.Messages.Single(message => message.Code == "holds_down").Text);
        Assert.Equal(CheckStatus.Holds, calculation.Status);
    }

    // 7 kN: A holds (10.5 - 9.6) / 4 = 0.225 kN, and (7 · 1.12 · 1.5 - 1.2 · 0.9 · 8) / 4 = 0.78 kN at worst.
    [Fact]
    public void SupportPulledAlready_IsSaidToBePulledFurther() => Assert.Equal(
        "A must hold 0.225 kN down: is it tied? Within what was measured up to 0.78 kN (12 % of load 1, then 10 % of load 2).",
        Texts(With("7 kN ± 12 %"), "uplift").Single());

    [Fact]
    public void SupportThatStaysPushed_IsNotSpokenOf() => Assert.Empty(CalculationTests.Run(With("4 kN ± 12 %")).Messages);

    // 4 kN at the tip of a roller on 30 deg: V = (9.6 - 4 · 1.5 · s) / 4 with s = 1 ± 80 %: -0.3 kN, over cos 30 along the normal.
    [Fact]
    public void PullOffASlope_IsSaidAlongItsNormal() => Assert.Equal(
        "A may have to hold 0.346 kN along the normal of its surface within what was measured (80 % of load 1): is it tied?",
        Texts(
            With("4 kN ± 80 %") with
            {
                Supports = [new() { Kind = "roller", Joint = "0", Surface = "30 deg" }, new() { Kind = "pin", Joint = "1" }],
                Loads = [With("4 kN ± 80 %").Loads[0], new() { Kind = "distributed", To = "B", Intensity = "1.2 kN/m" }],
            },
            "uplift_within").Single());

    [Fact]
    public void BeamThatTipsWithinWhatWasMeasured_IsSaidSo_AndDoesNotHold()
    {
        Calculation calculation = CalculationTests.Run(PushedOnly(Overhang) with
        {
            Combinations =
            [
                new() { Name = "half", Factors = [new("live", "0.5")] },
                new() { Name = "site", Factors = [new("live", "1")] },
            ],
        });

        // Both combinations tip beyond the same load; the first is named.
        Assert.Equal(
            new(
                Severity.Caution,
                "tips_within",
                "Within what was measured the beam tips under half: with +12 % of load 1. The bands are without that."),
            calculation.Messages.Single(message => message.Code == "tips_within"));
        Assert.Equal(CheckStatus.DoesNotHold, calculation.Status);
    }

    // 97 % of 9.6 is 9.312, and 6.24 · 1.5 is 9.36.
    [Fact]
    public void BeamThatTipsWithTwoInputsOff_NamesBoth() => Assert.Equal(
        "Within what was measured the beam tips: with +4 % of load 1 and -3 % of load 2. The bands are without that.",
        Texts(
            PushedOnly(Overhang with
            {
                Loads =
                [
                    new() { Kind = "point", At = "end", Force = "6 kN ± 4 %" },
                    new() { Kind = "distributed", To = "B", Intensity = "1.2 kN/m ± 3 %" },
                ],
            }),
            "tips_within").Single());

    // Two spans of 4 m: the far end gives (7 · 1.05 - 7) / 4 kN up, and lets go below 1 kN/m (three moments).
    [Fact]
    public void SupportThatLetsGoWithinWhatWasMeasured_IsSaidSo_AndHolds()
    {
        Calculation calculation = CalculationTests.Run(new BeamDocument
        {
            Spans = [new() { Length = "4 m" }, new() { Length = "4 m" }],
            Supports = [Beams.Pin, Beams.Roller, new() { Kind = "roller", Joint = "2", Acts = "up" }],
            Loads =
            [
                new() { Kind = "distributed", To = "B", Intensity = "7 kN/m" },
                new() { Kind = "distributed", From = "B", Intensity = "1.05 kN/m ± 10 %" },
            ],
        });

        Assert.Equal(
            "C lifts off within what was measured: with -10 % of load 2 it carries nothing.",
            calculation.Messages.Single(message => message.Code == "lifts_off_within").Text);
        Assert.Equal(CheckStatus.Holds, calculation.Status);
    }

    // At 5.99 m the beam ends before its support.
    [Fact]
    public void PlaceThatComesToLieOffTheBeam_IsSaidToBeLeftOut()
    {
        Calculation calculation = CalculationTests.Run(Beams.Simple with
        {
            Spans = [new() { Length = "6 m ± 1 cm" }],
            Supports = [Beams.Pin, new() { Kind = "roller", At = "6 m" }],
        });

        Assert.Equal(
            new(
                Severity.Caution,
                "band_not_whole",
                "Within what was measured no beam is left: with -1 cm in the length of span 1. The bands are without that."),
            calculation.Messages.Single());
        Assert.Equal(CheckStatus.Holds, calculation.Status);
    }

    [Fact]
    public void WithALoadThatRolls_TheAnswerIsSaidToBeWithoutIt() => Assert.Equal(
        "A may have to hold 0.36 kN down within what was measured, with all loads on and nothing rolling (12 % of load 1, then "
            + "10 % of load 2): is it tied?",
        Texts(
            Overhang with
            {
                Spans = [new() { Length = "4 m" }, new() { Length = "1.5 m" }],
                Combinations = [new() { Name = "a", Factors = [new("live", "1")] }],
                Rolling = [new() { Label = "Cart", Case = "snow", Axles = [new() { Offset = "0 m", Force = "1 kN" }] }],
            },
            "uplift_within").Single());

    [Fact]
    public void AtEveryKey_WhatTakesLongIsLeftOut_AndTheRecordHasIt()
    {
        BeamDocument large = Overhang with
        {
            Tolerance = new() { Load = "1 %" },
            Loads = [.. Overhang.Loads, .. Enumerable.Repeat(new LoadEntry { Kind = "point", At = "B", Force = "1 kN" }, 90)],
        };

        Calculation followed = CalculationTests.Follow(large);

        Assert.Equal("not_followed", followed.Messages.Single().Code);
        Assert.Equal("uplift_within", followed.InFull.Messages.Single().Code);
        Calculation small = CalculationTests.Follow(Overhang);
        Assert.Equal("uplift_within", small.Messages.Single().Code);
        Assert.Same(small, small.InFull);
    }

    private static BeamDocument With(string force) =>
        Overhang with { Loads = [new() { Kind = "point", At = "end", Force = force }, Overhang.Loads[1]] };

    private static BeamDocument PushedOnly(BeamDocument document) =>
        document with { Supports = [Beams.Pin with { Acts = "up" }, Beams.Roller with { Acts = "up" }] };

    private static string[] Texts(BeamDocument document, string code) =>
    [
        .. CalculationTests.Run(document).Messages
            .Where(message => message.Code == code)
            .Select(message => message.Text),
    ];
}
