using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Reading;

/// <summary>What does not read, the exact words that answer it, and where they point.</summary>
public sealed class QuantityReaderRefusedTests
{
    [Theory]
    // Nothing there, or no number
    [InlineData("", 0, "empty: expected a length such as \"12 ft 6 in\"")]
    [InlineData(" \t ", 0, "empty: expected a length such as \"12 ft 6 in\"")]
    [InlineData("abc", 0, "expected a length such as \"12 ft 6 in\", found 'abc'")]
    [InlineData("  ft 12", 2, "expected a length such as \"12 ft 6 in\", found 'ft'")]
    [InlineData(".", 0, "expected a length such as \"12 ft 6 in\", found '.'")]
    [InlineData("1.2.3 m", 0, "'1.2.3' is not a number")]
    [InlineData("１２ m", 0, "expected a length such as \"12 ft 6 in\", found '１２'")]
    [InlineData("\u001b[2J", 0, "expected a length such as \"12 ft 6 in\", found the character U+001B")]
    [InlineData("12 m\u202e", 4, "expected + - * / or the end, found the character U+202E")]
    [InlineData("NaN m", 0, "expected a length such as \"12 ft 6 in\", found 'NaN'")]
    // Commas
    [InlineData("1,5 ft", 0, "a comma is not read: 1,5 could be 1.5 or 15, write the one meant")]
    [InlineData("1,500 ft", 0, "a comma is not read: 1,500 could be 1.500 or 1500, write the one meant")]
    [InlineData("2 m + 1.234,5 mm", 6, "a comma is not read: 1.234,5 could be 1234.5 or 1.2345, write the one meant")]
    [InlineData("1,234,567 mm", 0, "a comma is not read: 1,234,567 could be 1234.567 or 1234567, write the one meant")]
    [InlineData(",5 m", 0, "a comma is not read: ,5 could be 0.5 or 5, write the one meant")]
    [InlineData("12 ft 6,5 in", 6, "a comma is not read: 6,5 could be 6.5 or 65, write the one meant")]
    [InlineData("12 ft, 6 in", 5, "expected + - * / or the end, found ','")]
    // Units
    [InlineData("12", 0, "12 has no unit: a length is written in ft, in, m, cm or mm")]
    [InlineData("2*1.2+0.6", 0, "2*1.2+0.6 has no unit: a length is written in ft, in, m, cm or mm")]
    [InlineData("12 furlong", 3, "unknown unit 'furlong': a length is written in ft, in, m, cm or mm")]
    [InlineData("12 feet", 3, "unknown unit 'feet': did you mean ft?")]
    [InlineData("12 inches", 3, "unknown unit 'inches': did you mean in?")]
    [InlineData("12 mmm", 3, "unknown unit 'mmm': did you mean mm?")]
    [InlineData("30°", 2, "unknown unit '°': did you mean deg?")]
    [InlineData("12 kN", 0, "expected a length such as \"12 ft 6 in\", found a force")]
    [InlineData("12 m²", 0, "expected a length such as \"12 ft 6 in\", found an area")]
    [InlineData("30 %", 0, "expected a length such as \"12 ft 6 in\", found a share")]
    [InlineData("6 m / 3 m", 0, "expected a length such as \"12 ft 6 in\", found a number")]
    [InlineData("1 / 2 ft", 0, "expected a length such as \"12 ft 6 in\", found a value in m^-1")]
    [InlineData("2 kN * 3 m2", 0, "expected a length such as \"12 ft 6 in\", found a value in N m^2")]
    [InlineData("2 kN * 3 kN", 0, "expected a length such as \"12 ft 6 in\", found a value in N^2")]
    [InlineData("(2+3) m", 6, "a unit follows a number, not a bracket: write (2+3) * 1 m")]
    [InlineData("(2+3)'", 5, "a unit follows a number, not a bracket: write (2+3) * 1 ft")]
    [InlineData("12/m", 2, "nothing stands before /m: write the whole unit, as in 12 kN/m")]
    // Feet, inches, fractions
    [InlineData(
        "12 ft - 6 in", 0,
        "12 ft - 6 in could join or subtract: write 12 ft 6 in to join, 12 ft - (6 in) to subtract")]
    [InlineData(
        "3 ft-6\"", 0,
        "3 ft - 6 in could join or subtract: write 3 ft 6 in to join, 3 ft - (6 in) to subtract")]
    [InlineData("12 ft 12 in", 6, "12 in after feet: inches after feet stay below 12")]
    [InlineData("12'-14\"", 4, "14\" after feet: inches after feet stay below 12")]
    [InlineData("12 ft 6", 6, "6 after feet has no unit: write 6 in")]
    [InlineData("12.5 ft 6 in", 0, "feet before inches are a whole number, not 12.5 ft")]
    [InlineData("12 1/2 ft 6 in", 0, "feet before inches are a whole number, not 12 1/2 ft")]
    [InlineData("\u00be\n \u2032\u00be\u2033", 0, "feet before inches are a whole number, not \u00be? \u2032")]
    [InlineData("12'-6", 4, "6 has no unit, and the other part of the sum is a length")]
    [InlineData("12''", 3, "expected + - * / or the end, found a foot mark")]
    [InlineData("1/3 ft", 0, "1/3 is no tape fraction (halves down to 64ths): write 1 ft / 3 or a decimal")]
    [InlineData("2/5'", 0, "2/5 is no tape fraction (halves down to 64ths): write 2 ft / 5 or a decimal")]
    [InlineData("1/128 in", 0, "1/128 is no tape fraction (halves down to 64ths): write 1 in / 128 or a decimal")]
    [InlineData("5 1/3 in", 2, "1/3 is no tape fraction (halves down to 64ths): write 5 in + 1 in / 3 or a decimal")]
    [InlineData("5 5/4 in", 2, "5/4 after 5: a fraction after a whole number stays below 1")]
    [InlineData("5 4/4 in", 2, "4/4 after 5: a fraction after a whole number stays below 1")]
    [InlineData("5 1 / 4 in", 2, "'1' follows without a sign: write + or * between, and a number without spaces")]
    [InlineData("5.5 1/4 in", 4, "'1' follows without a sign: write + or * between, and a number without spaces")]
    [InlineData("5-1/4 in", 0, "5 has no unit, and the other part of the sum is a length")]
    // Signs and brackets
    [InlineData("4 ft + 3 kN", 7, "a force cannot be added to a length")]
    [InlineData("4 ft - 10 %", 7, "a share cannot be subtracted from a length")]
    [InlineData("4 ft + 3", 7, "3 has no unit, and the other part of the sum is a length")]
    [InlineData("1 000 mm", 2, "'000' follows without a sign: write + or * between, and a number without spaces")]
    [InlineData("12 m 50 cm", 5, "'50' follows without a sign: write + or * between, and a number without spaces")]
    [InlineData("12 m x", 5, "expected + - * / or the end, found 'x'")]
    [InlineData("2 * ", 3, "the text ends where a number is expected")]
    [InlineData("2 m * kN", 6, "expected a number, found 'kN'")]
    [InlineData("2 m ** 3", 5, "expected a number, found '*'")]
    [InlineData("1 m + (2 m", 6, "this bracket is not closed")]
    [InlineData("2 m)", 3, "this bracket was not opened")]
    [InlineData("(2 m 3)", 5, "'3' follows without a sign: write + or * between, and a number without spaces")]
    [InlineData("5 m / 0", 6, "this divides by zero")]
    [InlineData("5 m / (2 - 2)", 6, "this divides by zero")]
    [InlineData("1e400 m", 0, "the number is too large")]
    [InlineData("1e300 m * 1e300", 0, "the number is too large")]
    [InlineData("1e308 m + 1e308 m", 0, "the number is too large")]
    [InlineData("1e-400 m", 0, "the number is too small")]
    [InlineData("1e-300 m / 1e300", 0, "the number is too small")]
    [InlineData("4e-324 mm", 0, "the number is too small")]
    [InlineData("4e-324 ft", 0, "the number is too small")]
    [InlineData("1m4*1m4*1m4*1m4", 0, "too many units multiplied together")]
    // Plus or minus
    [InlineData("3 m ± 1 in ± 2 in", 11, "± stands once, at the end of the text")]
    [InlineData("(3 m ± 1 in) / 2", 5, "± stands once, at the end of the text")]
    [InlineData("3 m ± -1 in", 6, "what follows ± is 0 or more")]
    [InlineData("3 m ± 1", 6, "1 has no unit: a length is written in ft, in, m, cm or mm")]
    [InlineData("3 m ± 1 kN", 6, "after ± expected a length or per cent, found a force")]
    [InlineData("3 m +/- 1 in", 4, "plus or minus is written ± or +-")]
    [InlineData("1e300 m ± 1e300 %", 10, "the number is too large")]
    [InlineData("± 1 in", 0, "expected a length such as \"12 ft 6 in\", found '±'")]
    [InlineData("12 ft ) \"", 6, "this bracket was not opened")]
    [InlineData("2 m \"", 4, "expected + - * / or the end, found an inch mark")]
    [InlineData("2 m '", 4, "expected + - * / or the end, found a foot mark")]
    [InlineData("2 m 😀", 4, "expected + - * / or the end, found '😀'")]
    [InlineData("(2 + 3)\"", 7, "a unit follows a number, not a bracket: write (2 + 3) * 1 in")]
    [InlineData("(2 + 3) '", 8, "a unit follows a number, not a bracket: write (2 + 3) * 1 ft")]
    public void BrokenLength_IsAnsweredInTheseWords(string text, int offset, string expected) =>
        AssertRefused(text, offset, expected, QuantityKind.Length);

    // No text of an attribute can hold it.
    [Fact]
    public void HalfOfAPair_IsNamedByItsNumber() => AssertRefused(
        "2 m \ud83d", 4, "expected + - * / or the end, found the character U+D83D", QuantityKind.Length);

    [Theory]
    [InlineData("feet", "ft")]
    [InlineData("foot", "ft")]
    [InlineData("inch", "in")]
    [InlineData("meter", "m")]
    [InlineData("meters", "m")]
    [InlineData("metre", "m")]
    [InlineData("Metres", "m")]
    [InlineData("pound", "lbf")]
    [InlineData("pounds", "lbf")]
    [InlineData("lbs", "lb")]
    [InlineData("tonne", "t")]
    [InlineData("tonnes", "t")]
    [InlineData("degree", "deg")]
    [InlineData("degrees", "deg")]
    public void UnitSpeltOut_IsAskedForInItsSign(string spelt, string sign)
    {
        foreach (QuantityKind kind in new[] { QuantityKind.Length, QuantityKind.Force, QuantityKind.ForcePerLength, QuantityKind.Angle })
        {
            AssertRefused($"12 {spelt}", 3, $"unknown unit '{spelt}': did you mean {sign}?", kind);
        }
    }

    [Theory]
    [InlineData("2 tonf", QuantityKind.Force, 2, "2 tonf could be 2 t, 4000 lbf (short tons) or 4480 lbf (long tons): write the one meant")]
    [InlineData(
        "12", QuantityKind.Force, 0,
        "12 has no unit: a force is written in N, kN, MN, lbf, lb, kip, kgf, kg or t")]
    [InlineData(
        "1.2 ton", QuantityKind.Force, 4,
        "1.2 ton could be 1.2 t, 2400 lbf (short tons) or 2688 lbf (long tons): write the one meant")]
    [InlineData(
        "3 TONS", QuantityKind.Force, 2,
        "3 TONS could be 3 t, 6000 lbf (short tons) or 6720 lbf (long tons): write the one meant")]
    [InlineData("250 kg/m2", QuantityKind.Pressure, 4, "'kg/m2' is no unit here: 250 kg/m2 is 2.4516625 kN/m2")]
    [InlineData("250 kg/m²", QuantityKind.Pressure, 4, "'kg/m²' is no unit here: 250 kg/m² is 2.4516625 kN/m2")]
    [InlineData("0.25 t/m2", QuantityKind.Pressure, 5, "'t/m2' is no unit here: 0.25 t/m2 is 2.4516625 kN/m2")]
    [InlineData("1.5 t/m", QuantityKind.ForcePerLength, 4, "'t/m' is no unit here: 1.5 t/m is 1500 kg/m")]
    [InlineData("600 in-lb", QuantityKind.Moment, 4, "'in-lb' is no unit here: 600 in-lb is 50 lb-ft")]
    [InlineData("5 pli", QuantityKind.ForcePerLength, 2, "'pli' is no unit here: 5 pli is 60 plf")]
    [InlineData("5 MNm", QuantityKind.Moment, 2, "'MNm' is no unit here: 5 MNm is 5000 kN*m")]
    [InlineData("500 kg*m", QuantityKind.Moment, 4, "'kg*m' is no unit here: 500 kg*m is 4903.325 N*m")]
    [InlineData("12 knn", QuantityKind.Force, 3, "unknown unit 'knn': did you mean kN?")]
    [InlineData("12 gN", QuantityKind.Force, 3, "unknown unit 'gN': did you mean MN or kN?")]
    [InlineData("12 k", QuantityKind.Force, 3, "unknown unit 'k': did you mean kip or kN?")]
    [InlineData("12 kips", QuantityKind.Force, 3, "unknown unit 'kips': did you mean kip?")]
    [InlineData("12 #", QuantityKind.Force, 3, "unknown unit '#': did you mean lb?")]
    [InlineData("5 kNm", QuantityKind.Force, 0, "expected a force such as \"1850 lbf\", found a moment")]
    [InlineData("12 kn/n", QuantityKind.ForcePerLength, 3, "unknown unit 'kn/n': did you mean kN/m?")]
    [InlineData("12 lb/in", QuantityKind.ForcePerLength, 3, "unknown unit 'lb/in': did you mean lbf/in?")]
    [InlineData("50 psff * 4 ft", QuantityKind.ForcePerLength, 3, "unknown unit 'psff': did you mean psf?")]
    [InlineData("5 m-kN", QuantityKind.Moment, 2, "unknown unit 'm-kN': did you mean kN*m or kNm?")]
    [InlineData("5 kN m", QuantityKind.Moment, 5, "expected + - * / or the end, found 'm'")]
    [InlineData("5 Nm/rad", QuantityKind.RotationalStiffness, 2, "unknown unit 'Nm/rad': did you mean N*m/rad?")]
    [InlineData("5 kN/m2", QuantityKind.Stiffness, 0, "expected a stiffness such as \"12 kip/in\", found a pressure")]
    [InlineData(
        "29e6", QuantityKind.Pressure, 0,
        "29e6 has no unit: a pressure is written in Pa, kPa, MPa, GPa, N/mm2, N/m2, kN/m2, psf, ksf, psi or ksi")]
    [InlineData("8 in", QuantityKind.Area, 0, "expected an area such as \"8.84 in2\", found a length")]
    [InlineData(
        "170 in3", QuantityKind.Inertia, 0,
        "expected a second moment of area such as \"170 in4\", found a section modulus")]
    [InlineData("2 m", QuantityKind.Number, 0, "expected a number such as \"1.25\", found a length")]
    [InlineData("30 %", QuantityKind.Number, 0, "expected a number such as \"1.25\", found a share")]
    [InlineData("3 ± 1", QuantityKind.Number, 4, "a number takes no ±")]
    [InlineData("0.3", QuantityKind.Share, 0, "0.3 could be 30 % or 0.3 %: write the one meant")]
    [InlineData("30 % ± 5 %", QuantityKind.Share, 7, "a share takes no ±")]
    [InlineData("50 % / 25 %", QuantityKind.Share, 0, "expected a share such as \"30 %\", found a number")]
    [InlineData("30 kN", QuantityKind.Share, 0, "expected a share such as \"30 %\", found a force")]
    public void BrokenCellOfAnotherKind_IsAnsweredInTheseWords(
        string text, QuantityKind kind, int offset, string expected) => AssertRefused(text, offset, expected, kind);

    [Fact]
    public void SeveralKinds_AreAllNamed()
    {
        const string Kinds =
            "a force such as \"1850 lbf\", a force per length such as \"12 kN/m\" or a moment such as \"5 kNm\"";

        AssertRefused("12", 0, "12 has no unit: expected " + Kinds, Load);
        AssertRefused("12 ft", 0, "expected " + Kinds + ", found a length", Load);
        AssertRefused("", 0, "empty: expected " + Kinds, Load);
    }

    [Fact]
    public void TooLong_PointsToWhereTheLimitIs() =>
        AssertRefused("1 m" + new string(' ', 198), 200, "too long: at most 200 characters", QuantityKind.Length);

    [Fact]
    public void NestedTooDeep_PointsToTheBracketTooMany() =>
        AssertRefused(new string('(', 40) + "1 m", 32, "brackets are nested too deep: at most 32", QuantityKind.Length);

    [Fact]
    public void BracketsSideBySide_AreNotNested() =>
        Assert.Equal(40, Read.Value(string.Join('+', Enumerable.Repeat("(1)", 40)), QuantityKind.Number));

    [Fact]
    public void LongWord_IsClipped() => AssertRefused(
        "1 " + new string('q', 100),
        2,
        $"unknown unit '{new string('q', 24)}...': a length is written in ft, in, m, cm or mm",
        QuantityKind.Length);

    private static readonly QuantityKind[] Load =
        [QuantityKind.Force, QuantityKind.ForcePerLength, QuantityKind.Moment];

    private static void AssertRefused(string text, int offset, string expected, params ReadOnlySpan<QuantityKind> kinds)
    {
        Reading<Quantity>.Refused refused = Read.Refused(QuantityReader.Read(text, kinds));

        Assert.Equal(expected, refused.Text);
        Assert.Equal(offset, refused.Offset);
    }
}
