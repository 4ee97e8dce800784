using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using static FieldCheck.Mechanics.Tests.Strength.Timber;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>NDS 3.3.3, from memory (docs/sources.md).</summary>
public sealed class NdsStabilityTests
{
    private static readonly Nds Rule = new();

    [Fact]
    public void DeepBeam_IsWorkedByHand()
    {
        // 2x12, lu = 8 ft: lu/d = 96/11.25 = 8.5333, le = 1.63 x 96 + 3 x 11.25 = 190.23 in;
        // RB = sqrt(190.23 x 11.25/1.5²) = 30.8407; Emin' = 580 000 psi; FbE = 1.2 x 580 000/951.15 = 731.7458 psi;
        // Fb* = 900 x 1.15 = 1035 psi (C_F 1.0); FbE/Fb* = 0.7070007;
        // C_L = 1.707001/1.9 - sqrt((1.707001/1.9)² - 0.7070007/0.95) = 0.647524.
        Resistance lateral = Lateral(1.5, 11.25, 8, (FactorKind.Duration, 1.15));

        IsWithin(1e-12, 190.23 * Inch, lateral.Term(CheckSymbol.EffectiveLength));
        IsWithin(1e-12, Math.Sqrt(951.15), lateral.Term(CheckSymbol.SlendernessRatio));
        IsWithin(1e-12, 580_000 * Psi, lateral.Term(CheckSymbol.StabilityModulus));
        IsWithin(1e-12, 696_000 / 951.15 * Psi, lateral.Term(CheckSymbol.BucklingStress));
        IsWithin(1e-12, 1035 * Psi, lateral.Term(CheckSymbol.BracedStrength));
        double ratio = 696_000 / 951.15 / 1035;
        double half = (1 + ratio) / 1.9;
        double factor = half - Math.Sqrt(half * half - ratio / 0.95);
        Assert.Equal(0.647524, factor, 5e-7);
        IsWithin(1e-12, 1035 * factor * Psi, lateral.Limit);
        Assert.Equal(CheckClause.NdsLateralStability, lateral.Clause);
        Assert.StartsWith("Duration 1.15, WetService 1, Temperature 1, BeamStability 0.64", lateral.Product(), StringComparison.Ordinal);
        Assert.Equal(8, lateral.Factors.Length);
    }

    // le/d by lu/d, footnote 1 of Table 3.3.3.
    [Theory]
    [InlineData(5, 10.3)]
    [InlineData(7, 14.41)]
    [InlineData(10, 19.3)]
    [InlineData(14.3, 26.309)]
    [InlineData(20, 36.8)]
    public void EffectiveLength_IsThatOfItsClass(double unbraced, double effective) =>
        Assert.Equal(effective, NdsStability.EffectiveLength(unbraced, 1), 1e-12);

    [Fact]
    public void StabilityModulus_IsReducedByWetTemperatureAndIncising()
    {
        Resistance lateral = Lateral(
            1.5, 11.25, 8,
            (FactorKind.Duration, 1.15), (FactorKind.WetService, 1), (FactorKind.Temperature, 0.8), (FactorKind.Incising, 0.8));

        IsWithin(1e-12, 580_000 * 0.9 * 0.8 * 0.95 * Psi, lateral.Term(CheckSymbol.StabilityModulus));
    }

    [Fact]
    public void OneOfSeveralPlies_IsHeldAgainstBuckling()
    {
        Member alone = new(
            Rectangle(1.5 * Inch, 11.25 * Inch), Of(Fir, (FactorKind.Duration, 1.15)), new LateralSupport.Unbraced(8 * Foot));
        Member three = alone with { Section = Rectangle(1.5 * Inch, 11.25 * Inch, plies: 3) };

        Resistance one = Rule.Of(alone, Any).One(CheckKind.LateralStability);
        Resistance all = Rule.Of(three, Any).One(CheckKind.LateralStability);

        Assert.Equal(1.5 * Inch, all.Term(CheckSymbol.PlyWidth));
        Assert.Equal(one.Limit, all.Limit);
        IsWithin(1e-12, one.PerAction / 3, all.PerAction);
    }

    [Fact]
    public void OnlyWhatIsDeeperThanWideAndNotHeld_CanBuckle()
    {
        (FactorKind, double) duration = (FactorKind.Duration, 1);
        LateralSupport unbraced = new LateralSupport.Unbraced(3);
        Material fir = Of(Fir with { TakesSizeFactor = false }, duration);
        Section round = new() { Shape = new SectionShape.Round(0.2), SectionModulus = 7.85e-4, PeakShearArea = 0.0236 };

        Assert.True(HasLateral(Rectangle(0.05, 0.2), fir, unbraced));
        Assert.True(HasLateral(Rectangle(0.05, 0.2), fir, null));
        Assert.False(HasLateral(Rectangle(0.05, 0.2), fir, new LateralSupport.Braced()));
        Assert.False(HasLateral(Rectangle(0.2, 0.2), fir, unbraced));
        Assert.False(HasLateral(Rectangle(0.05, 0.2, flat: true), fir, unbraced));
        Assert.False(HasLateral(round, fir, unbraced));
        Assert.False(HasLateral(null, fir, unbraced));
    }

    [Theory]
    [InlineData(true, true, NotJudgedReason.NoLateralSupport)]
    [InlineData(false, false, NotJudgedReason.NoModulus)]
    public void WhatIsNotKnown_IsTold(bool hasModulus, bool lacksSupport, NotJudgedReason reason)
    {
        Member beam = new(
            Rectangle(1.5 * Inch, 11.25 * Inch),
            Of(hasModulus ? Fir : Fir with { MinimumModulus = null }, (FactorKind.Duration, 1.15)),
            lacksSupport ? null : new LateralSupport.Unbraced(2));

        Resistance lateral = Rule.Of(beam, Any).One(CheckKind.LateralStability);

        Assert.Equal((null, reason), (lateral.Limit, lateral.Reason));
    }

    [Fact]
    public void SlendernessRatioOverFifty_IsNotJudged()
    {
        // RB² = 1.84 lu d/b² = 2500 at lu = 2500 x 1.5²/(1.84 x 11.25) = 271.739 in.
        double bound = 2500 * 2.25 / (1.84 * 11.25) / 12;

        Assert.NotNull(Lateral(1.5, 11.25, bound * 0.9999, (FactorKind.Duration, 1)).Limit);
        Resistance over = Lateral(1.5, 11.25, bound * 1.0001, (FactorKind.Duration, 1));
        Assert.Equal((null, NotJudgedReason.TooSlenderSideways), (over.Limit, over.Reason));
        Assert.Equal(50, over.Term(CheckSymbol.SlendernessRatio), 0.01);
    }

    [Fact]
    public void BeamStabilityFactor_IsTheRootOfItsQuadraticAndRisesToOne()
    {
        // C_L is the smaller root of 0.95 C² - (1 + a) C + a = 0.
        Gen.Double[-6, 6].Sample(power =>
        {
            double ratio = Math.Pow(10, power);
            double factor = NdsStability.BeamStabilityFactor(ratio);

            Assert.InRange(factor, 0, Math.Min(1, ratio));
            Assert.Equal(0, (0.95 * factor * factor - (1 + ratio) * factor + ratio) / ratio, 1e-12);
            Assert.True(NdsStability.BeamStabilityFactor(ratio * 1.01) >= factor);
        });
        Assert.Equal(1, NdsStability.BeamStabilityFactor(1e9), 1e-9);
    }

    [Fact]
    public void LongerUnbracedLength_NeverCarriesMore()
    {
        // The classes of the footnote meet but for rounding of their numbers: 14.42 d against 14.41 d.
        Gen.Select(Gen.Double[0.1, 20], Gen.Double[1, 1.5]).Sample((length, growth) =>
        {
            double shorter = Lateral(3.5, 11.25, length, (FactorKind.Duration, 1)).Limit ?? 0;
            double longer = Lateral(3.5, 11.25, length * growth, (FactorKind.Duration, 1)).Limit ?? 0;

            Assert.True(longer <= shorter * 1.001, $"{length} x {growth}: {shorter} then {longer}");
        });
    }

    private static bool HasLateral(Section? section, Material material, LateralSupport? lateral) =>
        Rule.Of(new(section, material, lateral), Any).Any(one => one.Kind == CheckKind.LateralStability);

    private static Resistance Lateral(double width, double depth, double feet, params (FactorKind, double)[] factors) => Rule
        .Of(
            new(Rectangle(width * Inch, depth * Inch), Of(Fir, factors), new LateralSupport.Unbraced(feet * Foot)), Any)
        .One(CheckKind.LateralStability);
}
