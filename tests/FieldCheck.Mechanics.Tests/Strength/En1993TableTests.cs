using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Resistances of rolled sections as European tables print them, γM0 = 1.00; from memory.</summary>
public sealed class En1993TableTests
{
    /// <summary>Name, fy [N/mm²], class in bending, Mpl,Rd [kN·m], Av [cm²], Vpl,Rd [kN].</summary>
    [Theory]
    [InlineData("IPE 200", 235, 1, 51.8, 14.0, 190)]
    [InlineData("IPE 200", 355, 1, 78.3, 14.0, 287)]
    [InlineData("IPE 300", 235, 1, 147.7, 25.68, 348)]
    [InlineData("IPE 300", 355, 1, 223.1, 25.68, 526)]
    [InlineData("HEA 200", 235, 1, 100.9, 18.08, 245)]
    [InlineData("HEA 200", 355, 2, 152.5, 18.08, 371)]
    public void RolledSections_HaveTheirPrintedResistances(
        string name, double yield, int section, double moment, double area, double shear)
    {
        Member member = Steel.Braced(Rolled(name), Steel.European(yield));

        Resistance bending = Steel.Find(StrengthRules.En1993, member, CheckKind.Bending)!;
        Resistance sheared = Steel.Find(StrengthRules.En1993, member, CheckKind.Shear)!;

        Assert.Equal(section, Steel.Term(bending, CheckSymbol.SectionClass));
        Assert.Equal(moment, bending.Limit!.Value / 1000, 0.0501);
        Assert.Equal(area, Steel.Term(sheared, CheckSymbol.ShearArea) * 1e4, 0.00501);
        Assert.Equal(shear, sheared.Limit!.Value / 1000, 0.501);
    }

    /// <summary>HEA 300 is of class 1 in S235 and of class 3 in S355, where only its elastic modulus counts.</summary>
    [Fact]
    public void WideFlanges_OfHigherYieldCountElastically()
    {
        Section section = Rolled("HEA 300");

        Assert.Equal(
            1383e-6 * 235e6,
            Steel.Limit(StrengthRules.En1993, Steel.Braced(section, Steel.European(235)), CheckKind.Bending),
            1e-6);
        Assert.Equal(
            1260e-6 * 355e6,
            Steel.Limit(StrengthRules.En1993, Steel.Braced(section, Steel.European(355)), CheckKind.Bending),
            1e-6);
    }

    /// <summary>EN 10365: A, Wel, Wpl from memory; dimensions seen.</summary>
    internal static Section Rolled(string name) => name switch
    {
        "IPE 200" => Of(28.48, 194.3, 220.6, new SectionShape.I(0.100, 0.0085, 0.0056, 0.200, 0.012, true)),
        "IPE 300" => Of(53.81, 557.1, 628.4, new SectionShape.I(0.150, 0.0107, 0.0071, 0.300, 0.015, true)),
        "HEA 200" => Of(53.83, 388.6, 429.5, new SectionShape.I(0.200, 0.010, 0.0065, 0.190, 0.018, true)),
        "HEA 300" => Of(112.5, 1260, 1383, new SectionShape.I(0.300, 0.014, 0.0085, 0.290, 0.027, true)),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "Not in the list."),
    };

    private static Section Of(double area, double elastic, double plastic, SectionShape shape) => new()
    {
        Area = area * 1e-4,
        SectionModulus = elastic * 1e-6,
        PlasticModulus = plastic * 1e-6,
        Shape = shape,
    };
}
