using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Where else one load may stand, and what the beam then gives, worked out by hand.</summary>
public sealed class ExplanationElsewhereTests
{
    private const double More = 1000;

    // Shares of a load spread over one of two spans of 4 m: 7/16, 10/16, -1/16; over both 3/16, 10/16, 3/16.
    [Fact]
    public void PointLoad_IsTriedFromTheOtherEndOverTheBeamAndOverItsBay()
    {
        ImmutableArray<(Slip Slip, double[] Kilo)> tried = Verticals(Said.On([4, 4], [0, 4, 8], Said.Point(6, 16)));

        Assert.Equal(3, tried.Length);
        // 16 kN in the middle of a span: 13/32, 22/32, -3/32 of it.
        Assert.Equal([6.5, 11, -1.5], tried.Of(new Slip.LoadFromOtherEnd(0)));
        Assert.Equal([3, 10, 3], tried.Of(new Slip.LoadSpread(0, 0, 8)));
        Assert.Equal([-1, 10, 7], tried.Of(new Slip.LoadSpread(0, 4, 8)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(4)]
    [InlineData(8)]
    public void LoadAtASupport_IsInNoBay(double position)
    {
        ImmutableArray<(Slip Slip, double[] Kilo)> tried = Verticals(Said.On([4, 4], [0, 4, 8], Said.Point(position, 16)));

        Assert.Equal(
            [new Slip.LoadFromOtherEnd(0), new Slip.LoadSpread(0, 0, 8)],
            tried.Select(one => one.Slip).OrderBy(slip => slip is Slip.LoadSpread));
    }

    [Fact]
    public void OneBay_IsTheBeam() => Assert.Equal(
        [new Slip.LoadSpread(0, 0, 6)],
        Verticals(Said.Simple(6, Said.Point(2, 12))).Select(one => one.Slip).OfType<Slip.LoadSpread>());

    // 8 kNm at the left end of two spans of 4 m: 5/4, -6/4, 1/4 of 2 kN.
    [Fact]
    public void Couple_IsTriedFromTheOtherEndOnly()
    {
        BeamModel model = Said.On([4, 4], [0, 4, 8], new Load.Couple(8, 8 * Said.Kilo));

        (Slip slip, double[] kilo) = Assert.Single(Verticals(model));

        Assert.Equal(new Slip.LoadFromOtherEnd(0), slip);
        Assert.Equal([2.5, -3, 0.5], kilo);
    }

    // 9 kN at 2 m of 6 m, falling from 1 m to 4 m: A 6, B 3.
    [Fact]
    public void UnevenLoad_IsTurnedRoundWithItsPlace()
    {
        ImmutableArray<(Slip Slip, double[] Kilo)> tried =
            Verticals(Said.Simple(6, new Load.Distributed(1, 4, 6 * Said.Kilo, 0)));

        Assert.Equal([3, 6], tried.Of(new Slip.LoadFromOtherEnd(0)));
        Assert.Equal([5.25, 3.75], tried.Of(new Slip.LoadLumped(0))); // at 2.5 m, the middle of its stretch
        Assert.Equal([4.5, 4.5], tried.Of(new Slip.LoadSpread(0, 0, 6)));
    }

    // Up, and to the right, at A and B: the pin at A takes all that acts along.
    [Fact]
    public void LoadThatLeans_KeepsBothItsParts()
    {
        ImmutableArray<(Slip Slip, double[] Kilo)> tried = Forces(Said.Simple(6, new Load.Point(2, 12_000, 3000)));

        Assert.Equal([4, -3, 8, 0], tried.Of(new Slip.LoadFromOtherEnd(0)));
        Assert.Equal([6, -3, 6, 0], tried.Of(new Slip.LoadSpread(0, 0, 6)));
    }

    [Fact]
    public void LoadAlongTheBeam_StaysAlong()
    {
        ImmutableArray<(Slip Slip, double[] Kilo)> tried =
            Forces(Said.Simple(6, new Load.Distributed(1, 4, 2000, 2000, ActsAlong: true)));

        Assert.Equal(3, tried.Length);
        Assert.All(tried, one => Assert.Equal([0, -6, 0, 0], one.Kilo));
    }

    [Fact]
    public void LoadAcrossTheBeam_StaysAcross() => Assert.Equal(
        [3, 0, 3, 0], Forces(Said.Simple(6, Said.Spread(1, 3, 3))).Of(new Slip.LoadSpread(0, 0, 6)));

    // Nothing holds it along; no load asks for that.
    [Fact]
    public void BeamOnRollers_CarriesASpreadLoadToo()
    {
        BeamModel model = Said.Simple(6, Said.Point(2, 12)) with { Supports = [Support.Roller(0), Support.Roller(6)] };

        Assert.Equal([6, 6], Verticals(model).Of(new Slip.LoadSpread(0, 0, 6)));
    }

    // What it carries in all is beyond the numbers: it cannot be lumped.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void LoadBeyondTheNumbers_IsLeftAlone(bool along)
    {
        BeamModel model = Said.Simple(6, Said.Point(2, 12));
        model = model with { Cases = [.. model.Cases, new LoadCase("never", [new Load.Distributed(2, 2.001, 1e308, 1e308, along)])] };
        StatedSet stated = Rough.Set(model, More, ReactionPart.Vertical) with { Factors = [1, 0] };

        Assert.Empty(Rough.Tried(stated, (beam, found) => ExplanationElsewhere.Try(beam, found, beam.Loads[1])));
    }

    private static ImmutableArray<(Slip Slip, double[] Kilo)> Verticals(BeamModel model) => Tried(model, ReactionPart.Vertical);

    private static ImmutableArray<(Slip Slip, double[] Kilo)> Forces(BeamModel model) =>
        Tried(model, ReactionPart.Vertical, ReactionPart.Horizontal);

    private static ImmutableArray<(Slip Slip, double[] Kilo)> Tried(BeamModel model, params ReactionPart[] parts) => Rough.Tried(
        Rough.Set(model, More, parts), (beam, found) => ExplanationElsewhere.Try(beam, found, beam.Loads[0]));
}
