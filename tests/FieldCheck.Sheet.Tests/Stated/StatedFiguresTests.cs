using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Stated;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Stated;

/// <summary>What each stated figure is held against, and what it comes to.</summary>
public sealed class StatedFiguresTests
{
    /// <summary>4 m on a pin and a roller. dead 10 kN at 1 m: A 7.5, B 2.5; live 6 kN at 3 m: A 1.5, B 4.5.</summary>
    private static readonly BeamDocument TwoBases = new()
    {
        Spans = [new() { Length = "4 m" }],
        Supports = [Beams.Pin, Beams.Roller],
        Loads =
        [
            new() { Kind = "point", At = "1 m", Force = "10 kN", Case = "dead" },
            new() { Kind = "point", At = "3 m", Force = "6 kN", Case = "live" },
        ],
        Combinations =
        [
            new() { Name = "dead", Factors = [new("dead", "1.0")] },
            new() { Name = "both", Factors = [new("dead", "1.0"), new("live", "1.0")] },
            new() { Name = "strength", Basis = "factored", Factors = [new("dead", "1.2"), new("live", "1.6")] },
        ],
    };

    private static readonly BeamDocument OnlyPushes = TwoBases with
    {
        Supports = [Beams.Pin with { Acts = "up" }, Beams.Roller with { Acts = "up" }],
    };

    [Theory]
    [InlineData("both", null, null, null, 9000, "both", null)]
    [InlineData("both", null, null, "service", 9000, "both", null)]
    [InlineData("both", null, "max", null, 9000, "both", null)]
    [InlineData("strength", null, null, "factored", 11400, "strength", null)]
    [InlineData(null, null, "max", "service", 9000, "both", "max")]
    [InlineData(null, null, "min", "service", 7500, "dead", "min")]
    [InlineData(null, null, "max", "factored", 11400, "strength", null)] // the only one
    [InlineData(null, null, null, "factored", 11400, "strength", null)]
    [InlineData(null, "live", null, null, 1500, "live", null)]
    [InlineData(null, "dead", null, "service", 7500, "dead", null)]
    public void Figure_IsHeldAgainstWhatItIsFor(
        string? combination, string? loadCase, string? extreme, string? basis, double computed, string name, string? end)
    {
        StatedFigure figure = One(TwoBases, new()
        {
            Combination = combination,
            Case = loadCase,
            Extreme = extreme,
            Basis = basis,
        });

        Assert.Equal(computed, figure.Comparison!.Value.Computed, 1e-9);
        Assert.Equal(name, figure.Against!.Name);
        Assert.Equal(loadCase is not null, figure.Against.IsCase);
        Assert.Equal(end, figure.Against.Extreme);
        Assert.Equal("", figure.Reason);
    }

    [Theory]
    [InlineData(null, null, null, "unknown", "its basis is unknown; ask whether it is service or factored")]
    [InlineData("both", null, null, "unknown", "its basis is unknown; ask whether it is service or factored")]
    [InlineData(null, "dead", null, "unknown", "its basis is unknown; ask whether it is service or factored")]
    [InlineData("both", null, null, "factored", "its basis is factored, and combination both is service")]
    [InlineData("strength", null, null, "service", "its basis is service, and combination strength is factored")]
    [InlineData(null, "dead", null, "factored", "its basis is factored, and a case alone carries no factors")]
    [InlineData(
        null, null, null, null, "its basis is not written, and there are service combinations and factored ones")]
    [InlineData(
        null, null, "max", null, "its basis is not written, and there are service combinations and factored ones")]
    [InlineData(
        null, null, null, "service", "say what it is for: combination dead or both, a case, or extreme max or min")]
    [InlineData(null, "snow", null, null, "no load stands in case snow")]
    public void FigureThatMayBeComparedWithNothing_IsNotJudged(
        string? combination, string? loadCase, string? extreme, string? basis, string reason)
    {
        StatedFigure figure = One(TwoBases, new()
        {
            Combination = combination,
            Case = loadCase,
            Extreme = extreme,
            Basis = basis,
        });

        Assert.Equal(ReactionVerdict.NotJudged, figure.Verdict);
        Assert.Equal(reason, figure.Reason);
        Assert.Null(figure.Comparison);
        Assert.Null(figure.Against);
    }

    [Fact]
    public void NoCombinationOfItsBasis_IsNotJudged() => Assert.Equal(
        "there is no factored combination", One(Beams.Simple, new() { Basis = "factored" }).Reason);

    [Fact]
    public void OnlyOneCombination_NeedsNoName()
    {
        StatedFigure figure = One(Beams.Simple, new() { Vertical = "8 kN" });

        Assert.Equal("all loads", figure.Against!.Name);
        Assert.Equal(CombinationBasis.Service, figure.Against.Basis);
        Assert.Equal(ReactionVerdict.Agrees, figure.Verdict);
    }

    [Fact]
    public void BeamThatCanMove_LeavesItsFiguresUnjudged() => Assert.Equal(
        "the beam can move", One(TwoBases with { Supports = [Beams.Pin] }, new() { Combination = "both" }).Reason);

    /// <summary>Supports that only push have no answers that add up; a case on which they all touch has one.</summary>
    [Fact]
    public void CaseOnSupportsThatOnlyPush_IsSolvedAlone()
    {
        Assert.Equal(1500, One(OnlyPushes, new() { Case = "live" }).Comparison!.Value.Computed, 1e-9);
        Assert.Equal(
            "under case live alone the beam does not stand",
            One(WithLive(OnlyPushes, "-1 kN"), new() { Case = "live" }).Reason);
        Assert.Equal(
            "case live alone cannot be told from the settlements where a support acts one way only",
            One(
                OnlyPushes with { Supports = OnlyPushes.Supports.SetItem(0, Sunk(OnlyPushes.Supports[0])) },
                new() { Case = "live" }).Reason);
    }

    /// <summary>Two spans; the live load stands on the right one and lifts the beam off A.</summary>
    [Fact]
    public void CaseThatLiftsTheBeamOff_HasNoShareOfItsOwn() => Assert.Equal(
        "under case live alone A lets go, so that the case has no share of its own in a combination",
        One(
            Beams.TwoSpans with
            {
                Supports = Beams.TwoSpans.Supports.SetItem(0, Beams.Pin with { Acts = "up", Kind = "roller" }),
                Loads =
                [
                    new() { Kind = "distributed", Intensity = "2 kN/m", Case = "dead" },
                    new() { Kind = "point", At = "mid 2", Force = "5 kN" },
                ],
            },
            new() { Case = "live" }).Reason);

    [Fact]
    public void CaseAlongABeamOnRollers_IsNotJudged() => Assert.Equal(
        "nothing holds the beam lengthways against case wind alone",
        One(
            TwoBases with
            {
                Supports = [Beams.Pin with { Kind = "roller" }, Beams.Roller],
                Loads =
                [
                    .. TwoBases.Loads,
                    new() { Kind = "point", At = "1 m", Force = "1 kN", Angle = "90 deg", Case = "wind" },
                ],
            },
            new() { Case = "wind" }).Reason);

    /// <summary>9 kN is computed, 16 kN stand on the beam.</summary>
    [Theory]
    [InlineData("8.7 kN", null, 230)] // half of 0.1 kN, 2 % of 9 kN
    [InlineData("8.70 kN", "5 %", 455)]
    [InlineData("8.70 kN", "0.25 kN", 255)]
    [InlineData("8700 N", "0 %", 16.5)] // 0.1 % of 16 kN
    [InlineData("8 1/2 kN", "1 %", 90)] // a fraction is not widened
    [InlineData("8 kN + 0.7 kN", "1 %", 90)] // nor is a sum
    public void AllowedDifference_IsThatOfTheRow(string vertical, string? tolerance, double allowed) => Assert.Equal(
        allowed,
        One(TwoBases, new() { Vertical = vertical, Tolerance = tolerance, Combination = "both" })
            .Comparison!.Value.Allowed,
        1e-9);

    /// <summary>Fixed at both ends, 6 m, 2 kN/m: 6 kN m at the ends, 12 kN in all.</summary>
    [Theory]
    [InlineData("6.0 kNm", null, 50 + 120)]
    [InlineData("6 kNm + 0 kNm", "0 %", 6)] // 0.1 % of the greatest moment
    [InlineData("6 kNm + 0 kNm", "0.5 kN", 120)] // a force says nothing of a moment
    public void MomentsAreHeldToTheirOwnScale(string moment, string? tolerance, double allowed)
    {
        BeamDocument document = Beams.Simple with
        {
            Supports = [Beams.Pin with { Kind = "fixed" }, Beams.Roller with { Kind = "fixed" }],
            Loads = [new() { Kind = "distributed", Intensity = "2 kN/m" }],
            Stated = [new() { Support = "A", Moment = moment, Tolerance = tolerance }],
        };

        ReactionComparison compared = CalculationTests.Run(document).Stated.Single().Comparison!.Value;

        Assert.Equal(6000, compared.Computed, 1e-6);
        Assert.Equal(allowed, compared.Allowed, 1e-6);
    }

    [Fact]
    public void OneRow_GivesEachComponentInTurn()
    {
        BeamDocument document = Beams.Simple with
        {
            Stated =
            [
                new() { Support = " b ", Vertical = "4 kN" },
                new() { Support = "A", Moment = "0 kNm", Horizontal = "1 kN", Vertical = "8 kN", Source = "sheet 4" },
            ],
        };

        Assert.Equal(
            ["0 B vertical AGREES", "1 A vertical AGREES", "1 A horizontal HIGH", "1 A moment AGREES"],
            CalculationTests.Run(document).Stated.Select(figure =>
                $"{figure.Row} {figure.Label} {figure.Component.Name} {VerdictWords.Of(figure.Verdict)}"));
    }

    [Fact]
    public void ContractExample_Agrees()
    {
        // A 1.964 kip; half of 0.1 kip and 2 % of it are 0.089 kip.
        StatedFigure figure = CalculationTests.Run(CalculationTests.Example).Stated.Single();

        Assert.Equal(1.964, figure.Comparison!.Value.Computed / CalculationTests.Kip, 0.0005);
        Assert.Equal(0.08928, figure.Comparison.Value.Allowed / CalculationTests.Kip, 0.00001);
        Assert.Equal(ReactionVerdict.Agrees, figure.Verdict);
    }

    private static StatedFigure One(BeamDocument document, StatedEntry row) => CalculationTests
        .Run(document with { Stated = [row with { Support = "A", Vertical = row.Vertical ?? "8 kN" }] })
        .Stated.Single();

    private static SupportEntry Sunk(SupportEntry support) => support with { Settlement = "2 mm" };

    private static BeamDocument WithLive(BeamDocument document, string force) => document with
    {
        Loads = document.Loads.SetItem(1, document.Loads[1] with { Force = force }),
    };
}
