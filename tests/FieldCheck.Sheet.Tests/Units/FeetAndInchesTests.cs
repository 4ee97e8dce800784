using CsCheck;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Tests.Units;

public sealed class FeetAndInchesTests
{
    [Theory]
    [InlineData(0, "0\"")]
    [InlineData(0.0254, "1\"")]
    [InlineData(0.0127, "1/2\"")]
    [InlineData(0.0889, "3 1/2\"")]
    [InlineData(0.3048, "1'-0\"")]
    [InlineData(0.3175, "1'-0 1/2\"")]
    [InlineData(3.81, "12'-6\"")]
    [InlineData(3.8227, "12'-6 1/2\"")]
    [InlineData(-3.81, "-12'-6\"")]
    [InlineData(0.304546, "1'-0\"")]
    [InlineData(0.00079375, "1/16\"")]
    [InlineData(-0.0001, "0\"")]
    [InlineData(double.NaN, "--")]
    [InlineData(double.PositiveInfinity, "--")]
    [InlineData(304800, "1000000 ft")]
    public void Length_IsWrittenAsATapeIsRead(double metres, string expected) =>
        Assert.Equal(expected, FeetAndInches.Write(metres));

    [Fact]
    public void WhatIsWritten_ReadsBackToTheSixteenth() =>
        Gen.Double[-1000, 1000].Sample(metres => Math.Abs(
            Read.Value(FeetAndInches.Write(metres), QuantityKind.Length) - metres) <= 0.0254 / 32 * (1 + 1e-9));

    [Fact]
    public void Sixteenths_AreWrittenExactly() =>
        Gen.Int[-200_000, 200_000].Sample(parts =>
        {
            string written = FeetAndInches.Write(parts * 0.0254 / 16);
            return Read.Value(written, QuantityKind.Length) == (double)(parts * 0.0254m / 16);
        });
}
