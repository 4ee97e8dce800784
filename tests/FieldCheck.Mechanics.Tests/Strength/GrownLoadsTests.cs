using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Loads of chosen cases times a factor, written down load by load.</summary>
public sealed class GrownLoadsTests
{
    private static readonly StrengthProblem Problem = Checked
        .Problem(Checked.Simple(4) with
        {
            Cases =
            [
                new LoadCase("dead", [Checked.Uniform(0, 4, 100)]),
                new LoadCase("live", [new Load.Point(1, -300, 50), new Load.Couple(2, 40, Side.Right), new Load.Distributed(1, 3, -100, 200)]),
                new LoadCase("pull", [new Load.Distributed(0, 1, 2, 4, ActsAlong: true)]),
            ],
            Combinations = [new Combination("all", CombinationBasis.Service, [1, 1, 1])],
        })
        .WithPattern(1)
        .WithRolling(
            new RollingLoad("cart", 1, [new Axle(0, 500), new Axle(1.5, 700)], 0.25), new RollingLoad("drum", 0, [new Axle(0, 900)], 0));

    [Fact]
    public void LoadsOfTheCasesChosen_AreMultiplied()
    {
        EnvelopeProblem grown = GrownLoads.Of(Problem, [false, true, true], 3).Beam;

        Assert.Equal(Problem.Beam.Model.Cases[0], grown.Model.Cases[0]);
        Assert.Equal(
            [new Load.Point(1, -900, 150), new Load.Couple(2, 120, Side.Right), new Load.Distributed(1, 3, -300, 600)],
            grown.Model.Cases[1].Loads.AsEnumerable());
        Assert.Equal([new Load.Distributed(0, 1, 6, 12, ActsAlong: true)], grown.Model.Cases[2].Loads.AsEnumerable());
        Assert.Equal([1], grown.PatternCases.AsEnumerable());
    }

    [Fact]
    public void RollingLoadsOfTheCasesChosen_AreMultiplied()
    {
        EnvelopeProblem grown = GrownLoads.Of(Problem, [false, true, true], 3).Beam;

        Assert.Equal(("cart", 1, 0.25), (grown.Rolling[0].Label, grown.Rolling[0].Case, grown.Rolling[0].Impact));
        Assert.Equal([new Axle(0, 1500), new Axle(1.5, 2100)], grown.Rolling[0].Axles.AsEnumerable());
        Assert.Equal(Problem.Beam.Rolling[1], grown.Rolling[1]);
    }

    [Fact]
    public void OneMorePoint_StandsInItsCase() => Assert.Equal(
        [new Load.Distributed(0, 4, 100, 100), new Load.Point(2, 70)],
        GrownLoads.WithPoint(Problem, 2, 0, 70).Beam.Model.Cases[0].Loads.AsEnumerable());

    /// <summary>400 of the dead load, 300 and (100 + 200)/2·2 of the live one, (2 + 4)/2·1 along, 500 + 700 + 900 on wheels.</summary>
    [Fact]
    public void Size_CountsEveryForceWhicheverWayItActs() => Assert.Equal(400 + 600 + 3 + 2100, GrownLoads.SizeOf(Problem), 1e-9);
}
