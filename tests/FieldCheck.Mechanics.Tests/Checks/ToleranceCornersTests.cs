using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

public sealed class ToleranceCornersTests
{
    // Corners times spans and loads, at most 1000: of 64 corners 15, of 2 corners 500.
    [Theory]
    [InlineData(6, 1, 14, true)]
    [InlineData(6, 1, 15, false)]
    [InlineData(6, 2, 13, true)]
    [InlineData(6, 2, 14, false)]
    [InlineData(7, 1, 1, false)]
    [InlineData(1, 1, 499, true)]
    [InlineData(1, 1, 500, false)]
    public void EveryCorner_IsTakenWhereThatIsLittleWork(int moving, int spans, int loads, bool areFew)
    {
        BeamModel model = Said.On(
            [.. Enumerable.Repeat(4.0, spans)], [0, 4], [.. Enumerable.Range(0, loads).Select(_ => Said.Point(1, 1))]);
        ImmutableArray<double> halves = [0, .. Enumerable.Repeat(0.5, moving), 0];

        Assert.Equal(areFew, ToleranceCorners.AreFew(halves, model));
    }

    [Fact]
    public void Alone_IsEachInputAtBothEnds() => Assert.Equal(
        ["0 0 0", "-2 0 0", "2 0 0", "0 0 -3", "0 0 3"], Written(ToleranceCorners.Alone([2, 0, 3])));

    [Fact]
    public void Together_IsEveryCornerBesides()
    {
        Assert.Equal(
            ["0 0 0", "-2 0 0", "2 0 0", "0 0 -3", "0 0 3", "-2 0 -3", "-2 0 3", "2 0 -3", "2 0 3"],
            Written(ToleranceCorners.Together([2, 0, 3])));
        Assert.Equal(["0 0", "0 -3", "0 3"], Written(ToleranceCorners.Together([0, 3])));
    }

    private static string[] Written(IEnumerable<ImmutableArray<double>> offsets) =>
        [.. offsets.Select(one => string.Join(' ', one))];
}
