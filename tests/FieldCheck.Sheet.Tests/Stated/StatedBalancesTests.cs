using FieldCheck.Mechanics.Checks;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Stated;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Stated;

/// <summary>Which figures make up a set that has to balance, and what it lacks.</summary>
public sealed class StatedBalancesTests
{
    [Fact]
    public void WholeSet_IsBalancedAboutItsFirstSupport()
    {
        StatedBalance stated = Balances([Of("A", "7 kN"), Of("B", "2 kN")]).Single();

        // 12 kN at 2 m of 6 m; the figures lack 3 kN at 4 m.
        Assert.Equal("A", stated.About);
        Assert.Equal("all loads", stated.Against.Name);
        Assert.Equal(9000, stated.Balance.Forces.Stated, 1e-9);
        Assert.Equal(12000, stated.Balance.Forces.Loads, 1e-9);
        Assert.Equal(500 + 160 + 500 + 80, stated.Balance.Forces.Allowed, 1e-9);
        Assert.False(stated.Balance.Closes);
        Assert.Equal(3000, stated.Balance.Lacking!.Value.Down, 1e-6);
        Assert.Equal(4, stated.Balance.Lacking.Value.Position, 1e-9);
    }

    [Fact]
    public void SetWithASupportMissing_IsNone() => Assert.Empty(Balances([Of("A", "8 kN")]));

    [Fact]
    public void ExtremesOfSeveral_DoNotStandTogether() => Assert.Empty(Balances(
        [Of("A", "8 kN") with { Extreme = "max" }, Of("B", "4 kN") with { Extreme = "max" }],
        [
            new() { Name = "one", Factors = [new("live", "1")] }, new() { Name = "half", Factors = [new("live", "0.5")] },
        ]));

    [Fact]
    public void TwoCombinations_AreTwoSets() => Assert.Equal(
        ["one True", "half False"],
        Balances(
            [
                Of("A", "8 kN") with { Combination = "one" },
                Of("A", "4 kN") with { Combination = "half" },
                Of("B", "4 kN") with { Combination = "one" },
                Of("B", "4.0 kN") with { Combination = "half" },
            ],
            [
                new() { Name = "one", Factors = [new("live", "1")] },
                new() { Name = "half", Factors = [new("live", "0.5")] },
            ])
            .Select(stated => $"{stated.Against.Name} {stated.Balance.Closes}"));

    [Fact]
    public void TwoSourcesForOneSupport_AreTwoSets() => Assert.Equal(
        ["rev A: False", "rev B: True"],
        Balances(
            [
                Of("A", "8.0 kN") with { Source = "rev A" }, Of("B", "2.0 kN") with { Source = "rev A" },
                Of("A", "8.0 kN") with { Source = "rev B" }, Of("B", "4.0 kN") with { Source = "rev B" },
                Of("A", "9.0 kN") with { Source = "drawing" },
            ])
            .Select(stated => $"{stated.Source}: {stated.Balance.Closes}"));

    [Fact]
    public void CaseAlone_IsItsOwnSet()
    {
        StatedBalance stated = Balances([Of("A", "8 kN") with { Case = "live" }, Of("B", "4 kN") with { Case = "live" }])
            .Single();

        Assert.True(stated.Against.IsCase);
        Assert.True(stated.Balance.Closes);
    }

    [Theory]
    [InlineData(null, null)]
    [InlineData("24 kNm", true)]
    [InlineData("-24 kNm", false)]
    public void MomentOfAFixedEnd_IsPartOfTheSet(string? moment, bool? closes)
    {
        BeamDocument cantilever = Beams.Simple with
        {
            Supports = [Beams.Pin with { Kind = "fixed" }],
            Stated = [new() { Support = "A", Vertical = "12 kN", Moment = moment }],
        };

        ReactionBalance balance = CalculationTests.Run(cantilever).StatedBalances.Single().Balance;

        Assert.True(balance.Forces.Closes);
        Assert.Equal(closes, balance.Moments?.Closes);
    }

    private static StatedEntry Of(string support, string vertical) => new() { Support = support, Vertical = vertical };

    private static StatedBalance[] Balances(StatedEntry[] rows, params CombinationEntry[] combinations) =>
    [
        .. CalculationTests
            .Run(Beams.Simple with { Stated = [.. rows], Combinations = [.. combinations] }).StatedBalances,
    ];
}
