using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Places and lengths of one load in another unit; 1 m is 3.28084 ft, 1 ft is 12 in.</summary>
public sealed class ExplanationLoadUnitsTests
{
    // 12 kN at x of 6 m: B 2x, A 12 less that. Beyond the end nothing can stand; at the end it can.
    [Fact]
    public void PointLoad_StandsElsewhereOnTheBeam()
    {
        ImmutableArray<(Slip Slip, double[] Kilo)> tried = Places(Said.Simple(6, Said.Point(0.5, 12)));

        Assert.Equal(4, tried.Length);
        Assert.Equal([8.719, 3.281], tried.Of(Place(UnitMixUp.FootAndMetre, true)));
        Assert.Equal([11.695, 0.305], tried.Of(Place(UnitMixUp.FootAndMetre, false)));
        Assert.Equal([0, 12], tried.Of(Place(UnitMixUp.InchAndFoot, true)));
        Assert.Equal([11.917, 0.083], tried.Of(Place(UnitMixUp.InchAndFoot, false)));
    }

    public static TheoryData<Load> NearTheEnd() => new()
    {
        Said.Point(5, 12), new Load.Couple(5, 6000), Said.Spread(5, 5.5, 2),
    };

    [Theory]
    [MemberData(nameof(NearTheEnd))]
    public void LoadNearTheEnd_CanOnlyBeFurtherIn(Load load) => Assert.Equal(
        [Place(UnitMixUp.FootAndMetre, false), Place(UnitMixUp.InchAndFoot, false)],
        Places(Said.Simple(6, load)).Select(one => one.Slip).OfType<Slip.PlaceUnits>().OrderBy(one => one.Units));

    // Two spans of 3 m, 6 kNm at 0.25 m; at 3 m it turns both spans alike: 6 kNm / 6 m up at A and down at C.
    [Fact]
    public void Couple_StandsElsewhereOnTheBeam() => Assert.Equal(
        [1, 0, -1],
        Places(Said.On([3, 3], [0, 3, 6], new Load.Couple(0.25, 6000))).Of(Place(UnitMixUp.InchAndFoot, true)));

    // 4 kN/m from 3 to 6 m: 12 kN at 4.5 m. From 0.25 m over 12 times 0.25 m: 12 kN at 1.75 m.
    [Fact]
    public void SpreadLoad_IsStretchedFromTheEndOfTheBeamOrFromItsOwn()
    {
        ImmutableArray<(Slip Slip, double[] Kilo)> tried = Places(Said.Simple(6, Said.Spread(0.25, 0.5, 4)));

        Assert.Equal([3, 9], tried.Of(Place(UnitMixUp.InchAndFoot, true)));
        Assert.Equal([8.5, 3.5], tried.Of(new Slip.StretchUnits(0, UnitMixUp.InchAndFoot, true)));
        Assert.Equal(8, tried.Length);
    }

    [Fact]
    public void SpreadLoadFromTheEndOfTheBeam_HasALengthButNoPlace()
    {
        Slip[] told = [.. Places(Said.Simple(6, Said.Spread(0, 1, 4))).Select(one => one.Slip)];

        // 12 m would be too long.
        Assert.Equal(3, told.Length);
        Assert.All(told, slip => Assert.IsType<Slip.StretchUnits>(slip));
        Assert.DoesNotContain(new Slip.StretchUnits(0, UnitMixUp.InchAndFoot, true), told);
    }

    private static Slip.PlaceUnits Place(UnitMixUp units, bool isTooGreat) => new(0, units, isTooGreat);

    private static ImmutableArray<(Slip Slip, double[] Kilo)> Places(BeamModel model) =>
    [
        .. Rough.Tried(Rough.Set(model, 1e6, ReactionPart.Vertical), ExplanationLoadUnits.Try)
            .Where(one => one.Slip is Slip.PlaceUnits or Slip.StretchUnits),
    ];
}
