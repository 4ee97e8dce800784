using CsCheck;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Tests.Units;

public sealed class DisplayUnitsTests
{
    private const double Pound = 4.4482216152605;

    private static readonly DisplayUnits Si = new(UnitSystem.Si);
    private static readonly DisplayUnits Us = new(UnitSystem.Us);

    public static TheoryData<UnitSystem, QuantityKind> EveryUnit
    {
        get
        {
            TheoryData<UnitSystem, QuantityKind> every = [];
            foreach (UnitSystem system in Enum.GetValues<UnitSystem>())
            {
                foreach (QuantityKind kind in Enum.GetValues<QuantityKind>())
                {
                    every.Add(system, kind);
                }
            }

            return every;
        }
    }

    [Theory]
    [InlineData(9900, "9.90 kN")]
    [InlineData(16500, "16.50 kN")]
    [InlineData(-13575, "-13.58 kN")]
    [InlineData(9825, "9.83 kN")]
    [InlineData(2675.0000000000005, "2.68 kN")]
    [InlineData(2674.9999999999995, "2.68 kN")]
    [InlineData(900, "0.90 kN")]
    [InlineData(904, "0.904 kN")]
    [InlineData(250, "0.25 kN")]
    [InlineData(50, "0.05 kN")]
    [InlineData(12.34, "0.0123 kN")]
    [InlineData(999.96, "1.00 kN")]
    [InlineData(0.4, "0.0004 kN")]
    [InlineData(0.004, "0.00 kN")]
    [InlineData(-0.004, "0.00 kN")]
    [InlineData(0, "0.00 kN")]
    [InlineData(-0.0, "0.00 kN")]
    [InlineData(9999990, "9999.99 kN")]
    [InlineData(12345670, "12345.7 kN")]
    [InlineData(123456789, "123457 kN")]
    [InlineData(1.23456e12, "1.235e9 kN")]
    [InlineData(-1.23456e12, "-1.235e9 kN")]
    public void ForceInSi_IsSaid(double newtons, string expected) =>
        Assert.Equal(expected, Si.Say(newtons, QuantityKind.Force));

    // The trench bearer of the beam-file contract: its reactions are 1964 and 1461 lbf.
    [Theory]
    [InlineData(1964, "1.964 kip")]
    [InlineData(1461, "1.461 kip")]
    [InlineData(350, "0.350 kip")]
    [InlineData(31.46, "0.0315 kip")]
    [InlineData(-2500, "-2.500 kip")]
    public void ForceInUsUnits_IsSaidInKip(double pounds, string expected) =>
        Assert.Equal(expected, Us.Say(pounds * Pound, QuantityKind.Force));

    [Theory]
    [InlineData(1, "1.00 m")]
    [InlineData(3.8, "3.80 m")]
    [InlineData(1.396, "1.396 m")]
    [InlineData(2.60714, "2.607 m")]
    [InlineData(0.0889, "0.0889 m")]
    [InlineData(0, "0.00 m")]
    public void LengthInSi_IsSaidToTheMillimetre(double metres, string expected) =>
        Assert.Equal(expected, Si.Say(metres, QuantityKind.Length));

    [Theory]
    [InlineData(QuantityKind.ForcePerLength, 12000, "12.00 kN/m")]
    [InlineData(QuantityKind.Pressure, 10.8e6, "10.8 MPa")]
    [InlineData(QuantityKind.Pressure, 1.214e6, "1.21 MPa")]
    [InlineData(QuantityKind.Moment, 6805, "6.81 kNm")]
    [InlineData(QuantityKind.Stiffness, 2e6, "2000.00 kN/m")]
    [InlineData(QuantityKind.RotationalStiffness, 5e5, "500.0 kNm/rad")]
    [InlineData(QuantityKind.Area, 0.016875, "168.8 cm2")]
    [InlineData(QuantityKind.SectionModulus, 632.8125e-6, "632.8 cm3")]
    [InlineData(QuantityKind.Inertia, 7119.14e-8, "7119 cm4")]
    [InlineData(QuantityKind.UnitWeight, 77000, "77.00 kN/m3")]
    [InlineData(QuantityKind.Angle, 0.00321, "3.21 mrad")]
    [InlineData(QuantityKind.Share, 0.3, "30 %")]
    [InlineData(QuantityKind.Share, 0.025, "2.5 %")]
    [InlineData(QuantityKind.Number, 0.9, "0.90")]
    [InlineData(QuantityKind.Number, 1.316, "1.32")]
    public void OtherKindsInSi_AreSaid(QuantityKind kind, double value, string expected) =>
        Assert.Equal(expected, Si.Say(value, kind));

    [Theory]
    [InlineData("12.5 ft", QuantityKind.Length, "12.50 ft")]
    [InlineData("12'-6 1/2\"", QuantityKind.Length, "12.542 ft")]
    [InlineData("66 2/4 plf", QuantityKind.ForcePerLength, "66.5 lbf/ft")]
    [InlineData("1823 psi", QuantityKind.Pressure, "1823 psi")]
    [InlineData("45.25 psi", QuantityKind.Pressure, "45.3 psi")]
    [InlineData("7.4125 kip-ft", QuantityKind.Moment, "7.413 kip-ft")]
    [InlineData("12 kip/in", QuantityKind.Stiffness, "12.00 kip/in")]
    [InlineData("500 kip-ft/rad", QuantityKind.RotationalStiffness, "500.0 kip-ft/rad")]
    [InlineData("8.84 in2", QuantityKind.Area, "8.84 in2")]
    [InlineData("32.4 in3", QuantityKind.SectionModulus, "32.40 in3")]
    [InlineData("170 in4", QuantityKind.Inertia, "170.0 in4")]
    [InlineData("35 pcf", QuantityKind.UnitWeight, "35.0 pcf")]
    public void OtherKindsInUsUnits_AreSaid(string typed, QuantityKind kind, string expected) =>
        Assert.Equal(expected, Us.Say(Read.Value(typed, kind), kind));

    [Theory]
    [InlineData(6805, "+6.81")]
    [InlineData(-1211, "-1.21")]
    [InlineData(0, "0.00")]
    [InlineData(1e-9, "0.00")]
    [InlineData(-1e-9, "0.00")]
    [InlineData(double.NaN, "--")]
    public void SignedNumber_AlwaysHasItsSignUnlessNothing(double value, string expected) =>
        Assert.Equal(expected, Si.SignedNumber(value, QuantityKind.Moment));

    [Theory]
    [InlineData(0.0062, "6.2 mm", "0.244 in")]
    [InlineData(-0.0066, "6.6 mm", "0.260 in")]
    [InlineData(0.00065, "0.65 mm", "0.026 in")]
    [InlineData(0.0125, "12.5 mm", "0.492 in")]
    [InlineData(0, "0.0 mm", "0.000 in")]
    [InlineData(double.NegativeInfinity, "--", "--")]
    public void Movement_HasNoSign(double metres, string si, string us)
    {
        Assert.Equal(si, Si.Movement(metres));
        Assert.Equal(us, Us.Movement(metres));
    }

    [Fact]
    public void MovementNumber_HasItsSignAndTheUnitStandsApart()
    {
        Assert.Equal("-6.2", Si.MovementNumber(-0.0062));
        Assert.Equal("mm", Si.MovementUnit);
        Assert.Equal("in", Us.MovementUnit);
    }

    [Fact]
    public void AreaLoadAndDegrees_AreSaid()
    {
        Assert.Equal("2.50 kPa", Si.AreaLoad(2500));
        Assert.Equal("50.4 psf", Us.AreaLoad(Read.Value("50.44 psf", QuantityKind.Pressure)));
        Assert.Equal("1500 psf", Us.AreaLoad(Read.Value("1500 psf", QuantityKind.Pressure)));
        Assert.Equal("30.0 deg", DisplayUnits.Degrees(Math.PI / 6));
    }

    [Fact]
    public void SayBothWays_OwnSystemComesFirst()
    {
        Assert.Equal("12.5 ft = 3.81 m", Us.SayBothWays(3.81, QuantityKind.Length));
        Assert.Equal("3.81 m = 12.5 ft", Si.SayBothWays(3.81, QuantityKind.Length));
        Assert.Equal("12.00 kN = 2.698 kip", Si.SayBothWays(12000, QuantityKind.Force));
        Assert.Equal("30 %", Si.SayBothWays(0.3, QuantityKind.Share));
        Assert.Equal("--", Si.SayBothWays(double.NaN, QuantityKind.Length));
    }

    [Theory]
    [MemberData(nameof(EveryUnit))]
    public void NoNumber_IsTwoDashesWithoutAUnit(UnitSystem system, QuantityKind kind)
    {
        DisplayUnits units = new(system);

        Assert.Equal("--", units.Say(double.NaN, kind));
        Assert.Equal("--", units.Number(double.PositiveInfinity, kind));
        Assert.Equal("--", units.SignedNumber(double.NegativeInfinity, kind));
    }

    [Theory]
    [MemberData(nameof(EveryUnit))]
    public void WhatIsSaid_ReadsBackAsTheValueToItsLastDigit(UnitSystem system, QuantityKind kind)
    {
        DisplayUnits units = new(system);
        Gen.Select(Gen.Double[-6, 14], Gen.OneOf(1, -1)).Sample((power, sign) =>
        {
            double value = sign * Math.Pow(10, power);
            string said = units.Say(value, kind);
            Quantity read = Read.Accepted(QuantityReader.Read(said, kind));
            return Math.Abs(read.Value - value) <= (read.HalfDigit * (1 + 1e-9)) + (Math.Abs(value) * 1e-11);
        });
    }

    [Theory]
    [MemberData(nameof(EveryUnit))]
    public void NumberAndUnit_AreWhatIsSaid(UnitSystem system, QuantityKind kind)
    {
        DisplayUnits units = new(system);

        Assert.Equal(units.Say(123.456, kind), (units.Number(123.456, kind) + " " + units.UnitOf(kind)).TrimEnd());
    }

    [Theory]
    [MemberData(nameof(EveryUnit))]
    public void Zero_HasNoSignEver(UnitSystem system, QuantityKind kind)
    {
        DisplayUnits units = new(system);
        Gen.Double[-40, 2].Sample(power =>
        {
            string number = units.Number(-Math.Pow(10, power), kind);
            return number.StartsWith('-') == number.Any(c => c is >= '1' and <= '9');
        });
    }
}
