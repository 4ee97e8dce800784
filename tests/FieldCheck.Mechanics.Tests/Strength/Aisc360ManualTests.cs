using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Figures of the AISC Steel Construction Manual, 15th edition; from memory, all of them.</summary>
public sealed class Aisc360ManualTests
{
    /// <summary>
    /// Table 3-2, Fy = 50 ksi: name, Mpx/Ω, φMpx [kip·ft], Vnx/Ω, φVnx [kip]. Flanges of W8x10, W8x31, W10x12, W12x65 and
    /// W14x90 are not compact; the web of W24x55 has Ω 1.67 and φ 0.90.
    /// </summary>
    public static TheoryData<string, double, double, double, double> Strengths() => new()
    {
        { "W8x10", 21.9, 32.9, 26.8, 40.2 },
        { "W8x31", 75.8, 114, 45.6, 68.4 },
        { "W10x12", 31.2, 46.9, 37.5, 56.3 },
        { "W10x30", 91.3, 137, 63.0, 94.5 },
        { "W10x49", 151, 227, 68.0, 102 },
        { "W12x26", 92.8, 140, 56.1, 84.2 },
        { "W12x65", 237, 356, 94.4, 142 },
        { "W14x22", 82.8, 125, 63.0, 94.5 },
        { "W14x90", 382, 574, 123, 185 },
        { "W16x26", 110, 166, 70.5, 106 },
        { "W16x31", 135, 203, 87.5, 131 },
        { "W18x35", 166, 249, 106, 159 },
        { "W18x50", 252, 379, 128, 192 },
        { "W21x44", 238, 358, 145, 217 },
        { "W24x55", 334, 503, 167, 252 },
        { "W24x68", 442, 664, 197, 295 },
    };

    /// <summary>Table 3-2: name, Lp, Lr [ft]. Of shapes with compact flanges; of others the table shifts Lp.</summary>
    public static TheoryData<string, double, double> Lengths() => new()
    {
        { "W10x30", 4.84, 16.1 },
        { "W10x49", 8.97, 31.6 },
        { "W12x26", 5.33, 14.9 },
        { "W14x22", 3.67, 10.4 },
        { "W16x26", 3.96, 11.2 },
        { "W16x31", 4.13, 11.8 },
        { "W18x35", 4.31, 12.3 },
        { "W18x50", 5.83, 16.9 },
        { "W21x44", 4.45, 13.0 },
        { "W24x55", 4.73, 13.9 },
        { "W24x68", 6.61, 18.9 },
    };

    [Theory]
    [MemberData(nameof(Strengths))]
    public void BendingAndShear_AreThoseOfTable32(
        string name, double moment, double factoredMoment, double shear, double factoredShear)
    {
        Member member = Steel.Braced(WideFlange.Named(name), Steel.American(50));

        Printed(moment, Steel.Limit(StrengthRules.Aisc360Asd, member, CheckKind.Bending) / Steel.KipFoot);
        Printed(factoredMoment, Steel.Limit(StrengthRules.Aisc360Lrfd, member, CheckKind.Bending) / Steel.KipFoot);
        Printed(shear, Steel.Limit(StrengthRules.Aisc360Asd, member, CheckKind.Shear) / Steel.Kip);
        Printed(factoredShear, Steel.Limit(StrengthRules.Aisc360Lrfd, member, CheckKind.Shear) / Steel.Kip);
    }

    /// <summary>The table is worked from unrounded radii, ours from the printed figures of three digits.</summary>
    [Theory]
    [MemberData(nameof(Lengths))]
    public void UnbracedLengths_AreThoseOfTable32(string name, double plastic, double elastic)
    {
        Member member = Steel.Unbraced(WideFlange.Named(name), Steel.American(50), 1);

        Resistance found = Steel.Find(StrengthRules.Aisc360Lrfd, member, CheckKind.LateralStability)!;

        Assert.Equal(plastic, Steel.Term(found, CheckSymbol.PlasticLength) / Steel.Foot, 0.03);
        Assert.Equal(elastic, Steel.Term(found, CheckSymbol.ElasticLength) / Steel.Foot, 0.1);
    }

    /// <summary>Table 3-10 for W18x50, Cb = 1: Lb [ft], Mn/Ω, φMn [kip·ft].</summary>
    [Theory]
    [InlineData(5.0, 252, 379)]
    [InlineData(11.7, 201, 302)]
    [InlineData(17.5, 147, 222)]
    public void LateralStability_IsThatOfTable310(double length, double moment, double factored)
    {
        Member member = Steel.Unbraced(WideFlange.Named("W18x50"), Steel.American(50), length * Steel.Foot);

        Printed(moment, Steel.Limit(StrengthRules.Aisc360Asd, member, CheckKind.LateralStability) / Steel.KipFoot);
        Printed(factored, Steel.Limit(StrengthRules.Aisc360Lrfd, member, CheckKind.LateralStability) / Steel.KipFoot);
    }

    /// <summary>
    /// Table 9-4 for W18x50, Fy = 50 ksi: φR1 = 43.1 kip, φR2 = 17.8 kip/in. Away from an end yielding is the lesser; at an end it
    /// is looked at alone.
    /// </summary>
    [Fact]
    public void WebOverASupport_YieldsAsByTable94()
    {
        Member member = Steel.Braced(WideFlange.Named("W18x50"), Steel.American(50));
        Seat seat = new(3.25 * Steel.Inch, null, null, null);
        SeatPlace inside = new(0, 60 * Steel.Inch, 5);

        Resistance lrfd = StrengthRule.Of(StrengthRules.Aisc360Lrfd)!.At(member, seat, inside).Single();
        Resistance asd = StrengthRule.Of(StrengthRules.Aisc360Asd)!.At(member, seat, inside).Single();
        Nominal end = Aisc360Web.Of(SteelMember.Of(member)!)!.Yielding(seat, inside with { ToEnd = 0 });

        Assert.Equal(CheckKind.WebYielding, lrfd.Kind);
        Assert.Equal(2 * 43.1 + 3.25 * 17.75, lrfd.Limit!.Value / Steel.Kip, 0.1);
        Assert.Equal((2 * 43.1 + 3.25 * 17.75) / 1.5, asd.Limit!.Value / Steel.Kip, 0.1);
        Assert.Equal(43.1 + 3.25 * 17.75, end.Value!.Value / Steel.Kip, 0.1);
    }

    /// <summary>Half a unit of the last of three printed digits, and a hair for ties.</summary>
    private static void Printed(double expected, double actual) =>
        Assert.Equal(expected, actual, expected < 100 ? 0.0501 : 0.501);
}
