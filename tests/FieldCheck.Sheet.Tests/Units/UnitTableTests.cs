using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Tests.Units;

/// <summary>
/// Every unit against a factor worked out here from the definitions: NIST SP 811 (2008), Appendix B: foot 0.3048 m,
/// inch 0.0254 m, pound-force 4.448 221 615 260 5 N and standard gravity 9.806 65 m/s², all exact.
/// </summary>
public sealed class UnitTableTests
{
    private const double Foot = 0.3048;
    private const double Inch = 0.0254;
    private const double Pound = 4.4482216152605;
    private const double Gravity = 9.80665;

    public static TheoryData<string, QuantityKind, double> Factors => new()
    {
        { "ft", QuantityKind.Length, Foot },
        { "in", QuantityKind.Length, Inch },
        { "m", QuantityKind.Length, 1 },
        { "cm", QuantityKind.Length, 1e-2 },
        { "mm", QuantityKind.Length, 1e-3 },
        { "N", QuantityKind.Force, 1 },
        { "kN", QuantityKind.Force, 1e3 },
        { "MN", QuantityKind.Force, 1e6 },
        { "lbf", QuantityKind.Force, Pound },
        { "lb", QuantityKind.Force, Pound },
        { "kip", QuantityKind.Force, 1000 * Pound },
        { "kgf", QuantityKind.Force, Gravity },
        { "kg", QuantityKind.Force, Gravity },
        { "t", QuantityKind.Force, 1000 * Gravity },
        { "N/m", QuantityKind.ForcePerLength, 1 },
        { "kN/m", QuantityKind.ForcePerLength, 1e3 },
        { "N/mm", QuantityKind.ForcePerLength, 1e3 },
        { "plf", QuantityKind.ForcePerLength, Pound / Foot },
        { "lb/ft", QuantityKind.ForcePerLength, Pound / Foot },
        { "lbf/ft", QuantityKind.ForcePerLength, Pound / Foot },
        { "lbf/in", QuantityKind.ForcePerLength, Pound / Inch },
        { "klf", QuantityKind.ForcePerLength, 1000 * Pound / Foot },
        { "kip/ft", QuantityKind.ForcePerLength, 1000 * Pound / Foot },
        { "kg/m", QuantityKind.ForcePerLength, Gravity },
        { "Pa", QuantityKind.Pressure, 1 },
        { "kPa", QuantityKind.Pressure, 1e3 },
        { "MPa", QuantityKind.Pressure, 1e6 },
        { "GPa", QuantityKind.Pressure, 1e9 },
        { "N/mm2", QuantityKind.Pressure, 1e6 },
        { "N/m2", QuantityKind.Pressure, 1 },
        { "kN/m2", QuantityKind.Pressure, 1e3 },
        { "psf", QuantityKind.Pressure, Pound / (Foot * Foot) },
        { "ksf", QuantityKind.Pressure, 1000 * Pound / (Foot * Foot) },
        { "psi", QuantityKind.Pressure, Pound / (Inch * Inch) },
        { "ksi", QuantityKind.Pressure, 1000 * Pound / (Inch * Inch) },
        { "N*m", QuantityKind.Moment, 1 },
        { "kN*m", QuantityKind.Moment, 1e3 },
        { "Nm", QuantityKind.Moment, 1 },
        { "kNm", QuantityKind.Moment, 1e3 },
        { "lbf-ft", QuantityKind.Moment, Pound * Foot },
        { "lb-ft", QuantityKind.Moment, Pound * Foot },
        { "ft-lb", QuantityKind.Moment, Pound * Foot },
        { "kip-ft", QuantityKind.Moment, 1000 * Pound * Foot },
        { "kip-in", QuantityKind.Moment, 1000 * Pound * Inch },
        { "kN/mm", QuantityKind.Stiffness, 1e6 },
        { "kip/in", QuantityKind.Stiffness, 1000 * Pound / Inch },
        { "N*m/rad", QuantityKind.RotationalStiffness, 1 },
        { "kN*m/rad", QuantityKind.RotationalStiffness, 1e3 },
        { "kNm/rad", QuantityKind.RotationalStiffness, 1e3 },
        { "kip-ft/rad", QuantityKind.RotationalStiffness, 1000 * Pound * Foot },
        { "kip-ft/deg", QuantityKind.RotationalStiffness, 1000 * Pound * Foot * (180 / Math.PI) },
        { "mm2", QuantityKind.Area, 1e-6 },
        { "cm2", QuantityKind.Area, 1e-4 },
        { "m2", QuantityKind.Area, 1 },
        { "in2", QuantityKind.Area, Inch * Inch },
        { "ft2", QuantityKind.Area, Foot * Foot },
        { "mm3", QuantityKind.SectionModulus, 1e-9 },
        { "cm3", QuantityKind.SectionModulus, 1e-6 },
        { "m3", QuantityKind.SectionModulus, 1 },
        { "in3", QuantityKind.SectionModulus, Inch * Inch * Inch },
        { "mm4", QuantityKind.Inertia, 1e-12 },
        { "cm4", QuantityKind.Inertia, 1e-8 },
        { "m4", QuantityKind.Inertia, 1 },
        { "in4", QuantityKind.Inertia, Inch * Inch * Inch * Inch },
        { "kg/m3", QuantityKind.UnitWeight, Gravity },
        { "lb/ft3", QuantityKind.UnitWeight, Pound / (Foot * Foot * Foot) },
        { "pcf", QuantityKind.UnitWeight, Pound / (Foot * Foot * Foot) },
        { "kN/m3", QuantityKind.UnitWeight, 1e3 },
        { "deg", QuantityKind.Angle, Math.PI / 180 },
        { "rad", QuantityKind.Angle, 1 },
        { "mrad", QuantityKind.Angle, 1e-3 },
        { "%", QuantityKind.Share, 0.01 },
    };

    [Theory]
    [MemberData(nameof(Factors))]
    public void OneOfTheUnit_IsItsDefinition(string unit, QuantityKind kind, double expected) =>
        Read.IsWithin(1e-15, expected, Read.Value("1 " + unit, kind));

    [Fact]
    public void Table_HoldsTheUnitsAboveAndNoOther()
    {
        IEnumerable<string> listed = Factors.Select(row => (string)row[0]);
        IEnumerable<string> held = UnitTable.All.Select(unit => unit.Spelling);

        Assert.Equal(listed.Order(StringComparer.Ordinal), held.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Factors))]
    public void Case_DoesNotMatter(string unit, QuantityKind kind, double expected)
    {
        Read.IsWithin(1e-15, 3 * expected, Read.Value("3 " + unit.ToUpperInvariant(), kind));
        Read.IsWithin(1e-15, 3 * expected, Read.Value("3 " + unit.ToLowerInvariant(), kind));
    }

    [Theory]
    [InlineData("kN·m", "kN*m", QuantityKind.Moment)]
    [InlineData("kN-m", "kN*m", QuantityKind.Moment)]
    [InlineData("kip*ft", "kip-ft", QuantityKind.Moment)]
    [InlineData("kip·in", "kip-in", QuantityKind.Moment)]
    [InlineData("kN-m/rad", "kN*m/rad", QuantityKind.RotationalStiffness)]
    [InlineData("N/mm^2", "N/mm2", QuantityKind.Pressure)]
    [InlineData("kN/m²", "kN/m2", QuantityKind.Pressure)]
    [InlineData("in^4", "in4", QuantityKind.Inertia)]
    [InlineData("cm⁴", "cm4", QuantityKind.Inertia)]
    [InlineData("mm³", "mm3", QuantityKind.SectionModulus)]
    [InlineData("ft²", "ft2", QuantityKind.Area)]
    [InlineData("lb/ft³", "lb/ft3", QuantityKind.UnitWeight)]
    public void OtherSpelling_IsTheSameUnit(string written, string listed, QuantityKind kind) =>
        Assert.Equal(Read.Value("7.25 " + listed, kind), Read.Value("7.25 " + written, kind));

    // The reason for the quotients in the table: rounded constants make these differ by 1e-9.
    [Theory]
    [InlineData("12 plf * 1 ft", "12 lbf")]
    [InlineData("3 psf * 4 ft * 1 ft", "12 lbf")]
    [InlineData("1 kip/ft * 12 in", "1 kip")]
    [InlineData("12 lbf/in * 1 ft", "144 lbf")]
    [InlineData("1 kg/m * 2 m", "2 kgf")]
    public void UnitsPerLength_AgreeWithThePound(string built, string force) =>
        Read.IsWithin(1e-15, Read.Value(force, QuantityKind.Force), Read.Value(built, QuantityKind.Force));

    [Fact]
    public void ToSi_FigureThatDecimalsCannotHold_IsThePlainProduct()
    {
        Unit inch = UnitTable.Of("in");

        Assert.Equal(1e300 * 0.0254, inch.ToSi(1e300));
        Assert.Equal(1e-300 * 0.0254, inch.ToSi(1e-300));
        Assert.Equal(0.1234567890123456789 * 0.0254, inch.ToSi(0.1234567890123456789));
    }
}
