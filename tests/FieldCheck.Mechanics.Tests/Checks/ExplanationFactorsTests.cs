using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>What other factors and own weight give under 1.2 of the permanent and 1.6 of the variable loads.</summary>
public sealed class ExplanationFactorsTests
{
    private const double More = 40;

    // On 6 m, at A and B. Permanent: own weight 0.5 kN/m, 1.5 and 1.5; 6 kN at 2 m, 4 and 2. Variable: 12 kN at 4 m, 4 and 8.
    // 3 kN of wind in the middle, 1.5 and 1.5, without a part. Computed: 1.2 x (5.5, 3.5) + 1.6 x (4, 8) = 13, 17.
    private static readonly BeamModel Model = Said.Simple(6) with
    {
        Cases =
        [
            new LoadCase("dead", [Said.Spread(0, 6, 0.5), Said.Point(2, 6)]),
            new LoadCase("live", [Said.Point(4, 12)]),
            new LoadCase("wind", [Said.Point(3, 3)]),
        ],
        Combinations = [],
    };

    private static readonly StatedSet Stated = Rough.Set(Model, More, ReactionPart.Vertical) with
    {
        Factors = [1.2, 1.6, 0],
        OwnWeight = [0],
        PermanentCases = [0],
    };

    [Fact]
    public void CommonFactors_MultiplyAllOrTheVariableLoads()
    {
        ImmutableArray<(Slip Slip, double[] Kilo)> tried = Tried(Stated);

        Assert.Equal([19.5, 25.5], tried.Of(new Slip.CommonFactor(1.5, false, false)));
        Assert.Equal([10.4, 13.6], tried.Of(new Slip.CommonFactor(1.25, true, false)));
        // 1.2 x (5.5, 3.5) = 6.6, 4.2 stay.
        Assert.Equal([16.2, 23.4], tried.Of(new Slip.CommonFactor(1.5, false, true)));
    }

    // Not so in a case that is not there all the time: there own weight alone stays.
    [Fact]
    public void OwnWeight_StaysThoughItsCaseIsVariable() => Assert.Equal(
        [18.6, 24.6], // 1.8 + 1.5 x 11.2, 1.8 + 1.5 x 15.2
        Tried(Stated with { PermanentCases = [] }).Of(new Slip.CommonFactor(1.5, false, true)));

    [Fact]
    public void FactorsOfACode_LeaveOutWhatHasNoPart() => Assert.Equal(
        [1.35 * 5.5 + 1.5 * 4, 1.35 * 3.5 + 1.5 * 8], Tried(Stated).Of(new Slip.OtherFactors(1.35, 1.5)));

    [Fact]
    public void OwnWeight_IsLeftOutWithItsFactor()
    {
        ImmutableArray<(Slip Slip, double[] Kilo)> tried = Tried(Stated);

        Assert.Equal([11.2, 15.2], tried.Of(new Slip.OwnWeightLeftOut()));
        Assert.Equal([16.8, 22.8], tried.Of(With(new Slip.OwnWeightLeftOut(), 1.5)));
    }

    [Fact]
    public void OwnWeightAlone_CanBeLeftOut() => Assert.Equal(
        [0, 0],
        Tried(Stated with { Model = Model with { Cases = [Weight(Model.Cases[0]), None, None] } }).Of(new Slip.OwnWeightLeftOut()));

    [Fact]
    public void WithoutOwnWeight_NoneIsLeftOut() =>
        Assert.DoesNotContain(new Slip.OwnWeightLeftOut(), Tried(Stated with { OwnWeight = [] }).Select(one => one.Slip));

    [Fact]
    public void OwnWeightWithoutAPart_IsNotLeftOut() => Assert.DoesNotContain(
        new Slip.OwnWeightLeftOut(), Tried(Stated with { Factors = [0, 1.6, 0] }).Select(one => one.Slip));

    // 1 kN/m besides is 3 kN at A and B, with the factor of the permanent loads, and with what multiplies that.
    [Fact]
    public void OwnWeightPutIn_GoesWithThePermanentLoads()
    {
        ImmutableArray<(Slip Slip, double[] Kilo)> tried = Tried(Stated with { UncountedWeight = [1000] });

        Assert.Equal([16.6, 20.6], tried.Of(new Slip.OwnWeightPutIn()));
        Assert.Equal([24.9, 30.9], tried.Of(With(new Slip.OwnWeightPutIn(), 1.5)));
    }

    [Fact]
    public void Slips_CostByWhatGoesWrongAtOnce()
    {
        ExplanationBeam beam = Rough.Beam(Stated);
        ExplanationList found = new(beam.Fit);
        new ExplanationFactors(beam, found).Try();

        ImmutableArray<Explanation> ranked = found.Ranked();

        Assert.Equal(new Slip.OwnWeightLeftOut(), Assert.Single(ranked, one => one.Cost == 1).Slip);
        Assert.All(ranked, one => Assert.Equal(one.Slip is Slip.OwnWeightLeftOut ? 1 : one.Slip is Slip.Together ? 4 : 2, one.Cost));
    }

    private static LoadCase None => new("none", []);

    private static LoadCase Weight(LoadCase dead) => dead with { Loads = [dead.Loads[0]] };

    private static Slip.Together With(Slip own, double factor) => new(own, new Slip.CommonFactor(factor, false, false));

    private static ImmutableArray<(Slip Slip, double[] Kilo)> Tried(StatedSet stated) =>
        Rough.Tried(stated, (beam, found) => new ExplanationFactors(beam, found).Try());
}
