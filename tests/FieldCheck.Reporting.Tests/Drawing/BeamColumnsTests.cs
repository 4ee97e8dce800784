using CsCheck;
using FieldCheck.Reporting.Drawing;

namespace FieldCheck.Reporting.Tests.Drawing;

public sealed class BeamColumnsTests
{
    [Theory]
    [InlineData(0.0, 0)]
    [InlineData(0.30, 4)]
    [InlineData(1.10, 18)]
    [InlineData(2.70, 44)]
    [InlineData(3.60, 59)]
    public void APlace_IsTheColumnNearestToIt_OnABorderTheLeftOne(double place, int column) =>
        Assert.Equal(column, new BeamColumns(3.60, 60).Of(place));

    [Fact]
    public void TheMiddleOfAColumn_IsInThatColumn() =>
        Gen.Select(Gen.Double[0.01, 1000.0], Gen.Int[1, 200]).Sample((length, width) =>
        {
            BeamColumns columns = new(length, width);
            Assert.All(Enumerable.Range(0, width), column => Assert.Equal(column, columns.Of(columns.Centre(column))));
        });

    [Fact]
    public void SeenFromTheOtherSide_APlaceHasTheMirroredColumn() =>
        Gen.Select(Gen.Double[0.01, 0.99], Gen.Int[10, 200])
            .Where((share, width) => Math.Abs(share * width - Math.Round(share * width)) > 1e-6)
            .Sample((share, width) =>
            {
                BeamColumns columns = new(1, width);
                Assert.Equal(width - 1 - columns.Of(share), columns.Of(1 - share));
            });
}
