using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

public sealed class ElasticAllowableTests
{
    private static readonly Material Mild = Steel.European(235);

    [Fact]
    public void Limits_AreSharesOfYield()
    {
        Member member = Steel.Braced(Steel.Bar(0.080, 0.300), Mild);

        Assert.Equal(141e6, Steel.Limit(StrengthRules.ElasticAllowable, member, CheckKind.Bending), 1e-6);
        Assert.Equal(94e6, Steel.Limit(StrengthRules.ElasticAllowable, member, CheckKind.Shear), 1e-6);
        Assert.Equal(
            141e6 * 0.024, StrengthRule.Of(StrengthRules.ElasticAllowable)!.Axial(member, true)!.Limit!.Value, 1e-6);
        Assert.Equal(CombinationBasis.Service, StrengthRule.Of(StrengthRules.ElasticAllowable)!.Basis);
    }

    /// <summary>
    /// Stresses as printed in Strength of Materials (Virginia Tech Press, 2026): Example 9.1, 80 x 300 mm under 30 kN·m,
    /// 25.0 MPa; Example 10.3, a round of 40 mm under 120 kN, 127 MPa.
    /// </summary>
    [Fact]
    public void Stress_IsThePrintedOne()
    {
        Section round = Section.Of(new SectionShape.Round(0.040), false);

        Resistance bending = Steel.Find(
            StrengthRules.ElasticAllowable, Steel.Braced(Steel.Bar(0.080, 0.300), Mild), CheckKind.Bending)!;
        Resistance shear = Steel.Find(
            StrengthRules.ElasticAllowable, Steel.Braced(round, Mild), CheckKind.Shear)!;

        Assert.Equal(25.0e6, 30e3 * bending.PerAction, 0.01e6);
        Assert.Equal(127e6, 120e3 * shear.PerAction, 0.6e6);
    }

    /// <summary>Held all along, or stiff sideways: nothing to judge.</summary>
    [Fact]
    public void LateralStability_IsNotAskedOfWhatCannotLean()
    {
        Section[] stiff =
        [
            Steel.Bar(0.1, 0.1),
            Steel.Bar(0.1, 0.05),
            Steel.Tube(0.1, 0.3, 0.008),
            Steel.Plates(0.2, 0.02, 0.01, 0.4, false, true),
            Steel.Of(new SectionShape.RoundTube(0.1, 0.005), 1, 1, 1),
            Steel.Of(new SectionShape.Round(0.1), 1, 1, 1),
        ];

        Assert.All(stiff, section => Assert.Equal(
            [CheckKind.Bending, CheckKind.Shear],
            Steel.Kinds(StrengthRules.ElasticAllowable, new Member(section, Mild, null))));
        Assert.Equal(
            [CheckKind.Bending, CheckKind.Shear],
            Steel.Kinds(
                StrengthRules.ElasticAllowable, Steel.Braced(Steel.Plates(0.2, 0.02, 0.01, 0.4, false), Mild)));
    }

    [Fact]
    public void LateralStability_IsNotJudgedWhereNothingHolds()
    {
        Section[] slender =
        [
            Steel.Plates(0.2, 0.02, 0.01, 0.4, false),
            Aisc360ExampleTests.Channel(),
            Steel.Bar(0.05, 0.1),
            Steel.Bar(0.1, 0.05) with { IsFlat = true }, // laid on the other side, so on edge
            Steel.Tube(0.1, 0.31, 0.008),
            new Section { SectionModulus = 1e-4, PeakShearArea = 1e-3 },
        ];

        Assert.All(slender, section =>
        {
            Assert.Equal(NotJudgedReason.NoLateralSupport, Lateral(new Member(section, Mild, null)));
            Assert.Equal(NotJudgedReason.LateralNotInRules, Lateral(Steel.Unbraced(section, Mild, 3)));
        });
    }

    [Fact]
    public void MissingFigures_AreNamed()
    {
        Section bare = new() { Shape = new SectionShape.Round(0.1) };

        Assert.Equal(NotJudgedReason.NoSection, Bending(new Member(null, Mild, null)));
        Assert.Equal(NotJudgedReason.NoMaterial, Bending(new Member(bare, null, null)));
        Assert.Equal(NotJudgedReason.NoYield, Bending(new Member(bare, Mild with { Yield = null }, null)));
        Assert.Equal(NotJudgedReason.NoSectionModulus, Bending(new Member(bare, Mild, null)));
        Assert.Equal(
            NotJudgedReason.NoShape,
            Steel.Find(StrengthRules.ElasticAllowable, new Member(bare, Mild, null), CheckKind.Shear)!.Reason);
    }

    private static NotJudgedReason? Lateral(Member member) =>
        Steel.Find(StrengthRules.ElasticAllowable, member, CheckKind.LateralStability)!.Reason;

    private static NotJudgedReason? Bending(Member member) =>
        Steel.Find(StrengthRules.ElasticAllowable, member, CheckKind.Bending)!.Reason;
}
