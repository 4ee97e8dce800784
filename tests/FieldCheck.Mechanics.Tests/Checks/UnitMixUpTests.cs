using FieldCheck.Mechanics.Checks;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>
/// Factors of NIST SP 811 (2008), appendix B.8, as far as printed there: to seven digits, in N, kg and m; from memory.
/// </summary>
public sealed class UnitMixUpTests
{
    private const double Kip = 4.448222; // kN
    private const double KilogramForce = 9.80665; // N, exact
    private const double Pound = 0.4535924; // kg
    private const double PoundPerFoot = 14.59390; // N/m
    private const double PoundFoot = 1.355818; // N·m
    private const double Foot = 0.3048; // m, exact

    [Theory]
    [InlineData(UnitMixUp.Thousand, 1000)]
    [InlineData(UnitMixUp.KilonewtonAndKip, Kip)]
    [InlineData(UnitMixUp.NewtonAndKilogram, KilogramForce)]
    [InlineData(UnitMixUp.PoundAndKilogram, 1 / Pound)]
    [InlineData(UnitMixUp.FootAndMetre, 1 / Foot)]
    [InlineData(UnitMixUp.InchAndFoot, 12)]
    [InlineData(UnitMixUp.NewtonPerMetreAndPoundPerFoot, PoundPerFoot)]
    [InlineData(UnitMixUp.NewtonMetreAndPoundFoot, PoundFoot)]
    [InlineData(UnitMixUp.PoundFootAndKilogramMetre, KilogramForce / PoundFoot)]
    public void Ratio_IsThatOfTheUnits(UnitMixUp mixUp, double ratio) =>
        Assert.InRange(mixUp.Ratio() / ratio, 1 - 5e-7, 1 + 5e-7);
}
