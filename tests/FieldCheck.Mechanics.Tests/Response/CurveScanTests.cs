using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Response;

/// <summary>Choosing among stations: ties within rounding, peaks and plateaus.</summary>
public sealed class CurveScanTests
{
    [Fact]
    public void Extremes_TieWithinRounding_TakesTheLeftmostPlaceAndTheGreatestValue()
    {
        Extremes extremes = CurveScan.Extremes([new(-2, 0), new(5 - 1e-14, 1), new(-2 - 1e-14, 2), new(5, 3)]);

        Assert.Equal(new Extreme(5, 1), extremes.Max);
        Assert.Equal(new Extreme(-2 - 1e-14, 0), extremes.Min);
    }

    [Fact]
    public void Extremes_DifferenceBeyondRounding_IsNoTie()
    {
        Extremes extremes = CurveScan.Extremes([new(0, 0), new(5 - 1e-10, 1), new(0, 2), new(5, 3)]);

        Assert.Equal(3, extremes.Max.Position);
    }

    [Fact]
    public void Extremes_DifferenceOfTheClosenessItself_IsATie()
    {
        Extremes high = CurveScan.Extremes([new(0, 0), new(1 - CurveScan.Closeness, 1), new(1, 2)]);
        Extremes low = CurveScan.Extremes([new(0, 0), new(-1 + CurveScan.Closeness, 1), new(-1, 2)]);

        Assert.Equal(new Extreme(1, 1), high.Max);
        Assert.Equal(new Extreme(-1, 1), low.Min);
    }

    [Theory]
    [InlineData(1000, 1e-9)]
    [InlineData(-0.001, 1e-15)]
    public void Tie_IsAShareOfTheGreatestSize(double size, double expected) =>
        Assert.Equal(expected, CurveScan.Tie([new(0, 0), new(size, 1), new(size / 2, 2)]), expected * 1e-12);

    [Fact]
    public void Peaks_ARiseOfTheClosenessItself_IsNone() => Assert.Equal(
        [new Extreme(1, 0), new Extreme(0, 1)],
        CurveScan.Peaks([new Extreme(1, 0), new Extreme(0, 1), new Extreme(CurveScan.Closeness, 2)]).AsEnumerable());

    [Fact]
    public void Peaks_OfARiseAPlateauAndAFall_AreThreeWithThePlateausLeftEnd()
    {
        Extreme[] stations = [new(0, 0), new(4, 1), new(4, 2), new(4 + 1e-15, 3), new(1, 4)];

        Assert.Equal([new Extreme(0, 0), new Extreme(4, 1), new Extreme(1, 4)], CurveScan.Peaks(stations).AsEnumerable());
    }

    [Fact]
    public void Peaks_AStepOnTheWayUp_IsNone()
    {
        Extreme[] stations = [new(0, 0), new(4, 1), new(4, 2), new(9, 3)];

        Assert.Equal([new Extreme(0, 0), new Extreme(9, 3)], CurveScan.Peaks(stations).AsEnumerable());
    }

    [Fact]
    public void Peaks_AFallAfterARise_BeginsAnew()
    {
        Extreme[] stations = [new(3, 0), new(1, 1), new(0, 2), new(2, 3), new(5, 4), new(4, 5)];

        Assert.Equal(
            [new Extreme(3, 0), new Extreme(0, 2), new Extreme(5, 4), new Extreme(4, 5)],
            CurveScan.Peaks(stations).AsEnumerable());
    }

    [Fact]
    public void Peaks_FirstStepDown_KeepsTheStart() => Assert.Equal(
        [new Extreme(3, 0), new Extreme(1, 2)],
        CurveScan.Peaks([new Extreme(3, 0), new Extreme(2, 1), new Extreme(1, 2)]).AsEnumerable());
}
