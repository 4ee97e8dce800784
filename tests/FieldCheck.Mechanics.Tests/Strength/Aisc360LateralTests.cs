using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Lateral-torsional buckling worked apart, in kips and inches, from AISC 360-16 F2.2, F7.4 and F11.2.</summary>
public sealed class Aisc360LateralTests
{
    private const double Close = 1e-9;

    /// <summary>W18x50, Fy = 50 ksi: Lb [in], Mn [kip·in].</summary>
    [Theory]
    [InlineData(60, 5050)]
    [InlineData(140, 4033.496601922394)]
    [InlineData(210, 2955.329897673464)]
    [InlineData(300, 1731.0180579230707)]
    public void WideFlange_BucklesSideways(double length, double moment)
    {
        Resistance found = Lateral(WideFlange.Named("W18x50"), 50, length);

        Assert.Equal(CheckClause.Aisc360F2Lateral, found.Clause);
        Same(1.6516328758118692, Steel.Term(found, CheckSymbol.RadiusOfGyration) / Steel.Inch);
        Same(1.9817716372275571, Steel.Term(found, CheckSymbol.EffectiveRadius) / Steel.Inch);
        Same(17.43, Steel.Term(found, CheckSymbol.FlangeDistance) / Steel.Inch);
        Same(70.0067930620303, Steel.Term(found, CheckSymbol.PlasticLength) / Steel.Inch);
        Same(203.4857680520337, Steel.Term(found, CheckSymbol.ElasticLength) / Steel.Inch);
        Same(5050, Steel.Term(found, CheckSymbol.PlasticMoment) / Steel.KipInch);
        Same(moment, Steel.Term(found, CheckSymbol.NominalMoment) / Steel.KipInch);
        Same(0.9 * moment, found.Limit!.Value / Steel.KipInch);
    }

    [Fact]
    public void ElasticBuckling_TellsItsStress()
    {
        Assert.Equal(
            33.24330593558452,
            Steel.Term(Lateral(WideFlange.Named("W18x50"), 50, 210), CheckSymbol.CriticalStress) / Steel.Ksi,
            Close);
        Assert.DoesNotContain(
            Lateral(WideFlange.Named("W18x50"), 50, 140).Terms, term => term.Symbol == CheckSymbol.CriticalStress);
    }

    /// <summary>C15x33.9, Fy = 36 ksi, with c = 1.0772516: Lb [in], Mn [kip·in].</summary>
    [Theory]
    [InlineData(40, 1828.8)]
    [InlineData(60, 1738.5463684418125)]
    [InlineData(240, 723.4871494413782)]
    public void Channel_BucklesSideways(double length, double moment)
    {
        Resistance found = Lateral(Aisc360ExampleTests.Channel(), 36, length);

        Same(44.8742479974131, Steel.Term(found, CheckSymbol.PlasticLength) / Steel.Inch);
        Same(173.98682930424084, Steel.Term(found, CheckSymbol.ElasticLength) / Steel.Inch);
        Same(moment, Steel.Term(found, CheckSymbol.NominalMoment) / Steel.KipInch);
    }

    /// <summary>Tube 4 in wide, 8 in deep, wall 1/4 in, Fy = 50 ksi: Lb [in], Mn [kip·in].</summary>
    [Theory]
    [InlineData(120, 739.0625)]
    [InlineData(480, 703.5239152879673)]
    [InlineData(6000, 233.362682400141)]
    public void DeepTube_BucklesSideways(double length, double moment)
    {
        Resistance found = Lateral(Steel.Tube(4 * Steel.Inch, 8 * Steel.Inch, 0.25 * Steel.Inch), 50, length);

        Assert.Equal(CheckClause.Aisc360F7Lateral, found.Clause);
        Same(123.14445143144862, Steel.Term(found, CheckSymbol.PlasticLength) / Steel.Inch);
        Same(3360.3701207788936, Steel.Term(found, CheckSymbol.ElasticLength) / Steel.Inch);
        Same(moment, Steel.Term(found, CheckSymbol.NominalMoment) / Steel.KipInch);
    }

    /// <summary>Bar 1/2 in wide, 6 in deep, Fy = 50 ksi: Lb [in], Mn [kip·in].</summary>
    [Theory]
    [InlineData(1.5, 225)]
    [InlineData(20, 193.98620689655172)]
    [InlineData(40, 159.97241379310344)]
    [InlineData(60, 114.79166666666666)]
    public void BarOnEdge_BucklesSideways(double length, double moment)
    {
        Resistance found = Lateral(Steel.Bar(0.5 * Steel.Inch, 6 * Steel.Inch), 50, length);

        Assert.Equal(CheckClause.Aisc360F11Lateral, found.Clause);
        Same(length * 24, Steel.Term(found, CheckSymbol.BarSlenderness));
        Same(moment, Steel.Term(found, CheckSymbol.NominalMoment) / Steel.KipInch);
    }

    private static Resistance Lateral(Section section, double yieldKsi, double length) => Steel.Find(
        StrengthRules.Aisc360Lrfd,
        Steel.Unbraced(section, Steel.American(yieldKsi), length * Steel.Inch),
        CheckKind.LateralStability)!;

    private static void Same(double expected, double actual) => Assert.Equal(expected, actual, Close * expected);
}
