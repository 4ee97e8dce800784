using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using static FieldCheck.Mechanics.Tests.Strength.Timber;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>EN 1995-1-1 6.1.6, 6.1.7, 6.3.3: formulas from memory, k_mod and γ_M read in sources (docs/sources.md).</summary>
public sealed class En1995Tests
{
    private static readonly En1995 Rule = new();
    private static readonly (FactorKind, double) MediumTerm = (FactorKind.Modification, 0.8);
    private static readonly (FactorKind, double) Solid = (FactorKind.PartialFactor, 1.3);

    [Fact]
    public void Joist_IsWorkedByHand()
    {
        // 47 x 200 C24, medium term, service class 1: fm,d = 0.8 x 24/1.3 = 14.769 N/mm²; fv,d = 0.8 x 4/1.3 = 2.4615;
        // W = 47 x 200²/6 = 313 333 mm³; tau = 1.5 V/(0.67 x 9400).
        var all = Rule.Of(new(Rectangle(0.047, 0.2), Of(C24, MediumTerm, Solid), new LateralSupport.Braced()), Any);

        Assert.Equal([CheckKind.Bending, CheckKind.Shear], all.Select(one => one.Kind));
        Resistance bending = all.One(CheckKind.Bending);
        IsWithin(1e-12, 0.8 * 24 / 1.3 * MPa, bending.Limit);
        IsWithin(1e-12, 6 / (0.047 * 0.04), bending.PerAction);
        Assert.Equal("Modification 0.8, PartialFactor 1.3, Depth 1, System 1", bending.Product());
        Assert.Equal(CheckClause.En1995Bending, bending.Clause);
        Resistance shear = all.One(CheckKind.Shear);
        IsWithin(1e-12, 0.8 * 4 / 1.3 * MPa, shear.Limit);
        IsWithin(1e-12, 1.5 / (0.67 * 0.0094), shear.PerAction);
        Assert.Equal(0.67, shear.Term(CheckSymbol.CrackShare));
        Assert.Equal("Modification 0.8, PartialFactor 1.3, System 1", shear.Product());
        Assert.Equal(CombinationBasis.Factored, Rule.Basis);
        Assert.Null(Rule.Axial(new(null, null, null), isTension: false));
    }

    [Fact]
    public void FactorsGiven_StandInTheProduct()
    {
        Material timber = Of(
            C24, MediumTerm, Solid, (FactorKind.Depth, 1.1), (FactorKind.System, 1.1), (FactorKind.Cracks, 1.0));

        var all = Rule.Of(new(Rectangle(0.047, 0.2), timber, new LateralSupport.Braced()), Any);

        IsWithin(1e-12, 0.8 * 1.1 * 1.1 * 24 / 1.3 * MPa, all.One(CheckKind.Bending).Limit);
        IsWithin(1e-12, 0.8 * 1.1 * 4 / 1.3 * MPa, all.One(CheckKind.Shear).Limit);
        IsWithin(1e-12, 1.5 / 0.0094, all.One(CheckKind.Shear).PerAction);
    }

    [Fact]
    public void SystemFactorGiven_CountsInTensionAndBearingToo()
    {
        En1995Factors factors = new(Rectangle(0.047, 0.2), Of(C24, MediumTerm, Solid, (FactorKind.System, 1.1)));

        IsWithin(1e-12, 0.8 * 1.1 / 1.3, factors.Tension.Value);
        IsWithin(1e-12, 0.8 * 1.1 / 1.3, factors.Bearing.Value);
    }

    // 47 x 100: k_h = 1.0845, l_ef = 3000 + 200 mm, σ = 0.78 x 47² x 7400/(100 x 3200) = 39.845 N/mm², λ = √(26.027/39.845).
    [Fact]
    public void RelativeSlenderness_IsOfTheStrengthWithItsDepthFactor()
    {
        Material timber = Of(C24, MediumTerm, Solid);

        Resistance lateral = Rule.Of(new(Rectangle(0.047, 0.1), timber, new LateralSupport.Unbraced(3)), Any)
            .One(CheckKind.LateralStability);

        Assert.Equal(0.80822, lateral.Term(CheckSymbol.RelativeSlenderness), 0.00001);
    }

    // 3.2(3): (150/h)^0.2, at most 1.3, of solid timber; 3.3(3): (600/h)^0.1, at most 1.1, of glulam.
    [Theory]
    [InlineData(0.15, false, 1)]
    [InlineData(0.2, false, 1)]
    [InlineData(0.1, false, 1.0844717711976986)]
    [InlineData(0.03, false, 1.3)]
    [InlineData(0.6, true, 1)]
    [InlineData(0.9, true, 1)]
    [InlineData(0.4, true, 1.0413797439924106)]
    [InlineData(0.1, true, 1.1)]
    public void DepthFactor_GoesByDepthAndKind(double depth, bool isGlulam, double factor) => Assert.Equal(
        factor,
        new En1995Factors(Rectangle(0.1, depth), Of(C24 with { IsGlulam = isGlulam })).DepthFactor,
        1e-12);

    [Fact]
    public void DepthFactor_IsOfTheDepthInTheDirectionOfTheLoad_AndOneWhereNoneIsKnown()
    {
        Assert.Equal(1.3, new En1995Factors(Rectangle(0.038, 0.225, flat: true), Of(C24)).DepthFactor);
        Assert.Equal(1, new En1995Factors(new Section { SectionModulus = 1e-4 }, Of(C24)).DepthFactor);
        Assert.Equal(1.0844717711976986, new En1995Factors(new Section { Depth = 0.1 }, Of(C24)).DepthFactor, 1e-12);
    }

    [Theory]
    [InlineData(FactorKind.Modification)]
    [InlineData(FactorKind.PartialFactor)]
    public void FactorNotGiven_IsNotJudged(FactorKind missing)
    {
        (FactorKind, double)[] given = missing == FactorKind.Modification ? [Solid] : [MediumTerm];
        Member joist = new(Rectangle(0.047, 0.2), Of(C24, given), new LateralSupport.Unbraced(3));

        var all = Rule.Of(joist, Any).AddRange(Rule.At(joist, new Seat(0.1, null, null, null), new(1, 1, 3)));

        Assert.Equal(4, all.Length);
        Assert.All(
            all, one => Assert.Equal((null, NotJudgedReason.NoFactor, missing), (one.Limit, one.Reason, one.Missing)));
    }

    [Fact]
    public void StrengthsOfOtherRules_AreNeverHeldAgainst()
    {
        Member joist = new(Rectangle(0.047, 0.2), Of(Fir, MediumTerm, Solid), null);

        Assert.All(Rule.Of(joist, Any), one => Assert.Equal(NotJudgedReason.NoStrength, one.Reason));
    }

    [Fact]
    public void DeepBeam_IsWorkedByHand()
    {
        // 50 x 300 C24, 3 m unbraced: lef = 3000 + 600 = 3600 mm; sigma_m,crit = 0.78 x 50² x 7400/(300 x 3600) =
        // 13.3611 N/mm²; lambda_rel,m = sqrt(24/13.3611) = 1.340245; k_crit = 1.56 - 0.75 x 1.340245 = 0.554816;
        // 0.554816 x 14.769231 = 8.194205 N/mm².
        Resistance lateral = Lateral(0.05, 0.3, 3);

        IsWithin(1e-12, 3.6, lateral.Term(CheckSymbol.EffectiveLength));
        IsWithin(1e-12, 0.78 * 2500 * 7400 / (300 * 3600.0) * MPa, lateral.Term(CheckSymbol.BucklingStress));
        Assert.Equal(1.340245, lateral.Term(CheckSymbol.RelativeSlenderness), 5e-7);
        IsWithin(1e-6, 8.194205 * MPa, lateral.Limit);
        Assert.Equal("Modification 0.8, PartialFactor 1.3, Depth 1, System 1, LateralStability 0.5548", lateral.Product());
        Assert.Equal(CheckClause.En1995LateralStability, lateral.Clause);
    }

    [Fact]
    public void OneOfSeveralPlies_IsHeldAgainstBuckling()
    {
        Member three = new(
            Rectangle(0.05, 0.3, plies: 3), Of(C24, MediumTerm, Solid), new LateralSupport.Unbraced(3));

        Resistance lateral = Rule.Of(three, Any).One(CheckKind.LateralStability);

        Assert.Equal(Lateral(0.05, 0.3, 3).Limit, lateral.Limit);
        Assert.Equal(0.05, lateral.Term(CheckSymbol.PlyWidth));
    }

    [Fact]
    public void OnlyWhatIsDeeperThanWideAndNotHeld_CanBuckle()
    {
        Material timber = Of(C24, MediumTerm, Solid);
        Member deep = new(Rectangle(0.05, 0.3), timber, null);

        Assert.Equal(NotJudgedReason.NoLateralSupport, Rule.Of(deep, Any).One(CheckKind.LateralStability).Reason);
        Assert.Equal(2, Rule.Of(deep with { Section = Rectangle(0.05, 0.3, flat: true) }, Any).Length);
        Assert.Equal(2, Rule.Of(deep with { Section = Rectangle(0.2, 0.2) }, Any).Length);
        Member noModulus = deep with
        {
            Material = Of(C24 with { MinimumModulus = null }, MediumTerm, Solid),
            Lateral = new LateralSupport.Unbraced(3),
        };
        Assert.Equal(NotJudgedReason.NoModulus, Rule.Of(noModulus, Any).One(CheckKind.LateralStability).Reason);
    }

    [Fact]
    public void LateralFactor_IsContinuousAndFalls()
    {
        Assert.Equal(1, En1995Stability.LateralFactor(0.75));
        Assert.Equal(1, En1995Stability.LateralFactor(0.75 + 1e-9), 0.003);
        Assert.Equal(0.51, En1995Stability.LateralFactor(1.4), 1e-12);
        Assert.Equal(1 / 1.96, En1995Stability.LateralFactor(1.4 + 1e-12), 1e-9);
        Gen.Select(Gen.Double[0, 3], Gen.Double[0, 1]).Sample((slenderness, more) => Assert.True(
            En1995Stability.LateralFactor(slenderness + more) <= En1995Stability.LateralFactor(slenderness) + 0.0003));
    }

    [Fact]
    public void Limits_AreLinearInStrength()
    {
        // Where k_crit and C_L stand, only bending, shear and bearing are: those do not change with the strength.
        Gen.Select(Gen.Double[0.2, 5], Gen.Bool).Sample((more, isNds) =>
        {
            IStrengthRule rule = isNds ? new Nds() : new En1995();
            TimberStrengths grade = isNds ? Fir : C24;
            TimberStrengths stronger = grade with
            {
                Bending = more * grade.Bending,
                Shear = more * grade.Shear,
                Bearing = more * grade.Bearing,
            };
            Resistance[] first = Limits(rule, grade);
            Resistance[] second = Limits(rule, stronger);

            Assert.Equal(3, first.Length);
            for (int i = 0; i < first.Length; i++)
            {
                IsWithin(1e-12, more * first[i].Limit!.Value, second[i].Limit);
            }
        });
    }

    private static Resistance[] Limits(IStrengthRule rule, TimberStrengths grade)
    {
        Material timber = Of(grade, MediumTerm, Solid, (FactorKind.Duration, 1.15));
        Member beam = new(Rectangle(1.5 * Inch, 9.25 * Inch), timber, new LateralSupport.Braced());
        return [.. rule.Of(beam, Any), .. rule.At(beam, new Seat(0.09, null, null, null), new(1, 0, 3))];
    }

    private static Resistance Lateral(double width, double depth, double unbraced) => Rule
        .Of(
            new(Rectangle(width, depth), Of(C24, MediumTerm, Solid), new LateralSupport.Unbraced(unbraced)), Any)
        .One(CheckKind.LateralStability);
}
