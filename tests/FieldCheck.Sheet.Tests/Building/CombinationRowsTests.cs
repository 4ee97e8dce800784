using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class CombinationRowsTests
{
    private static readonly LoadEntry Dead = new() { Kind = "point", At = "2 m", Force = "1 kN", Case = "dead" };
    private static readonly LoadEntry Live = new() { Kind = "point", At = "3 m", Force = "2 kN" };
    private static readonly BeamDocument Loaded = Beams.With(Dead, Live);

    [Fact]
    public void WithoutAny_AllLoadsStandAsTheyAre()
    {
        Combination combination = Beams.Model(Loaded).Combinations.Single();

        Assert.Equal("all loads", combination.Name);
        Assert.Equal(CombinationBasis.Service, combination.Basis);
        Assert.Equal<double>([1, 1], combination.Factors);
    }

    [Fact]
    public void Factors_StandInTheOrderOfTheCases()
    {
        Combination combination = Beams.Model(Loaded with
        {
            Combinations =
            [
                new() { Name = "strength", Basis = "factored", Factors = [new("live", "1.6"), new("dead", "1.2")] },
            ],
        }).Combinations.Single();

        Assert.Equal(CombinationBasis.Factored, combination.Basis);
        Assert.Equal<double>([1.2, 1.6], combination.Factors);
    }

    [Fact]
    public void CaseNotNamed_CountsNothing() => Assert.Equal<double>(
        [0, 1],
        Beams.Model(Loaded with { Combinations = [new() { Name = "l", Factors = [new("live", "1")] }] })
            .Combinations.Single().Factors);

    [Fact]
    public void UsualCaseWithoutLoads_MayBeNamed() => Assert.Empty(Beams.Problems(
        Loaded with { Combinations = [new() { Name = "s", Factors = [new("snow", "1"), new("roof_live", "0.5")] }] }));

    [Fact]
    public void CaseThatOnlyARollingLoadHas_MayBeNamed() => Assert.Empty(Beams.Problems(Loaded with
    {
        Rolling = [new() { Case = "truck", Axles = [new() { Offset = "0 m", Force = "4 kN" }] }],
        Combinations = [new() { Name = "s", Factors = [new("truck", "1")] }],
    }));

    public static TheoryData<CombinationEntry, string> Wrong => new()
    {
        { new() { Factors = [new("live", "1")] }, "combination[1].name: a combination needs a name, as \"service\"" },
        {
            new() { Name = "s" },
            "combination[1].factors: a combination needs the factor of at least one case, as { dead = 1.0, live = 1.0 }"
        },
        {
            new() { Name = "s", Factors = [new("lives", "1")] },
            "combination[1].factors.lives: no load stands in a case 'lives', and it is none of the usual ones: "
                + "did you mean live?"
        },
        {
            new() { Name = "s", Factors = [new("crane", "1")] },
            "combination[1].factors.crane: no load stands in a case 'crane', and it is none of the usual ones"
        },
        {
            new() { Name = "s", Factors = [new("live", "1"), new("live", "2")] },
            "combination[1].factors.live: another figure is called 'live' too"
        },
        {
            new() { Name = "s", Basis = "ultimate", Factors = [new("live", "1")] },
            "combination[1].basis: expected service or factored, found 'ultimate'"
        },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void WrongCombination_IsTold(CombinationEntry combination, string problem) =>
        Assert.Equal([problem], Beams.Problems(Loaded with { Combinations = [combination] }));

    [Fact]
    public void TwoOfOneName_AreTold()
    {
        CombinationEntry one = new() { Name = "service", Factors = [new("live", "1")] };

        Assert.Equal(
            ["combination[2].name: another combination is called 'service' too"],
            Beams.Problems(Loaded with { Combinations = [one, one] }));
    }

    [Fact]
    public void FactorThatIsNoNumber_IsToldAtItsKey() => Assert.Equal(
        ["combination[1].factors.live"],
        Beams.ProblemKeys(Loaded with { Combinations = [new() { Name = "s", Factors = [new("live", "1 kN")] }] }));
}
