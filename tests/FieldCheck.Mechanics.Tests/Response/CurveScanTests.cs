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
}
