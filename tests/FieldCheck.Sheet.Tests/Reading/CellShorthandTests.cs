using System.Globalization;
using CsCheck;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Tests.Reading;

public sealed class CellShorthandTests
{
    [Theory]
    [InlineData("12", "12 m")]
    [InlineData(" 12 ", "12 m")]
    [InlineData("-1.5", "-1.5 m")]
    [InlineData("1/2", "1/2 m")]
    [InlineData("5 1/4", "5 1/4 m")]
    [InlineData("5½", "5½ m")]
    [InlineData("1/3", "(1/3) * 1 m")]
    [InlineData("2*1.2+0.6", "(2*1.2+0.6) * 1 m")]
    [InlineData("(3)", "((3)) * 1 m")]
    [InlineData("12 ± 1", "12 m ± 1 m")]
    [InlineData("12+-1", "12 m+-1 m")]
    [InlineData("12 ± 10 %", "12 m ± 10 %")]
    [InlineData("12 ± 1 in", "12 m ± 1 in")]
    [InlineData("2*3 ± 1/3", "(2*3) * 1 m ± (1/3) * 1 m")]
    public void BareNumber_TakesTheUnitOfItsCell(string text, string expected) =>
        Assert.Equal(expected, CellShorthand.Expand(text, "m"));

    [Theory]
    [InlineData("12 kN")]
    [InlineData(" 12'-6\" ")]
    [InlineData("6 m / 3 m")]
    [InlineData("1 + 6 m / 3 m")]
    [InlineData("6 m / 3 m - 1")]
    [InlineData("2 * (6 m / 3 m)")]
    [InlineData("2 / (6 m / 3 m)")]
    [InlineData("12 ft + 3")]
    [InlineData("30 %")]
    [InlineData("1,5")]
    [InlineData("12 ft ± 1")]
    [InlineData("abc")]
    [InlineData("")]
    public void WhatHasAUnitOrDoesNotRead_StaysAsTyped(string text) =>
        Assert.Equal(text, CellShorthand.Expand(text, "m"));

    [Theory]
    [InlineData("7'10 1/2", "7'10 1/2\"")]
    [InlineData("7'-10", "7'-10\"")]
    [InlineData("7' 10", "7' 10\"")]
    [InlineData("7'", "7'")]
    [InlineData("7' 14", "7' 14")]
    [InlineData("7 ft 10", "7 ft 10")]
    public void FeetMarkWithBareInches_TakesTheInchMark(string text, string expected) =>
        Assert.Equal(expected, CellShorthand.Expand(text, "ft"));

    [Theory]
    [InlineData("1850", QuantityKind.Force, UnitSystem.Us, "1850 lbf")]
    [InlineData("30", QuantityKind.Share, UnitSystem.Us, "30 %")]
    [InlineData("1.25", QuantityKind.Number, UnitSystem.Si, "1.25")]
    [InlineData("30", QuantityKind.Angle, UnitSystem.Si, "30 deg")]
    public void Kind_DecidesTheUnit(string text, QuantityKind kind, UnitSystem system, string expected) =>
        Assert.Equal(expected, CellShorthand.Expand(text, kind, system));

    [Theory]
    [InlineData("12", "12 kN", null)]
    [InlineData("12/m", "12 kN/m", null)]
    [InlineData("12 / m", "12 / m", null)]
    [InlineData("2*3/m", "(2*3) * 1 kN/m", null)]
    [InlineData("12/m ", "12 kN/m", null)]
    [InlineData("12/ft", "12/ft", null)]
    [InlineData("12 kN/m", "12 kN/m", null)]
    [InlineData("5 kNm", "5 kNm", null)]
    [InlineData("1.2t", "1.2t", null)]
    [InlineData("50 psf * 4 ft", "50 psf * 4 ft", null)]
    [InlineData("3..6/m", "3 kN/m", "6 kN/m")]
    [InlineData(" 3 .. 6 /m ", "3 kN/m", "6 kN/m")]
    [InlineData("-3..0/m", "-3 kN/m", "0 kN/m")]
    [InlineData("3..6 kip/ft", "3 kip/ft", "6 kip/ft")]
    [InlineData("1 kN/m..6 kip/ft", "1 kN/m", "6 kip/ft")]
    [InlineData("3..6", "3..6", null)]
    [InlineData("3..6 kN", "3..6 kN", null)]
    [InlineData("3..", "3..", null)]
    [InlineData("..6/m", "..6/m", null)]
    [InlineData("3...6/m", "3...6/m", null)]
    public void LoadInSi_BecomesPlainText(string text, string size, string? end) =>
        Assert.Equal(new LoadText(size, end), CellShorthand.ExpandLoad(text, UnitSystem.Si));

    [Theory]
    [InlineData("1850", "1850 lbf", null)]
    [InlineData("60/ft", "60 lbf/ft", null)]
    [InlineData("60/m", "60/m", null)]
    [InlineData("20..60/ft", "20 lbf/ft", "60 lbf/ft")]
    public void LoadInUsUnits_BecomesPlainText(string text, string size, string? end) =>
        Assert.Equal(new LoadText(size, end), CellShorthand.ExpandLoad(text, UnitSystem.Us));

    [Theory]
    [InlineData("2.5", "2.5 m")]
    [InlineData("A + 4", "A + 4 m")]
    [InlineData("end-6", "end-6 m")]
    [InlineData("A - 2+3", "A + (- 2+3) * 1 m")]
    [InlineData("A + 4 ± 1", "A + 4 m ± 1 m")]
    [InlineData("end - 6 in", "end - 6 in")]
    [InlineData("mid 1", "mid 1")]
    [InlineData("A +- 1", "A +- 1")]
    [InlineData("A + 4 furlong", "A + 4 furlong")]
    public void Place_TakesTheUnitOfItsCell(string text, string expected) =>
        Assert.Equal(expected, CellShorthand.ExpandPlace(text, "m"));

    [Theory]
    [InlineData("24 x 24", "24 in x 24 in")]
    [InlineData("24x30 cm", "24 in x 30 cm")]
    [InlineData("24 in × 18 in", "24 in × 18 in")]
    [InlineData("24", "24")]
    public void Pad_TakesTheUnitOfItsCell(string text, string expected) =>
        Assert.Equal(expected, CellShorthand.ExpandPad(text, "in"));

    [Fact]
    public void BareArithmetic_ReadsAsItsResultInTheUnitOfTheCell()
    {
        Gen<string> number = Gen.Int[1, 999].Select(n => (n / 10m).ToString(CultureInfo.InvariantCulture));
        Gen<string> sum = Gen.Select(
            number, Gen.OneOf("+", "-", "*", "/", " + ", " - "), number, (left, sign, right) => left + sign + right);
        Gen.Select(sum, Gen.OneOf("ft", "kN", "kN/m", "deg", "%", "in4")).Sample((text, unit) =>
        {
            QuantityKind kind = UnitTable.Of(unit).Kind;
            double plain = Read.Value(text, QuantityKind.Number);
            double read = Read.Value(CellShorthand.Expand(text, unit), kind);
            Read.IsWithin(1e-15, plain * UnitTable.Factor(unit), read);
        });
    }

    [Fact]
    public void PlaceExpanded_LiesWhereItsArithmeticSays()
    {
        Place place = Read.Accepted(PlaceReader.Read(CellShorthand.ExpandPlace("A - 2+3", "m")));

        Assert.Equal(1, Assert.IsType<Quantity>(place.Offset).Value);
    }
}
