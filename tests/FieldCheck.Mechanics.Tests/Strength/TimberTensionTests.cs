using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using static FieldCheck.Mechanics.Tests.Strength.Timber;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Tension along the grain beside bending: NDS 3.9.1 and EN 1995-1-1 6.2.3 (both from memory), by hand.</summary>
public sealed class TimberTensionTests
{
    private static readonly Section Joist = Rectangle(1.5 * Inch, 9.25 * Inch);

    // Ft' = 575 x 1.25 x 1.1 = 790.6 psi on 13.875 in2; a 4x6 takes the 1.3 of 2x6.
    [Theory]
    [InlineData(1.5, 9.25, 1.1)]
    [InlineData(3.5, 13.25, 0.9)]
    [InlineData(3.5, 5.5, 1.3)]
    public void Nds_IsWorkedByHand(double width, double depth, double size)
    {
        Member member = new(
            Rectangle(width * Inch, depth * Inch),
            Of(Fir, (FactorKind.Duration, 1.25), (FactorKind.WetService, 1)), new LateralSupport.Braced());

        Resistance tension = new Nds().Axial(member, isTension: true)!;

        IsWithin(1e-12, 575 * 1.25 * size * width * depth * Pound, tension.Limit);
        Assert.Equal(
            FormattableString.Invariant($"Duration 1.25, WetService 1, Temperature 1, Size {size}, Incising 1"), tension.Product());
        Assert.Null(new Nds().Axial(member, isTension: false));
    }

    // 50 x 100 mm: k_h = (150/100)^0.2 = 1.0845 by the greater size, on edge or flat; ft,0,d = 0.8 x 1.0845 x 14.5/1.3 = 9.677 N/mm2.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void En1995_IsWorkedByHand(bool flat)
    {
        Member member = new(
            Rectangle(0.05, 0.1, flat: flat),
            Of(C24, (FactorKind.Modification, 0.8), (FactorKind.PartialFactor, 1.3)), null);

        Resistance tension = new En1995().Axial(member, isTension: true)!;

        Assert.Equal(48_384, tension.Limit!.Value, 0.5);
        Assert.Equal(CheckClause.En1995Tension, tension.Clause);
    }

    [Fact]
    public void GradeWithoutTension_HasNoLimitAndAMissingFactorIsTold()
    {
        Member without = new(Joist, Of(Fir with { Tension = null }, (FactorKind.Duration, 1)), null);
        Member open = new(Joist, Of(Fir), null);

        Assert.Null(new Nds().Axial(without, isTension: true));
        Assert.Equal(FactorKind.Duration, new Nds().Axial(open, isTension: true)!.Missing);
    }

    // 12 ft, 500 lb in the middle and 2000 lb along: fb = 18 000/21.390625 = 841.5 of 900 x 1.1 = 990 psi, ft = 2000/13.875 =
    // 144.1 of 575 x 1.1 = 632.5 psi: 0.850 + 0.228 = 1.078. The same force that presses is not judged.
    [Fact]
    public void TensionBesideBending_IsAPlainSum()
    {
        Member joist = new(Joist, Of(Fir, (FactorKind.Duration, 1)), new LateralSupport.Braced());

        SectionCheck pulled = Sum(joist, 2000);
        SectionCheck pressed = Sum(joist, -2000);

        Assert.Equal(18_000 / 21.390625 / 990 + 2000 / 13.875 / 632.5, pulled.Utilisation!.Value, 1e-9);
        Assert.Equal(CheckClause.NdsTension, pulled.Clause);
        IsWithin(1e-9, 632.5 * Psi, pulled.Term(CheckSymbol.TensionStrength));
        Assert.Equal((NotJudgedReason.NoLimit, null), (pressed.Reason, pressed.Utilisation));
    }

    private static SectionCheck Sum(Member joist, double along)
    {
        BeamModel model = Checked.Simple(
            12 * Foot, new Load.Point(6 * Foot, 500 * Pound), new Load.Point(12 * Foot, 0, along * Pound));
        StrengthProblem problem = Checked.Problem(model, joist) with { Rules = StrengthRules.Nds };
        ImmutableArray<SectionCheck> all = problem.Find();
        return Assert.Single(all, check => check.Kind == CheckKind.BendingAndAxial);
    }
}
