using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using static FieldCheck.Mechanics.Tests.Strength.Timber;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>NDS 3.10 (C_b read in a course, docs/sources.md) and EN 1995-1-1 6.1.5 (lef from memory).</summary>
public sealed class TimberBearingTests
{
    private static readonly SeatPlace AtEnd = new(0, 0, 4);
    private static readonly SeatPlace Inside = new(4, 4, 4);

    [Fact]
    public void NdsAtTheEnd_HasNoBearingAreaFactor()
    {
        // 2x10 on 3.5 in: 625 psi x 1.5 in x 3.5 in = 3281.25 lb.
        Resistance bearing = Nds(3.5, AtEnd);

        IsWithin(1e-12, 625 * Psi, bearing.Limit);
        IsWithin(1e-12, 3281.25 * Pound, bearing.Limit / bearing.PerAction);
        Assert.Equal("WetService 1, Temperature 1, Incising 1, BearingArea 1", bearing.Product());
        IsWithin(1e-12, 3.5 * Inch, bearing.LengthFor!(3281.25 * Pound));
        Assert.Equal((CheckKind.Bearing, CheckClause.NdsBearing), (bearing.Kind, bearing.Clause));
    }

    [Fact]
    public void NdsInside_IsHelpedByTheWoodBeside()
    {
        // C_b = (1.5 + 0.375)/1.5 = 1.25: 625 x 1.25 x 1.5 x 1.5 = 1757.8125 lb on 1.5 in.
        Resistance bearing = Nds(1.5, Inside);

        IsWithin(1e-12, 625 * 1.25 * Psi, bearing.Limit);
        IsWithin(1e-12, 1757.8125 * Pound, bearing.Limit / bearing.PerAction);
        IsWithin(1e-12, 1.5 * Inch, bearing.LengthFor!(1757.8125 * Pound));
    }

    [Fact]
    public void NdsWetAndIncised_TakesNoIncisingAndNoDuration()
    {
        Member beam = new(
            Rectangle(1.5 * Inch, 9.25 * Inch),
            Of(Fir, (FactorKind.WetService, 1), (FactorKind.Incising, 0.8), (FactorKind.Duration, 1.6)), null);

        Resistance bearing = Assert.Single(new Nds().At(beam, new Seat(6 * Inch, null, null, null), Inside));

        Assert.Equal("WetService 0.67, Temperature 1, Incising 1, BearingArea 1", bearing.Product());
        IsWithin(1e-12, 0.67 * 625 * Psi, bearing.Limit);
    }

    // The bearing's edge must be 3 in from the end, and the bearing under 6 in.
    [Theory]
    [InlineData(4, 5, 4.375 / 4)]
    [InlineData(4, 4.99, 1)]
    [InlineData(6, 20, 1)]
    [InlineData(5.9, 20, 6.275 / 5.9)]
    public void BearingAreaFactor_HoldsAwayFromTheEnd(double length, double toEnd, double factor) => Assert.Equal(
        factor, NdsBearing.BearingAreaFactor(length * Inch, new(0, toEnd * Inch, 4)), 1e-12);

    // A light push: at the end its whole length is needed; inside C_b helps, by no more than at 1/2 in, 1.75.
    [Theory]
    [InlineData(0.256, 0, 0.256)]
    [InlineData(0.256, 48, 0.256 / 1.75)]
    [InlineData(0.5, 48, 0.5 / 1.75)]
    [InlineData(0.875, 48, 0.5)]
    [InlineData(2, 48, 1.625)]
    public void NdsLengthForALightPush_IsNeverNothing(double plain, double toEnd, double needed) => Assert.Equal(
        needed, NdsBearing.LengthFor(plain * Inch, new(1, toEnd * Inch, 4)) / Inch, 1e-12);

    [Fact]
    public void NdsLengthThatIsEnough_CarriesThePushAndNoShorterOneOfItsKindDoes()
    {
        Gen.Select(Gen.Double[0.01, 12], Gen.Double[0, 12]).Sample((plain, toEnd) =>
        {
            SeatPlace place = new(1, toEnd * Inch, 4);
            double length = NdsBearing.LengthFor(plain * Inch, place);

            IsWithin(1e-9, plain * Inch, Carried(length));
            Assert.True(Carried(length * 0.999) < plain * Inch || NdsBearing.BearingAreaFactor(length, place) == 1);

            double Carried(double held) => held * NdsBearing.BearingAreaFactor(held, place);
        });
    }

    [Fact]
    public void En1995_IsWorkedByHand()
    {
        // 50 mm wide on 100 mm at the end: lef = 100 + 30 = 130 mm, inside 160 mm; fc,90,d = 0.8 x 2.5/1.3 = 1.538 N/mm²;
        // 130 x 50 x 1.538 = 10 000 N; with k_c,90 = 1.5 half as much again.
        Resistance end = En1995(0.1, AtEnd);
        Resistance inside = En1995(0.1, Inside, (FactorKind.CrossGrain, 1.5));

        IsWithin(1e-12, 10_000, end.Limit / end.PerAction);
        Assert.Equal(0.13, end.Term(CheckSymbol.EffectiveBearingLength), 1e-12);
        IsWithin(1e-12, 0.1, end.LengthFor!(10_000));
        IsWithin(1e-12, 1.5 * 160 * 50 * 0.8 * 2.5 / 1.3, inside.Limit / inside.PerAction);
        Assert.Equal("Modification 0.8, PartialFactor 1.3, System 1, CrossGrain 1.5", inside.Product());
        Assert.Equal(CheckClause.En1995Bearing, end.Clause);
    }

    // 30 mm each side, not more than the bearing itself, half the clear distance, or what is left to the end.
    [Theory]
    [InlineData(100, 0, 4000, 130)]
    [InlineData(100, 60, 4000, 140)]
    [InlineData(100, 500, 4000, 160)]
    [InlineData(20, 500, 4000, 60)]
    [InlineData(100, 500, 140, 140)]
    [InlineData(100, 500, 80, 100)]
    public void EffectiveLength_GrowsOnBothSidesWithinBounds(double length, double toEnd, double bay, double effective) =>
        Assert.Equal(effective, En1995Bearing.EffectiveLength(length / 1e3, new(0, toEnd / 1e3, bay / 1e3)) * 1e3, 1e-9);

    /// <summary>A stick cut on both sides of its bearing, at 70 and at 60 mm: 20 and 10 mm beyond the 100 mm.</summary>
    [Fact]
    public void EffectiveLength_StopsAtBothEndsOfTheStick() =>
        Assert.Equal(0.13, En1995Bearing.EffectiveLength(0.1, new(4, 0.06, 4, 0.07)), 1e-12);

    [Fact]
    public void En1995LengthThatIsEnough_IsTheLeast()
    {
        Gen.Select(Gen.Double[0.001, 1], Gen.Double[0, 0.5], Gen.Double[0.1, 5]).Sample((effective, toEnd, bay) =>
        {
            SeatPlace place = new(1, toEnd, bay);
            double length = En1995Bearing.LengthFor(effective, place);

            Assert.True(En1995Bearing.EffectiveLength(length, place) >= effective * (1 - 1e-12));
            Assert.True(En1995Bearing.EffectiveLength(length * (1 - 1e-9), place) < effective);
        });
    }

    [Fact]
    public void BearingNotGiven_IsNotJudgedButSaysWhatWouldBeEnough()
    {
        Member fir = new(Rectangle(1.5 * Inch, 9.25 * Inch), Of(Fir), null);
        Resistance bearing = Assert.Single(new Nds().At(fir, new Seat(null, null, null, null), AtEnd));

        Assert.Equal((null, NotJudgedReason.NoBearingLength), (bearing.Limit, bearing.Reason));
        IsWithin(1e-12, 2 * Inch, bearing.LengthFor!(2 * 1.5 * 625 * Pound));
        Assert.Equal(NotJudgedReason.NoBearingLength, En1995(null, AtEnd).Reason);
        IsWithin(1e-12, 0.1, En1995(null, AtEnd).LengthFor!(10_000));
    }

    [Fact]
    public void RoundStick_HasNoWidthToBearBy()
    {
        Section round = new() { Shape = new SectionShape.Round(0.15) };

        Resistance bearing = Assert.Single(
            new Nds().At(new(round, Of(Fir), null), new Seat(0.1, null, null, null), AtEnd));

        Assert.Equal((null, NotJudgedReason.NoBearingWidth), (bearing.Limit, bearing.Reason));
        Assert.Null(bearing.LengthFor);
    }

    [Theory]
    [InlineData(false, 3 * 1.5)]
    [InlineData(true, 9.25)]
    public void Plies_BearTogetherOnEdge_AndAsOneLaidFlat(bool flat, double width)
    {
        Member beam = new(Rectangle(1.5 * Inch, 9.25 * Inch, plies: 3, flat: flat), Of(Fir), null);

        Resistance bearing = Assert.Single(new Nds().At(beam, new Seat(6 * Inch, null, null, null), AtEnd));

        Assert.Equal(width * Inch, bearing.Term(CheckSymbol.BearingWidth), 1e-12);
    }

    private static Resistance Nds(double inches, SeatPlace place) => Assert.Single(new Nds().At(
        new(Rectangle(1.5 * Inch, 9.25 * Inch), Of(Fir), null), new Seat(inches * Inch, null, null, null), place));

    private static Resistance En1995(double? length, SeatPlace place, params (FactorKind, double)[] more) =>
        Assert.Single(new En1995().At(
            new(
                Rectangle(0.05, 0.2),
                Of(C24, [(FactorKind.Modification, 0.8), (FactorKind.PartialFactor, 1.3), .. more]),
                null),
            new Seat(length, null, null, null),
            place));
}
