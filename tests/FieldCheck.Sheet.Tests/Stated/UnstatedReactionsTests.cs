using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Stated;

/// <summary>Pulls, thrusts and moments of which no figure speaks.</summary>
public sealed class UnstatedReactionsTests
{
    /// <summary>4 m on a pin and a roller, 2 m of overhang, 3 kN at its end: A -1.5 kN, B 4.5 kN.</summary>
    private static readonly BeamDocument Overhang = new()
    {
        Spans = [new() { Length = "4 m" }, new() { Length = "2 m" }],
        Supports = [Beams.Pin with { Acts = "both" }, Beams.Roller],
        Loads = [new() { Kind = "point", At = "end", Force = "3 kN" }],
    };

    /// <summary>The same load standing, and not standing.</summary>
    private static readonly BeamDocument TwoCombinations = Overhang with
    {
        Loads = [.. Overhang.Loads, new() { Kind = "point", At = "2 m", Force = "8 kN", Case = "dead" }],
        Combinations =
        [
            new() { Name = "empty", Factors = [new("dead", "1")] },
            new() { Name = "loaded", Factors = [new("dead", "0.1"), new("live", "1")] },
        ],
    };

    [Fact]
    public void PullThatNobodyStates_IsSaid()
    {
        Calculation calculation = CalculationTests.Run(Overhang with { Stated = [Of("B", "4.5 kN")] });

        Message message = calculation.Messages.Single(one => one.Code == "not_stated");
        Assert.Equal(new(Severity.Caution, "not_stated", "Nobody states that A must hold 1.50 kN down."), message);
        Assert.Equal(CheckStatus.DoesNotHold, calculation.Status);
    }

    [Theory]
    [InlineData("-1.5 kN")]
    [InlineData("2 kN")] // wrong, but stated: the word for that is LOW
    public void PullThatIsStated_IsNotSaidAgain(string a) =>
        Assert.Empty(Told(Overhang with { Stated = [Of("A", a), Of("B", "4.5 kN")] }));

    [Fact]
    public void FigureThatIsNotJudged_IsStatedAllTheSame() => Assert.Empty(
        Told(Overhang with { Stated = [Of("A", "-1.5 kN") with { Basis = "unknown" }, Of("B", "4.5 kN")] }));

    [Fact]
    public void NothingStatedAtAll_AsksForNothing() => Assert.Empty(Told(Overhang));

    [Fact]
    public void PushThatNobodyStates_IsWhatAnyoneExpects() =>
        Assert.Empty(Told(Beams.Simple with { Stated = [Of("A", "8 kN")] }));

    /// <summary>1 kN pushes the beam to the right, so A pushes it left; 12 kN at 2 m turn it.</summary>
    [Fact]
    public void ThrustAndMomentThatNobodyState_AreSaid() => Assert.Equal(
        ["A must push 1.00 kN left", "A must turn the beam 24.00 kNm counter-clockwise"],
        Told(Beams.Simple with
        {
            Supports = [Beams.Pin with { Kind = "fixed" }],
            Loads = [.. Beams.Simple.Loads, new() { Kind = "point", At = "2 m", Force = "1 kN", Angle = "90 deg" }],
            Stated = [Of("A", "12 kN")],
        }));

    [Theory]
    [InlineData("0.05 deg", null, 0)] // 10 N along, 12 N are as good as nothing
    [InlineData("0.1 deg", null, 1)] // 21 N
    [InlineData("0.1 deg", "30 N", 0)]
    public void WhatIsAsGoodAsNothing_IsNotAskedFor(string angle, string? tolerance, int told) => Assert.Equal(
        told,
        Told(Beams.Simple with
        {
            Loads = [Beams.Simple.Loads[0] with { Angle = angle }],
            Stated = [Of("A", "8 kN") with { Tolerance = tolerance }],
        }).Length);

    [Fact]
    public void PullUnderACombinationOfWhichNothingIsStated_IsNotAskedFor()
    {
        Assert.Empty(Told(TwoCombinations with { Stated = [Of("B", "4 kN") with { Combination = "empty" }] }));
        Assert.Equal(
            ["A must hold 1.10 kN down under loaded"],
            Told(TwoCombinations with { Stated = [Of("B", "4.9 kN") with { Combination = "loaded" }] }));
    }

    [Theory]
    [InlineData("max", 1)]
    [InlineData("min", 0)]
    public void ExtremeOfOneEnd_DoesNotSpeakOfTheOther(string extreme, int told) => Assert.Equal(
        told, Told(TwoCombinations with { Stated = [Of("A", "4 kN") with { Extreme = extreme }] }).Length);

    [Fact]
    public void PullUnderACase_NamesIt() => Assert.Equal(
        ["A must hold 1.50 kN down under case live alone"],
        Told(TwoCombinations with { Stated = [Of("B", "4.5 kN") with { Case = "live" }] }));

    private static StatedEntry Of(string support, string vertical) => new() { Support = support, Vertical = vertical };

    private static string[] Told(BeamDocument document) =>
    [
        .. CalculationTests.Run(document).Messages
            .Where(message => message.Code == "not_stated")
            .Select(message => message.Text["Nobody states that ".Length..^1]),
    ];
}
