using FieldCheck.Mechanics.Checks;

namespace FieldCheck.Mechanics.Tests.Checks;

public sealed class InfluenceIntegralTests
{
    // The shear at 3 m of a simple beam of 10 m: -ξ / 10 left of it, 1 - ξ / 10 right of it.
    private static readonly InfluenceIntegral Shear = new(
        [
            new Stretch(0, 3, 0, 10, [0, -1, 0, 0, 0, 0, 0, 0, 0]), new Stretch(3, 10, 0, 10, [1, -1, 0, 0, 0, 0, 0, 0, 0]),
        ],
        along: false);

    // -ξ² / 20 up to 3 m: -0.45; from there on ξ - ξ² / 20 - 3.
    [Theory]
    [InlineData(2, 4, -0.45, 0.2)]
    [InlineData(2, 2.5, -0.3125, -0.2)]
    [InlineData(3.5, 4, -0.1125, 0.2)]
    [InlineData(0, 10, -0.45, 2)]
    public void Range_LooksAtTheSection_WhereTheLineJumpsThroughNil(double from, double to, double low, double high)
    {
        (double least, double greatest) = Shear.RangeTo(from, to);

        Assert.Equal((low, high), (Math.Round(least, 12), Math.Round(greatest, 12)));
    }

    [Fact]
    public void PlaceThatRoundingPutsBeyondTheEnd_IsTheEnd()
    {
        (double zeroth, double first) = Shear.To(10 + 1e-13);

        Assert.Equal(2, zeroth, 1e-12);
        Assert.Equal(-0.1 * 1000 / 3 + (100 - 9) / 2.0, first, 1e-11);
    }
}
