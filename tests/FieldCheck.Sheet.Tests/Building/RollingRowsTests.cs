using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class RollingRowsTests
{
    private static readonly RollingEntry Truck = new()
    {
        Label = " Hand truck ",
        Case = "truck",
        Impact = "30 %",
        Axles = [new() { Offset = "1.2 m", Force = "300 kg" }, new() { Offset = "0 m", Force = "2 kN" }],
    };

    [Fact]
    public void RollingLoad_IsReadWithItsAxlesInOrder()
    {
        RollingLoad rolling = Assert.Single(Beams.Built(Beams.Simple with { Rolling = [Truck] }).Rolling);

        Assert.Equal("Hand truck", rolling.Label);
        Assert.Equal(0.3, rolling.Impact, 1e-15);
        Assert.Equal([new Axle(0, 2000), new Axle(1.2, 300 * 9.80665)], rolling.Axles.AsEnumerable());
    }

    [Fact]
    public void OffsetsCountedFromElsewhere_AreCountedFromTheFirstAxle()
    {
        RollingEntry shifted = Truck with
        {
            Axles = [new() { Offset = "3 m", Force = "1 kN" }, new() { Offset = "1 m", Force = "2 kN" }],
        };

        Assert.Equal(
            [new Axle(0, 2000), new Axle(2, 1000)],
            Beams.Built(Beams.Simple with { Rolling = [shifted] }).Rolling[0].Axles.AsEnumerable());
    }

    [Fact]
    public void CaseThatOnlyRolls_StandsInTheModelWithoutLoads()
    {
        BuiltBeam beam = Beams.Built(Beams.Simple with
        {
            Rolling = [Truck],
            Combinations = [new() { Name = "use", Factors = [new("live", "1"), new("truck", "1.5")] }],
        });

        Assert.Equal(["live", "truck"], beam.Model.Cases.Select(one => one.Name));
        Assert.Empty(beam.Model.Cases[1].Loads);
        Assert.Equal(1, beam.Rolling[0].Case);
        Assert.Equal([1.0, 1.5], beam.Model.Combinations[0].Factors.AsEnumerable());
        Assert.True(beam.Varies);
    }

    [Fact]
    public void RollingLoadWithoutLabelOrCase_HasItsNumberAndIsLive()
    {
        RollingEntry plain = new() { Axles = [new() { Offset = "0 m", Force = "1 kN" }] };
        BuiltBeam beam = Beams.Built(Beams.Simple with { Rolling = [plain, plain] });

        Assert.Equal(["rolling load 1", "rolling load 2"], beam.Rolling.Select(one => one.Label));
        Assert.All(beam.Rolling, one => Assert.Equal((0, 0.0), (one.Case, one.Impact)));
    }

    [Fact]
    public void Pattern_IsOfACaseThatHasLoads()
    {
        BuiltBeam beam = Beams.Built(Beams.Simple with { Patterns = [new() { Case = "snow" }, new() { Case = "live" }] });

        Assert.Equal(["live", "snow"], beam.Model.Cases.Select(one => one.Name));
        Assert.Equal([0], beam.PatternCases.AsEnumerable());
        Assert.False(Beams.Built(Beams.Simple with { Patterns = [new() { Case = "snow" }] }).Varies);
    }

    [Fact]
    public void CaseThatNothingKnows_IsTold_OfALoadNearlyIt() => Assert.Equal(
        [
            "combination[1].factors.trucks: no load stands in a case 'trucks', and it is none of the usual ones: "
                + "did you mean truck?",
        ],
        Beams.Problems(Beams.Simple with
        {
            Rolling = [Truck],
            Combinations = [new() { Name = "use", Factors = [new("trucks", "1")] }],
        }));
}
