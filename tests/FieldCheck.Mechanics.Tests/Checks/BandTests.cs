using FieldCheck.Mechanics.Checks;

namespace FieldCheck.Mechanics.Tests.Checks;

public sealed class BandTests
{
    [Fact]
    public void BandAroundTwo_IsAsCertainAsTheLessCertainOne()
    {
        Band exact = new(1, 3, BandCertainty.Exact);
        Band estimate = new(2, 5, BandCertainty.Estimate);

        Assert.Equal(new Band(1, 5, BandCertainty.Estimate), exact.Around(estimate));
        Assert.Equal(new Band(1, 5, BandCertainty.Estimate), estimate.Around(exact));
    }

    [Theory]
    [InlineData(-5, 3, 5)]
    [InlineData(-3, 5, 5)]
    [InlineData(0, 4, 4)]
    [InlineData(-4, 0, 4)]
    public void SizeOfAnEffect_IsTheLargerOfTheTwo(double down, double up, double size) =>
        Assert.Equal(size, new InputEffect(0, down, up, 0).Size);
}
