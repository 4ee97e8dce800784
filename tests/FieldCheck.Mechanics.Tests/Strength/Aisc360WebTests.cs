using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>
/// Webs over supports by AISC 360-16 J10.3, worked apart in kips and inches: W18x50 in 50 ksi, E = 29 000 ksi, d = 18.0, tw = 0.355,
/// tf = 0.570, (tw/tf)^1.5 = 0.4915, √(E·Fy·tf/tw) = 1525.83.
/// </summary>
public sealed class Aisc360WebTests
{
    private static readonly Member Beam = Steel.Braced(WideFlange.Named("W18x50"), Steel.American(50));

    /// <summary>Length of the bearing and distance to the end [in], the share, Rn [kip].</summary>
    [Theory]
    [InlineData(3.25, 9, 0.80, 194.79045508172783)] // half the depth from the end counts as inside
    [InlineData(3.25, 8.99, 0.40, 97.39522754086391)]
    [InlineData(3.6, 0, 0.40, 99.60054436111471)] // lb/d = 0.2: both formulas
    [InlineData(5, 0, 0.40, 111.36223406911895)] // (4·lb/d - 0.2)
    [InlineData(5, 60, 0.80, 216.84362328423583)] // 3·lb/d, however long
    public void Web_CripplesAsWorkedApart(double bearing, double toEnd, double share, double nominal)
    {
        Nominal found = Web.Crippling(SeatOf(bearing), Place(toEnd));

        Assert.Equal(CheckClause.Aisc360WebCrippling, found.Clause);
        Assert.Equal(nominal, found.Value!.Value / Steel.Kip, 1e-9 * nominal);
        Assert.Equal(share, found.Terms.Single(term => term.Symbol == CheckSymbol.CripplingShare).Value);
        Assert.Equal(0.570, found.Terms.Single(term => term.Symbol == CheckSymbol.FlangeThickness).Value / Steel.Inch, 1e-12);
        Assert.Equal(bearing * Steel.Inch, found.LengthFor!(found.Value.Value), 1e-9);
    }

    /// <summary>At an end crippling is less than the 100.8 kip of yielding, with Ω = 2.00 and φ = 0.75.</summary>
    [Fact]
    public void WhatIsLess_IsTheLimit()
    {
        Resistance lrfd = At(StrengthRules.Aisc360Lrfd, 0);
        Resistance asd = At(StrengthRules.Aisc360Asd, 0);

        Assert.Equal((CheckKind.WebCrippling, CheckClause.Aisc360WebCrippling), (lrfd.Kind, lrfd.Clause));
        Assert.Equal(0.75 * 97.39522754086391, lrfd.Limit!.Value / Steel.Kip, 1e-9);
        Assert.Equal(97.39522754086391 / 2, asd.Limit!.Value / Steel.Kip, 1e-9);
        Assert.Equal(0.75, lrfd.Terms.Single(term => term.Symbol == CheckSymbol.ResistanceFactor).Value);
        Assert.Equal(2, asd.Terms.Single(term => term.Symbol == CheckSymbol.SafetyFactor).Value);
        Assert.Equal(CheckKind.WebYielding, At(StrengthRules.Aisc360Lrfd, 60).Kind);
    }

    /// <summary>
    /// The length asked for is enough for yielding and for crippling: of 80 kip at an end by LRFD the first needs 2.077 in, the
    /// second 4.441 in, 18·(((80/0.75/76.917 - 1)/0.4915 + 0.2)/4).
    /// </summary>
    [Fact]
    public void NeededBearing_IsEnoughForBoth()
    {
        Func<double, double> lengthFor = At(StrengthRules.Aisc360Lrfd, 0).LengthFor!;

        double needed = lengthFor(80 * Steel.Kip);

        Assert.Equal(18 * ((80 / 0.75 / 76.91728563186712 - 1) / Math.Pow(0.355 / 0.570, 1.5) + 0.2) / 4, needed / Steel.Inch, 1e-8);
        Assert.Equal(80 * Steel.Kip, At(StrengthRules.Aisc360Lrfd, 0, needed / Steel.Inch).Limit!.Value, 1e-6);
    }

    /// <summary>A push that the bare web bears needs no length to be kept from crippling.</summary>
    [Fact]
    public void LightPush_NeedsNoLength()
    {
        Nominal web = Web.Crippling(new Seat(null, null, null, null), Place(60));

        Assert.Equal((null, NotJudgedReason.NoBearingLength), (web.Value, web.Reason));
        Assert.Equal(0, web.LengthFor!(150 * Steel.Kip));
        Assert.True(web.LengthFor!(154 * Steel.Kip) > 0); // bare 153.83 kip
    }

    /// <summary>
    /// lb of J10.2 is not less than k for the reaction of an end: on less a push that would be carried is not judged, and one that
    /// would not is over. The depth of the beam is 18 in; Rn = 50·0.355·(2.5·0.972 + 0.9) = 59.1 kip at the end.
    /// </summary>
    [Theory]
    [InlineData(0.9, 0, 10, CheckVerdict.NotJudged, NotJudgedReason.BearingTooShort)]
    [InlineData(0.972, 0, 10, CheckVerdict.Ok, null)]
    [InlineData(0.9, 0, 100, CheckVerdict.Over, null)]
    [InlineData(0.9, 19, 10, CheckVerdict.Ok, null)]
    public void EndOnLessThanTheFilletDepth_IsNotOk(
        double bearing, double overhang, double push, CheckVerdict verdict, NotJudgedReason? reason)
    {
        double end = overhang * Steel.Inch;
        BeamModel model = Checked.Model(
            [end + 5 + end], [Support.Pin(end), Support.Roller(end + 5)], new Load.Point(end + 2.5, 2 * push * Steel.Kip));

        SectionCheck web = (Checked.Problem(model, Beam).With(SeatOf(bearing)) with { Rules = StrengthRules.Aisc360Asd })
            .Find().First(one => one.Support == 0);

        Assert.Equal((verdict, reason), (web.Verdict, web.Reason));
        Assert.Equal(overhang == 0, web.Terms.Any(term => term.Symbol == CheckSymbol.NeededBearingLength));
    }

    private static Aisc360Web Web => Aisc360Web.Of(SteelMember.Of(Beam)!)!;

    private static Resistance At(StrengthRules rules, double toEnd, double bearing = 3.25) =>
        StrengthRule.Of(rules)!.At(Beam, SeatOf(bearing), Place(toEnd)).Single();

    private static Seat SeatOf(double length) => new(length * Steel.Inch, null, null, null);

    private static SeatPlace Place(double toEnd) => new(3, toEnd * Steel.Inch, 5);
}
