using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Reading;

/// <summary>What reads, and as what: the rules are "Quantities" in docs/beam-file.md.</summary>
public sealed class QuantityReaderAcceptedTests
{
    private const double Foot = 0.3048;
    private const double Inch = 0.0254;
    private const double Pound = 4.4482216152605;
    private const double Gravity = 9.80665;

    [Theory]
    [InlineData("12 ft 6 in", 3.81)]
    [InlineData("12'-6 1/2\"", 3.8227)]
    [InlineData("12' 6\"", 3.81)]
    [InlineData("12'6\"", 3.81)]
    [InlineData("12' - 6\"", 3.81)]
    [InlineData("12'- 6 in", 3.81)]
    [InlineData("12 FT 6 IN", 3.81)]
    [InlineData("5 1/4 in", 0.13335)]
    [InlineData("150\"", 3.81)]
    [InlineData("3.81 m", 3.81)]
    [InlineData("3.81m", 3.81)]
    [InlineData("  3.81   m  ", 3.81)]
    [InlineData("381 cm", 3.81)]
    [InlineData("3810 mm", 3.81)]
    [InlineData("12.5 ft", 3.81)]
    [InlineData("4 ft", 1.2192)]
    [InlineData("48 in", 1.2192)]
    [InlineData("7ft10.5in", 2.4003)]
    [InlineData("7ft2in", 2.1844)]
    [InlineData("7ft2\"", 2.1844)]
    [InlineData("7ft2½in", 2.1971)]
    [InlineData("0 ft 11 63/64 in", 0.304403125)]
    [InlineData("1/2 ft", 0.1524)]
    [InlineData("3/4in", 0.01905)]
    [InlineData("10/4 ft", 0.762)]
    [InlineData("1/64 in", 0.000396875)]
    [InlineData(".5 m", 0.5)]
    [InlineData("5. m", 5)]
    [InlineData("2.5e3 mm", 2.5)]
    [InlineData("2.5E+3 mm", 2.5)]
    [InlineData("25e-1 m", 2.5)]
    [InlineData("-12' 6\"", -3.81)]
    [InlineData("+3 m", 3)]
    [InlineData("--3 m", 3)]
    [InlineData("0 m", 0)]
    public void Length_ReadsExactly(string text, double metres) =>
        Assert.Equal(metres, Read.Value(text, QuantityKind.Length));

    [Theory]
    [InlineData("12′-6″", "12'-6\"")]
    [InlineData("12’ 6”", "12' 6\"")]
    [InlineData("12'−6\"", "12'-6\"")]
    [InlineData("5½ in", "5 1/2 in")]
    [InlineData("5 ¼ in", "5 1/4 in")]
    [InlineData("¾\"", "3/4\"")]
    [InlineData("12'-6½\"", "12'-6 1/2\"")]
    [InlineData("2 × 3 m", "2 * 3 m")]
    [InlineData("2 · 3 m", "2 * 3 m")]
    [InlineData("5 m − 2 m", "5 m - 2 m")]
    [InlineData("−2 m", "-2 m")]
    [InlineData("25e−1 m", "25e-1 m")]
    [InlineData("3\u00a0m", "3 m")]
    public void SignsOfWordProcessors_ReadAsThePlainOnes(string text, string plain) =>
        Assert.Equal(Read.Value(plain, QuantityKind.Length), Read.Value(text, QuantityKind.Length));

    [Theory]
    [InlineData("(3 m + 250 mm) / 2", 1.625)]
    [InlineData("2*1.2 m + 0.6 m", 3)]
    [InlineData("(2*1.2+0.6) * 1 m", 3)]
    [InlineData("12 ft - (6 in)", 11.5 * Foot)]
    [InlineData("20 ft 3 in - 6 in", 19.75 * Foot)]
    [InlineData("10 m - 2 m - 3 m", 5)]
    [InlineData("24 m / 2 / 3", 4)]
    [InlineData("24 m / (2 * 3)", 4)]
    [InlineData("1 m + 2 m * 3", 7)]
    [InlineData("1/2 * 12 ft", 6 * Foot)]
    [InlineData("1/3 * 12 ft", 4 * Foot)]
    [InlineData("1 ft / 3", Foot / 3)]
    [InlineData("6 kNm / 2 kN", 3)]
    [InlineData("12 ft2 / 3 ft", 4 * Foot)]
    [InlineData("2 m - -3 m", 5)]
    [InlineData("-(2 m - 5 m)", 3)]
    [InlineData("5' - 2 m", (5 * Foot) - 2)]
    public void LengthWorkedOut_FollowsPrecedence(string text, double metres) =>
        Read.IsWithin(1e-15, metres, Read.Value(text, QuantityKind.Length));

    [Theory]
    [InlineData("1850 lbf", QuantityKind.Force, 1850 * Pound)]
    [InlineData("850 kg", QuantityKind.Force, 850 * Gravity)]
    [InlineData("1.2 t", QuantityKind.Force, 1200 * Gravity)]
    [InlineData("1.2t", QuantityKind.Force, 1200 * Gravity)]
    [InlineData("2 * 1.2 kN + 300 N", QuantityKind.Force, 2700)]
    [InlineData("50 psf * 4 ft * 3 ft", QuantityKind.Force, 600 * Pound)]
    [InlineData("50 psf * 4 ft", QuantityKind.ForcePerLength, 200 * Pound / Foot)]
    [InlineData("50 psf * 16 in", QuantityKind.ForcePerLength, 50 * Pound / Foot * (16.0 / 12))]
    [InlineData("4 ft*(20 psf + 40 psf)", QuantityKind.ForcePerLength, 240 * Pound / Foot)]
    [InlineData("10 lb / 2 ft", QuantityKind.ForcePerLength, 5 * Pound / Foot)]
    [InlineData("12 kN/2 m", QuantityKind.ForcePerLength, 6000)]
    [InlineData("12 kN / 1/2 m", QuantityKind.ForcePerLength, 24000)]
    [InlineData("80 kg/m", QuantityKind.ForcePerLength, 80 * Gravity)]
    [InlineData("-3 kN/m", QuantityKind.ForcePerLength, -3000)]
    [InlineData("12 kip/in", QuantityKind.Stiffness, 12000 * Pound / Inch)]
    [InlineData("12 kip / 1/2 in", QuantityKind.Stiffness, 24000 * Pound / Inch)]
    [InlineData("2 kN * 3 m", QuantityKind.Moment, 6000)]
    [InlineData("2 kN*3 m", QuantityKind.Moment, 6000)]
    [InlineData("20 kip-ft", QuantityKind.Moment, 20000 * Pound * Foot)]
    [InlineData("5 kNm / 0.01 rad", QuantityKind.RotationalStiffness, 500000)]
    [InlineData("29e6 psi", QuantityKind.Pressure, 29e6 * Pound / (Inch * Inch))]
    [InlineData("2 kN / (2 m * 500 mm)", QuantityKind.Pressure, 2000)]
    [InlineData("100 mm * 225 mm", QuantityKind.Area, 0.0225)]
    [InlineData("100 mm * (225 mm * 225 mm) / 6", QuantityKind.SectionModulus, 0.1 * 0.225 * 0.225 / 6)]
    [InlineData("170 in4", QuantityKind.Inertia, 170 * Inch * Inch * Inch * Inch)]
    [InlineData("7850 kg/m3", QuantityKind.UnitWeight, 7850 * Gravity)]
    [InlineData("30 deg", QuantityKind.Angle, Math.PI / 6)]
    [InlineData("1.2 * 0.5", QuantityKind.Number, 0.6)]
    [InlineData("6 m / 3 m", QuantityKind.Number, 2)]
    [InlineData("50 % / 25 %", QuantityKind.Number, 2)]
    [InlineData("30 % / 2", QuantityKind.Share, 0.15)]
    [InlineData("30 %", QuantityKind.Share, 0.3)]
    [InlineData("30%", QuantityKind.Share, 0.3)]
    [InlineData("2 * 15 %", QuantityKind.Share, 0.3)]
    [InlineData("10 % + 20 %", QuantityKind.Share, 0.3)]
    [InlineData("1200 lbf * 25 %", QuantityKind.Force, 300 * Pound)]
    public void Quantity_ReadsInCoherentSi(string text, QuantityKind kind, double expected) =>
        Read.IsWithin(1e-15, expected, Read.Value(text, kind));

    [Theory]
    [InlineData("12 ft ± 1 in", Inch)]
    [InlineData("12 ft +- 1 in", Inch)]
    [InlineData("12 ft +−1 in", Inch)]
    [InlineData("12'-6\" ± 1/2\"", Inch / 2)]
    [InlineData("-10 m ± 10 %", 1)]
    [InlineData("2 m + 3 m ± (1 cm + 2 cm)", 0.03)]
    [InlineData("3 m ± 0 m", 0)]
    public void PlusOrMinus_IsTheHalfWidth(string text, double expected)
    {
        Quantity length = Read.Accepted(QuantityReader.Read(text, QuantityKind.Length));

        Read.IsWithin(1e-15, expected, Assert.NotNull(length.Spread));
    }

    [Fact]
    public void NoPlusOrMinus_HasNoSpread() =>
        Assert.Null(Read.Accepted(QuantityReader.Read("12 ft", QuantityKind.Length)).Spread);

    [Theory]
    [InlineData("12 kip", 500 * Pound)]
    [InlineData("2.0 kip", 50 * Pound)]
    [InlineData("-10.3 kN", 50)]
    [InlineData("10.30 kN ± 1 kN", 5)]
    [InlineData("1200 lbf", 0.5 * Pound)]
    [InlineData("1.2e3 N", 50)]
    [InlineData("0e999 N", 0)]
    [InlineData("0e308 MN", 0)]
    [InlineData("1/2 kip", 0)]
    [InlineData("1½ kip", 0)]
    [InlineData("1 kip + 2 kip", 0)]
    [InlineData("2 * 3 kip", 0)]
    [InlineData("6 kip / 2", 0)]
    [InlineData("(12 kip)", 0)]
    public void HalfDigit_IsHalfOfTheLastDigitWritten(string text, double expected) =>
        Read.IsWithin(1e-15, expected, Read.Accepted(QuantityReader.Read(text, QuantityKind.Force)).HalfDigit);

    [Theory]
    [InlineData("12 ft 6 in", Inch / 2)]
    [InlineData("12 ft 6.5 in", Inch / 20)]
    [InlineData("12 ft", Foot / 2)]
    [InlineData("12'-6 1/2\"", 0)]
    public void HalfDigitOfFeetAndInches_IsThatOfTheInches(string text, double expected) =>
        Read.IsWithin(1e-15, expected, Read.Accepted(QuantityReader.Read(text, QuantityKind.Length)).HalfDigit);

    [Theory]
    [InlineData("12 kN", QuantityKind.Force)]
    [InlineData("12 kN/m", QuantityKind.ForcePerLength)]
    [InlineData("5 kNm", QuantityKind.Moment)]
    public void SeveralKinds_TheDimensionSaysWhich(string text, QuantityKind expected)
    {
        Quantity size = Read.Accepted(QuantityReader.Read(
            text, QuantityKind.Force, QuantityKind.ForcePerLength, QuantityKind.Moment));

        Assert.Equal(Dimension.Of(expected), size.Dimension);
    }

    [Fact]
    public void LongestText_Reads() =>
        Assert.Equal(1, Read.Value(new string(' ', QuantityReader.LongestText - 3) + "1 m", QuantityKind.Length));

    [Fact]
    public void NoKinds_IsTheCallersBug() =>
        Assert.Throws<ArgumentException>(() => QuantityReader.Read("1 m", []));
}
