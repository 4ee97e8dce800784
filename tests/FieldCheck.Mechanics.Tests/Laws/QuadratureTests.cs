namespace FieldCheck.Mechanics.Tests.Laws;

public sealed class QuadratureTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(9)]
    public void PowersUpToTheNinth_IntegrateExactly(int power) => Assert.Equal(
        (Math.Pow(3, power + 1) - 1) / (power + 1),
        Quadrature.Integral(x => Math.Pow(x, power), 1, 3),
        tolerance: 1e-14 * Math.Pow(3, power + 1));

    [Fact]
    public void TenthPower_IsBeyondIt() =>
        Assert.NotEqual(2 / 11.0, Quadrature.Integral(x => Math.Pow(x, 10), -1, 1), tolerance: 1e-4);
}
