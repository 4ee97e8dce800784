using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Spread loads as single forces: sizes are areas under the load, places their centres, worked apart: of a triangle half of length
/// times intensity, at a third of its length from the greater end.
/// </summary>
public sealed class HandTraceSpreadTests
{
    private static readonly Support[] Simple = [Support.Pin(0), Support.Roller(6)];

    [Theory]
    [InlineData(0, 6, 200, 200, 1, """
        # Loads
        - LoadIs Load 0 SupportPlace0[0] SupportPlace1[6]
        Intensity0 = 200 N/m
        LoadForce0.only = Intensity0[200] * SupportPlace1[6] = 1200 N Down
        LoadPlace0.only = (SupportPlace0[0] + SupportPlace1[6]) / 2 = 3 m
        """)]
    [InlineData(2, 5, -200, -200, 1, """
        # Loads
        - LoadIs Load 0 2 5
        Intensity0 = 200 N/m
        LoadWidth0.only = 5 - 2 = 3 m
        LoadForce0.only = Intensity0[200] * LoadWidth0.only = 600 N Up
        LoadPlace0.only = (2 + 5) / 2 = 3.5 m
        """)]
    [InlineData(2, 5, 200, 200, -1.5, """
        # Loads
        - LoadTurned Load 0
        - LoadIs Load 0 2 5
        Intensity0 = 1.5 * 200 = 300 N/m
        LoadWidth0.only = 5 - 2 = 3 m
        LoadForce0.only = Intensity0 * LoadWidth0.only = 900 N Up
        LoadPlace0.only = (2 + 5) / 2 = 3.5 m
        """)]
    [InlineData(1, 4, 0, 600, 1, """
        # Loads
        - LoadIs Load 0 1 4
        IntensityEnd0 = 600 N/m
        LoadWidth0.only = 4 - 1 = 3 m
        LoadForce0.only = (IntensityEnd0[600] * LoadWidth0.only) / 2 = 900 N Down
        LoadPlace0.only = 1 + (2 * LoadWidth0.only) / 3 = 3 m
        """)]
    [InlineData(1, 4, 600, 0, 1, """
        # Loads
        - LoadIs Load 0 1 4
        Intensity0 = 600 N/m
        LoadWidth0.only = 4 - 1 = 3 m
        LoadForce0.only = (Intensity0[600] * LoadWidth0.only) / 2 = 900 N Down
        LoadPlace0.only = 1 + LoadWidth0.only / 3 = 2 m
        """)]
    [InlineData(1, 4, -600, 0, 1, """
        # Loads
        - LoadIs Load 0 1 4
        Intensity0 = 600 N/m
        LoadWidth0.only = 4 - 1 = 3 m
        LoadForce0.only = (Intensity0[600] * LoadWidth0.only) / 2 = 900 N Up
        LoadPlace0.only = 1 + LoadWidth0.only / 3 = 2 m
        """)]
    [InlineData(1, 4, 0, -600, 2, """
        # Loads
        - LoadIs Load 0 1 4
        IntensityEnd0 = 2 * 600 = 1200 N/m
        LoadWidth0.only = 4 - 1 = 3 m
        LoadForce0.only = (IntensityEnd0 * LoadWidth0.only) / 2 = 1800 N Up
        LoadPlace0.only = 1 + (2 * LoadWidth0.only) / 3 = 3 m
        """)]
    [InlineData(1, 4, 200, 800, 1, """
        # Loads
        - LoadIs Load 0 1 4
        Intensity0 = 200 N/m
        IntensityEnd0 = 800 N/m
        LoadWidth0 = 4 - 1 = 3 m
        IntensityStep0 = IntensityEnd0[800] - Intensity0[200] = 600 N/m
        - LoadIsSplit Load 0 First 0 Shapes [Uniform, Rising]
        LoadForce0 = Intensity0[200] * LoadWidth0 = 600 N Down
        LoadPlace0 = (1 + 4) / 2 = 2.5 m
        LoadForce0.1 = (IntensityStep0 * LoadWidth0) / 2 = 900 N Down
        LoadPlace0.1 = 1 + (2 * LoadWidth0) / 3 = 3 m
        """)]
    [InlineData(1, 4, -800, -200, 1, """
        # Loads
        - LoadIs Load 0 1 4
        Intensity0 = 800 N/m
        IntensityEnd0 = 200 N/m
        LoadWidth0 = 4 - 1 = 3 m
        IntensityStep0 = Intensity0[800] - IntensityEnd0[200] = 600 N/m
        - LoadIsSplit Load 0 First 0 Shapes [Uniform, Falling]
        LoadForce0 = IntensityEnd0[200] * LoadWidth0 = 600 N Up
        LoadPlace0 = (1 + 4) / 2 = 2.5 m
        LoadForce0.1 = (IntensityStep0 * LoadWidth0) / 2 = 900 N Up
        LoadPlace0.1 = 1 + LoadWidth0 / 3 = 2 m
        """)]
    public void OfOneSense_IsOneForce_OrARectangleAndATriangle(
        double from, double to, double start, double end, double factor, string expected) =>
        Assert.Equal(expected, Loads(factor, new Load.Distributed(from, to, start, end)));

    [Theory]
    [InlineData(-300, 600, 1, """
        # Loads
        - LoadIs Load 0 1 4
        Intensity0 = -300 N/m
        IntensityEnd0 = 600 N/m
        LoadWidth0 = 4 - 1 = 3 m
        - LoadIsSplit Load 0 First 0 Shapes [Falling, Rising]
        LoadForce0 = (|Intensity0[-300]| * LoadWidth0) / 2 = 450 N Up
        LoadPlace0 = 1 + LoadWidth0 / 3 = 2 m
        LoadForce0.1 = (IntensityEnd0[600] * LoadWidth0) / 2 = 900 N Down
        LoadPlace0.1 = 1 + (2 * LoadWidth0) / 3 = 3 m
        """)]
    [InlineData(600, -300, 1, """
        # Loads
        - LoadIs Load 0 1 4
        Intensity0 = 600 N/m
        IntensityEnd0 = -300 N/m
        LoadWidth0 = 4 - 1 = 3 m
        - LoadIsSplit Load 0 First 0 Shapes [Falling, Rising]
        LoadForce0 = (Intensity0[600] * LoadWidth0) / 2 = 900 N Down
        LoadPlace0 = 1 + LoadWidth0 / 3 = 2 m
        LoadForce0.1 = (|IntensityEnd0[-300]| * LoadWidth0) / 2 = 450 N Up
        LoadPlace0.1 = 1 + (2 * LoadWidth0) / 3 = 3 m
        """)]
    [InlineData(300, -600, 2, """
        # Loads
        - LoadIs Load 0 1 4
        Intensity0 = 2 * -300 = -600 N/m
        IntensityEnd0 = 2 * 600 = 1200 N/m
        LoadWidth0 = 4 - 1 = 3 m
        - LoadIsSplit Load 0 First 0 Shapes [Falling, Rising]
        LoadForce0 = (|Intensity0| * LoadWidth0) / 2 = 900 N Down
        LoadPlace0 = 1 + LoadWidth0 / 3 = 2 m
        LoadForce0.1 = (IntensityEnd0 * LoadWidth0) / 2 = 1800 N Up
        LoadPlace0.1 = 1 + (2 * LoadWidth0) / 3 = 3 m
        """)]
    [InlineData(300, -300, 1, """
        # Loads
        - LoadIs Load 0 1 4
        Intensity0 = 300 N/m
        IntensityEnd0 = -300 N/m
        LoadWidth0 = 4 - 1 = 3 m
        - LoadIsSplit Load 0 First 0 Shapes [Falling, Rising]
        LoadForce0 = (Intensity0[300] * LoadWidth0) / 2 = 450 N Down
        LoadPlace0 = 1 + LoadWidth0 / 3 = 2 m
        LoadForce0.1 = (|IntensityEnd0[-300]| * LoadWidth0) / 2 = 450 N Up
        LoadPlace0.1 = 1 + (2 * LoadWidth0) / 3 = 3 m
        """)]
    [InlineData(-300, 300, -1, """
        # Loads
        - LoadTurned Load 0
        - LoadIs Load 0 1 4
        Intensity0 = 300 N/m
        IntensityEnd0 = -300 N/m
        LoadWidth0 = 4 - 1 = 3 m
        - LoadIsSplit Load 0 First 0 Shapes [Falling, Rising]
        LoadForce0 = (Intensity0[300] * LoadWidth0) / 2 = 450 N Down
        LoadPlace0 = 1 + LoadWidth0 / 3 = 2 m
        LoadForce0.1 = (|IntensityEnd0[-300]| * LoadWidth0) / 2 = 450 N Up
        LoadPlace0.1 = 1 + (2 * LoadWidth0) / 3 = 3 m
        """)]
    public void OfChangingSense_IsTwoTriangles_EachWithItsOwn(double start, double end, double factor, string expected) =>
        Assert.Equal(expected, Loads(factor, new Load.Distributed(1, 4, start, end)));

    [Theory]
    [InlineData(200, 200, """
        # Loads
        - LoadIs Load 0 1 4
        Intensity0 = 200 N/m
        LoadWidth0.only = 4 - 1 = 3 m
        LoadAlong0.only = Intensity0[200] * LoadWidth0.only = 600 N Right
        LoadPlace0.only = (1 + 4) / 2 = 2.5 m
        """)]
    [InlineData(-200, 600, """
        # Loads
        - LoadIs Load 0 1 4
        Intensity0 = -200 N/m
        IntensityEnd0 = 600 N/m
        LoadWidth0 = 4 - 1 = 3 m
        - LoadIsSplit Load 0 First 0 Shapes [Falling, Rising]
        LoadAlong0 = (|Intensity0[-200]| * LoadWidth0) / 2 = 300 N Left
        LoadPlace0 = 1 + LoadWidth0 / 3 = 2 m
        LoadAlong0.1 = (IntensityEnd0[600] * LoadWidth0) / 2 = 900 N Right
        LoadPlace0.1 = 1 + (2 * LoadWidth0) / 3 = 3 m
        """)]
    [InlineData(200, -600, """
        # Loads
        - LoadIs Load 0 1 4
        Intensity0 = -200 N/m
        IntensityEnd0 = 600 N/m
        LoadWidth0 = 4 - 1 = 3 m
        - LoadIsSplit Load 0 First 0 Shapes [Falling, Rising]
        LoadAlong0 = (|Intensity0[-200]| * LoadWidth0) / 2 = 300 N Right
        LoadPlace0 = 1 + LoadWidth0 / 3 = 2 m
        LoadAlong0.1 = (IntensityEnd0[600] * LoadWidth0) / 2 = 900 N Left
        LoadPlace0.1 = 1 + (2 * LoadWidth0) / 3 = 3 m
        """)]
    public void Along_ActsToTheRightWherePositive(double start, double end, string expected) =>
        Assert.Equal(expected, Loads(1, new Load.Distributed(1, 4, start, end, ActsAlong: true)));

    private static string Loads(double factor, Load load)
    {
        BeamModel model = Beam(6, Simple, [load]);
        return HandTrace.Of(HandWorking.Of(model, [factor]), "Loads");
    }
}
