using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>What holds of every section by EN 1993-1-1.</summary>
public sealed class En1993LawTests
{
    /// <summary>The simplified and the general method of EN 1993 nowhere jump.</summary>
    [Fact]
    public void En1993_IsContinuousInTheUnbracedLength() =>
        Gen.Select(RandomSteel.AnySection, RandomSteel.AnyYield, RandomSteel.AnyLength).Sample(
            (section, yield, length) =>
            {
                if (Lateral(section, yield, length) is { Limit: double limit })
                {
                    double next = Lateral(section, yield, length * (1 + 1e-7))!.Limit!.Value;
                    Assert.Equal(limit, next, limit * 1e-6);
                }
            },
            iter: Law.Draws);

    [Fact]
    public void HighShear_LowersBendingSteadily() =>
        Gen.Select(RandomSteel.AnySection, RandomSteel.AnyYield, Gen.Double[0, 1.5], Gen.Double[0, 1.5]).Sample(
            (section, yield, one, other) =>
            {
                Member member = Steel.Braced(section, Steel.European(yield));
                double? plastic = Steel.Find(StrengthRules.En1993, member, CheckKind.Shear)!.Limit;
                double? Bending(double share) => Steel
                    .Find(
                        StrengthRules.En1993, member, CheckKind.Bending, Steel.NoActions with { Shear = share * plastic!.Value })!
                    .Limit;
                if (plastic is null || Bending(0) is not double whole)
                {
                    return;
                }

                double less = Bending(Math.Min(one, other))!.Value;
                double more = Bending(Math.Max(one, other))!.Value;
                Assert.True(more <= less && more > 0, $"{less:R} then {more:R}");
                Assert.Equal(whole, Bending(0.5)!.Value);
                Assert.Equal(whole, Bending(0.5 + 1e-9)!.Value, whole * 1e-9);
            },
            iter: Law.Draws);

    private static Resistance? Lateral(Section section, double yield, double length) => Steel.Find(
        StrengthRules.En1993, Steel.Unbraced(section, Steel.European(yield), length), CheckKind.LateralStability);
}
