using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Tests.Units;

public sealed class ReadBackTests
{
    [Theory]
    [InlineData("12'-6 1/2\"", QuantityKind.Length, UnitSystem.Us, "12'-6 1/2\" = 12.542 ft = 3.823 m")]
    [InlineData("12'-6 1/2\"", QuantityKind.Length, UnitSystem.Si, "12'-6 1/2\" = 12.542 ft = 3.823 m")]
    [InlineData("12.5 ft", QuantityKind.Length, UnitSystem.Us, "12.5 ft = 3.81 m")]
    [InlineData("12.50ft", QuantityKind.Length, UnitSystem.Us, "12.50ft = 3.81 m")]
    [InlineData("3.81 m", QuantityKind.Length, UnitSystem.Si, "3.81 m = 12.5 ft")]
    [InlineData("381 cm", QuantityKind.Length, UnitSystem.Si, "381 cm = 3.81 m = 12.5 ft")]
    [InlineData("381 cm", QuantityKind.Length, UnitSystem.Us, "381 cm = 12.5 ft = 3.81 m")]
    [InlineData("2*1.2 m + 0.6 m", QuantityKind.Length, UnitSystem.Si, "2*1.2 m + 0.6 m = 3 m = 9.843 ft")]
    [InlineData("3 m ± 30 cm", QuantityKind.Length, UnitSystem.Si, "3 m ± 30 cm = 3 m ± 0.3 m = 9.843 ft ± 0.984 ft")]
    [InlineData("1.2 t", QuantityKind.Force, UnitSystem.Si, "1.2 t = 11.77 kN")]
    [InlineData("1.2 t", QuantityKind.Force, UnitSystem.Us, "1.2 t = 2.646 kip")]
    [InlineData("12 kN", QuantityKind.Force, UnitSystem.Si, "12 kN = 2.698 kip")]
    [InlineData("1850 lbf", QuantityKind.Force, UnitSystem.Us, "1850 lbf = 1.850 kip")]
    [InlineData("50 psf", QuantityKind.Pressure, UnitSystem.Us, "50 psf = 2.39 kPa")]
    [InlineData("50 psf", QuantityKind.Pressure, UnitSystem.Si, "50 psf = 2.39 kPa")]
    [InlineData("45 psi", QuantityKind.Pressure, UnitSystem.Si, "45 psi = 0.31 MPa")]
    [InlineData("9 GPa", QuantityKind.Pressure, UnitSystem.Si, "9 GPa = 9000.0 MPa")]
    [InlineData("0.5 rad", QuantityKind.Angle, UnitSystem.Si, "0.5 rad = 28.6 deg")]
    [InlineData("30 deg", QuantityKind.Angle, UnitSystem.Si, "30 deg")]
    [InlineData("30 %", QuantityKind.Share, UnitSystem.Si, "30 %")]
    [InlineData("  12 kN\t", QuantityKind.Force, UnitSystem.Us, "12 kN = 2.698 kip")]
    public void Typed_IsSaidBack(string text, QuantityKind kind, UnitSystem system, string expected)
    {
        Quantity quantity = Read.Accepted(QuantityReader.Read(text, kind));

        Assert.Equal(expected, ReadBack.Say(text, quantity, kind, new DisplayUnits(system)));
    }

    [Theory]
    [InlineData("12 kN/m", 1, 12000, UnitSystem.Si, "12 kN/m over 1.00 m = 12.00 kN in all")]
    [InlineData("1.2 t", 1, 11767.98, UnitSystem.Si, "1.2 t over 1.00 m = 11.77 kN in all")]
    [InlineData("60 plf", 5.334, 4670.6326960235, UnitSystem.Us, "60 plf over 17.50 ft = 1.050 kip in all")]
    public void LoadOverALength_IsSaidInAll(
        string text, double length, double total, UnitSystem system, string expected) =>
        Assert.Equal(expected, ReadBack.SayInAll(text, length, total, new DisplayUnits(system)));

    [Theory]
    [InlineData("A + 4 ft", 2.4384, UnitSystem.Us, "A + 4 ft = 8 ft = 2.438 m from the left end")]
    [InlineData("joint 1 + 1 m", 5, UnitSystem.Si, "joint 1 + 1 m = 5 m = 16.404 ft from the left end")]
    [InlineData("5 m", 5, UnitSystem.Si, "5 m = 16.404 ft from the left end")]
    public void Place_IsSaidFromTheLeftEnd(string text, double metres, UnitSystem system, string expected) =>
        Assert.Equal(expected, ReadBack.SayPlace(text, metres, new DisplayUnits(system)));

    [Fact]
    public void ControlCharacters_NeverComeBack() => Assert.Equal(
        "?[2J12 kN over 1.00 m = 12.00 kN in all",
        ReadBack.SayInAll("\u001b[2J12 kN", 1, 12000, new DisplayUnits(UnitSystem.Si)));
}
