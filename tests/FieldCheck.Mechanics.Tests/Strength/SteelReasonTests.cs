using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>What AISC 360 and EN 1993 leave unjudged, and why.</summary>
public sealed class SteelReasonTests
{
    private static readonly Section Upright = Steel.Plates(0.2, 0.02, 0.012, 0.4, true);

    private static readonly Section Flat = Steel.Plates(0.2, 0.02, 0.012, 0.4, true, true);

    public static TheoryData<StrengthRules> Rules() =>
        new(StrengthRules.Aisc360Asd, StrengthRules.Aisc360Lrfd, StrengthRules.En1993);

    [Fact]
    public void Rules_SpeakOfTheirOwnBasis()
    {
        Assert.Equal(CombinationBasis.Service, StrengthRule.Of(StrengthRules.Aisc360Asd)!.Basis);
        Assert.Equal(CombinationBasis.Factored, StrengthRule.Of(StrengthRules.Aisc360Lrfd)!.Basis);
        Assert.Equal(CombinationBasis.Factored, StrengthRule.Of(StrengthRules.En1993)!.Basis);
        Assert.Null(StrengthRule.Of(StrengthRules.None));
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void MissingFigures_AreNamedForBendingShearAndAxial(StrengthRules rules)
    {
        Material steel = Steel.European(355);
        Missing(rules, NotJudgedReason.NoSection, new Member(null, steel, null));
        Missing(rules, NotJudgedReason.NoMaterial, new Member(Upright, null, null));
        Missing(rules, NotJudgedReason.NoYield, new Member(Upright, steel with { Yield = null }, null));
        Missing(rules, NotJudgedReason.NoModulus, new Member(Upright, steel with { Modulus = null }, null));
        Missing(rules, NotJudgedReason.NoShape, new Member(Upright with { Shape = null }, steel, null));
        Missing(rules, NotJudgedReason.MaterialNotInRules, new Member(Upright, steel with { Modulus = 70e9 }, null));
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void LateralSupport_IsAskedForOnlyWhereTheShapeMayLean(StrengthRules rules)
    {
        Material steel = Steel.European(355);
        Resistance lateral = Steel.Find(rules, new Member(Upright, steel, null), CheckKind.LateralStability)!;

        Assert.Equal(NotJudgedReason.NoLateralSupport, lateral.Reason);
        Assert.Null(lateral.Limit);
        Section[] stiff =
        [
            Flat,
            Steel.Tube(0.1, 0.1, 0.008),
            Steel.Bar(0.1, 0.1),
            Steel.Of(new SectionShape.RoundTube(0.1, 0.008), 10, 10, 13),
        ];
        Assert.All(stiff, section => Assert.Equal(
            [CheckKind.Bending, CheckKind.Shear], Steel.Kinds(rules, new Member(section, steel, null))));
        Assert.Equal([CheckKind.Bending, CheckKind.Shear], Steel.Kinds(rules, Steel.Braced(Upright, steel)));
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void UnknownModuli_AreNamed(StrengthRules rules)
    {
        Section bare = Upright with { PlasticModulus = null, LateralInertia = null };
        Member member = Steel.Unbraced(bare, Steel.European(235), 3);

        Assert.Equal(NotJudgedReason.NoSectionModulus, Steel.Find(rules, member, CheckKind.Bending)!.Reason);
        Assert.Equal(NotJudgedReason.NoSectionModulus, Steel.Find(rules, member, CheckKind.LateralStability)!.Reason);
    }

    /// <summary>What the rules have beyond the compact section and is not built in, is said and never guessed.</summary>
    [Theory]
    [InlineData(StrengthRules.Aisc360Lrfd, CheckKind.Bending)] // F4 and F5
    [InlineData(StrengthRules.Aisc360Lrfd, CheckKind.LateralStability)]
    [InlineData(StrengthRules.Aisc360Lrfd, CheckKind.Shear)] // F13.2, h/tw over 260
    [InlineData(StrengthRules.En1993, CheckKind.Bending)] // class 4
    [InlineData(StrengthRules.En1993, CheckKind.LateralStability)]
    [InlineData(StrengthRules.En1993, CheckKind.Shear)] // hw/tw over 72·ε
    public void SlenderWebs_AreNotJudged(StrengthRules rules, CheckKind kind)
    {
        Section thin = Steel.Plates(0.3, 0.03, 0.0035, 1.0, false);

        Resistance found = Steel.Find(rules, Steel.Unbraced(thin, Steel.European(355), 2), kind)!;

        Assert.Equal(NotJudgedReason.TooSlender, found.Reason);
        Assert.Null(found.Limit);
    }

    /// <summary>6.3.2.4(3)B gives a curve to welded sections only up to h/tf = 44·ε; the general case needs the torsion constant.</summary>
    [Fact]
    public void WeldedSectionOfThinFlangesWithoutTorsion_HasNoCurve()
    {
        Section thin = Steel.Plates(0.15, 0.010, 0.012, 0.5, false) with { TorsionConstant = null };
        Material steel = Steel.European(235);

        Assert.Null(Steel.Find(StrengthRules.En1993, Steel.Unbraced(thin, steel, 2), CheckKind.Bending)!.Reason);
        Assert.Equal(
            NotJudgedReason.TooSlender,
            Steel.Find(StrengthRules.En1993, Steel.Unbraced(thin, steel, 2), CheckKind.LateralStability)!.Reason);
    }

    [Fact]
    public void WebOverASupport_NeedsItsBearing()
    {
        IStrengthRule rule = StrengthRule.Of(StrengthRules.Aisc360Asd)!;
        Member member = Steel.Braced(WideFlange.Named("W18x50"), Steel.American(50));
        SeatPlace inside = new(3, 3, 5);

        Resistance found = rule.At(member, new Seat(null, null, null, null), inside).Single();

        Assert.Equal(NotJudgedReason.NoBearingLength, found.Reason);
        Assert.Null(found.Limit);
        Assert.Empty(rule.At(Steel.Braced(Steel.Tube(0.1, 0.2, 0.01), Steel.American(50)), SeatOf(0.1), inside));
        Assert.Empty(rule.At(member with { Section = Flat }, SeatOf(0.1), inside));
        Assert.Empty(StrengthRule.Of(StrengthRules.En1993)!.At(member, SeatOf(0.1), inside));
        Assert.Empty(StrengthRule.Of(StrengthRules.ElasticAllowable)!.At(member, SeatOf(0.1), inside));
    }

    /// <summary>The bearing that is asked for carries just the push that it is asked for; at an end never less than k.</summary>
    [Theory]
    [InlineData(StrengthRules.Aisc360Asd, 0, 80)]
    [InlineData(StrengthRules.Aisc360Lrfd, 0, 120)]
    [InlineData(StrengthRules.Aisc360Lrfd, 3, 120)]
    public void NeededBearing_CarriesThePush(StrengthRules rules, double toEnd, double kips)
    {
        IStrengthRule rule = StrengthRule.Of(rules)!;
        Member member = Steel.Braced(WideFlange.Named("W18x50"), Steel.American(50));
        SeatPlace place = new(0, toEnd, 5);
        Func<double, double> lengthFor = rule.At(member, new Seat(null, null, null, null), place).Single().LengthFor!;

        double needed = lengthFor(kips * Steel.Kip);

        Assert.Equal(kips * Steel.Kip, rule.At(member, SeatOf(needed), place).Single().Limit!.Value, 1e-6);
        Assert.Equal(toEnd == 0 ? 0.972 * Steel.Inch : 0, lengthFor(1), 1e-12);
    }

    /// <summary>Yield on the whole area: W18x50 in 50 ksi, 14.7 in² [kip].</summary>
    [Theory]
    [InlineData(StrengthRules.Aisc360Asd, 735 / 1.67, CheckClause.Aisc360Tension, CheckClause.Aisc360Squash)]
    [InlineData(StrengthRules.Aisc360Lrfd, 0.9 * 735, CheckClause.Aisc360Tension, CheckClause.Aisc360Squash)]
    [InlineData(StrengthRules.En1993, 735, CheckClause.En1993Tension, CheckClause.En1993Squash)]
    public void Axial_IsYieldOnTheWholeArea(
        StrengthRules rules, double kips, CheckClause tension, CheckClause compression)
    {
        Member member = Steel.Braced(WideFlange.Named("W18x50"), Steel.American(50));

        Resistance pulled = StrengthRule.Of(rules)!.Axial(member, true)!;
        Resistance pushed = StrengthRule.Of(rules)!.Axial(member, false)!;

        Assert.Equal(kips, pulled.Limit!.Value / Steel.Kip, 1e-9);
        Assert.Equal(pulled.Limit, pushed.Limit);
        Assert.Equal((tension, compression), (pulled.Clause, pushed.Clause));
    }

    private static Seat SeatOf(double length) => new(length, null, null, null);

    private static void Missing(StrengthRules rules, NotJudgedReason reason, Member member)
    {
        Assert.Equal(
            [(CheckKind.Bending, reason), (CheckKind.Shear, reason)],
            StrengthRule.Of(rules)!.Of(member, Steel.NoActions).Select(one => (one.Kind, one.Reason!.Value)));
        Resistance axial = StrengthRule.Of(rules)!.Axial(member, true)!;
        Assert.Equal(reason, axial.Reason);
        Assert.Null(axial.Limit);
    }
}
