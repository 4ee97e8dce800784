using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Loads that reach over places where the beam is taken apart: each piece as one force. Intensities at the cuts lie on the straight
/// line between the ends, sizes are areas and places centres of the pieces, worked apart.
/// </summary>
public sealed class HandTraceCutTests
{
    /// <summary>Nodes at 2 and 4; a load that ends or begins at one is not cut there.</summary>
    [Theory]
    [InlineData(0, 2, 200, 200, """
        # Loads
        - LoadIs Load 0 SupportPlace0[0] SupportPlace1[2]
        Intensity0 = 200 N/m
        LoadForce0.only = Intensity0[200] * SupportPlace1[2] = 400 N Down
        LoadPlace0.only = (SupportPlace0[0] + SupportPlace1[2]) / 2 = 1 m
        """)]
    [InlineData(2, 6, 200, 200, """
        # Loads
        - LoadIs Load 0 SupportPlace1[2] SupportPlace3[6]
        Intensity0 = 200 N/m
        - LoadIsCut Load 0 Cuts [SupportPlace2[4]]
        LoadWidth0 = SupportPlace2[4] - SupportPlace1[2] = 2 m
        LoadForce0 = Intensity0[200] * LoadWidth0 = 400 N Down
        LoadPlace0 = (SupportPlace1[2] + SupportPlace2[4]) / 2 = 3 m
        LoadWidth0.1 = SupportPlace3[6] - SupportPlace2[4] = 2 m
        LoadForce0.1 = Intensity0[200] * LoadWidth0.1 = 400 N Down
        LoadPlace0.1 = (SupportPlace2[4] + SupportPlace3[6]) / 2 = 5 m
        """)]
    [InlineData(0, 6, 0, 600, """
        # Loads
        - LoadIs Load 0 SupportPlace0[0] SupportPlace3[6]
        IntensityEnd0 = 600 N/m
        - LoadIsCut Load 0 Cuts [SupportPlace1[2], SupportPlace2[4]]
        IntensityEnd0.1 = Intensity0[0] + ((IntensityEnd0[600] - Intensity0[0]) * SupportPlace1[2]) / SupportPlace3[6] = 200 N/m
        LoadForce0 = (IntensityEnd0.1 * SupportPlace1[2]) / 2 = 200 N Down
        LoadPlace0 = SupportPlace0[0] + (2 * SupportPlace1[2]) / 3 = 1.33333 m
        IntensityEnd0.2 = Intensity0[0] + ((IntensityEnd0[600] - Intensity0[0]) * SupportPlace2[4]) / SupportPlace3[6] = 400 N/m
        LoadWidth0.1 = SupportPlace2[4] - SupportPlace1[2] = 2 m
        IntensityStep0.1 = IntensityEnd0.2 - IntensityEnd0.1 = 200 N/m
        - LoadIsSplit Load 0 First 1 Shapes [Uniform, Rising]
        LoadForce0.1 = IntensityEnd0.1 * LoadWidth0.1 = 400 N Down
        LoadPlace0.1 = (SupportPlace1[2] + SupportPlace2[4]) / 2 = 3 m
        LoadForce0.2 = (IntensityStep0.1 * LoadWidth0.1) / 2 = 200 N Down
        LoadPlace0.2 = SupportPlace1[2] + (2 * LoadWidth0.1) / 3 = 3.33333 m
        LoadWidth0.3 = SupportPlace3[6] - SupportPlace2[4] = 2 m
        IntensityStep0.3 = IntensityEnd0[600] - IntensityEnd0.2 = 200 N/m
        - LoadIsSplit Load 0 First 3 Shapes [Uniform, Rising]
        LoadForce0.3 = IntensityEnd0.2 * LoadWidth0.3 = 800 N Down
        LoadPlace0.3 = (SupportPlace2[4] + SupportPlace3[6]) / 2 = 5 m
        LoadForce0.4 = (IntensityStep0.3 * LoadWidth0.3) / 2 = 200 N Down
        LoadPlace0.4 = SupportPlace2[4] + (2 * LoadWidth0.3) / 3 = 5.33333 m
        """)]
    [InlineData(1, 3, 800, 200, """
        # Loads
        - LoadIs Load 0 1 3
        Intensity0 = 800 N/m
        IntensityEnd0 = 200 N/m
        - LoadIsCut Load 0 Cuts [SupportPlace1[2]]
        IntensityEnd0.1 = Intensity0[800] + ((IntensityEnd0[200] - Intensity0[800]) * (SupportPlace1[2] - 1)) / (3 - 1) = 500 N/m
        LoadWidth0 = SupportPlace1[2] - 1 = 1 m
        IntensityStep0 = Intensity0[800] - IntensityEnd0.1 = 300 N/m
        - LoadIsSplit Load 0 First 0 Shapes [Uniform, Falling]
        LoadForce0 = IntensityEnd0.1 * LoadWidth0 = 500 N Down
        LoadPlace0 = (1 + SupportPlace1[2]) / 2 = 1.5 m
        LoadForce0.1 = (IntensityStep0 * LoadWidth0) / 2 = 150 N Down
        LoadPlace0.1 = 1 + LoadWidth0 / 3 = 1.33333 m
        LoadWidth0.2 = 3 - SupportPlace1[2] = 1 m
        IntensityStep0.2 = IntensityEnd0.1 - IntensityEnd0[200] = 300 N/m
        - LoadIsSplit Load 0 First 2 Shapes [Uniform, Falling]
        LoadForce0.2 = IntensityEnd0[200] * LoadWidth0.2 = 200 N Down
        LoadPlace0.2 = (SupportPlace1[2] + 3) / 2 = 2.5 m
        LoadForce0.3 = (IntensityStep0.2 * LoadWidth0.2) / 2 = 150 N Down
        LoadPlace0.3 = SupportPlace1[2] + LoadWidth0.2 / 3 = 2.33333 m
        """)]
    [InlineData(1, 3, 200, -600, """
        # Loads
        - LoadIs Load 0 1 3
        Intensity0 = -200 N/m
        IntensityEnd0 = 600 N/m
        - LoadIsCut Load 0 Cuts [SupportPlace1[2]]
        IntensityEnd0.1 = Intensity0[-200] + ((IntensityEnd0[600] - Intensity0[-200]) * (SupportPlace1[2] - 1)) / (3 - 1) = 200 N/m
        LoadWidth0 = SupportPlace1[2] - 1 = 1 m
        - LoadIsSplit Load 0 First 0 Shapes [Falling, Rising]
        LoadForce0 = (|Intensity0[-200]| * LoadWidth0) / 2 = 100 N Down
        LoadPlace0 = 1 + LoadWidth0 / 3 = 1.33333 m
        LoadForce0.1 = (IntensityEnd0.1 * LoadWidth0) / 2 = 100 N Up
        LoadPlace0.1 = 1 + (2 * LoadWidth0) / 3 = 1.66667 m
        LoadWidth0.2 = 3 - SupportPlace1[2] = 1 m
        IntensityStep0.2 = IntensityEnd0[600] - IntensityEnd0.1 = 400 N/m
        - LoadIsSplit Load 0 First 2 Shapes [Uniform, Rising]
        LoadForce0.2 = IntensityEnd0.1 * LoadWidth0.2 = 200 N Up
        LoadPlace0.2 = (SupportPlace1[2] + 3) / 2 = 2.5 m
        LoadForce0.3 = (IntensityStep0.2 * LoadWidth0.2) / 2 = 200 N Up
        LoadPlace0.3 = SupportPlace1[2] + (2 * LoadWidth0.2) / 3 = 2.66667 m
        """)]
    [InlineData(1, 3, -600, 600, """
        # Loads
        - LoadIs Load 0 1 3
        Intensity0 = 600 N/m
        IntensityEnd0 = -600 N/m
        - LoadIsCut Load 0 Cuts [SupportPlace1[2]]
        IntensityEnd0.1 = Intensity0[600] + ((IntensityEnd0[-600] - Intensity0[600]) * (SupportPlace1[2] - 1)) / (3 - 1) = 0 N/m
        LoadWidth0 = SupportPlace1[2] - 1 = 1 m
        LoadForce0 = (Intensity0[600] * LoadWidth0) / 2 = 300 N Up
        LoadPlace0 = 1 + LoadWidth0 / 3 = 1.33333 m
        LoadWidth0.1 = 3 - SupportPlace1[2] = 1 m
        LoadForce0.1 = (|IntensityEnd0[-600]| * LoadWidth0.1) / 2 = 300 N Down
        LoadPlace0.1 = SupportPlace1[2] + (2 * LoadWidth0.1) / 3 = 2.66667 m
        """)]
    public void OverNodes_IsCutThere(double from, double to, double start, double end, string expected) => Assert.Equal(
        expected,
        HandTrace.Of(
            HandAgreement.Work(Beam(
                6,
                [Support.Pin(0), Support.Roller(2), Support.Roller(4), Support.Roller(6)],
                [new Load.Distributed(from, to, start, end)])),
            "Loads"));

    /// <summary>One pin alone holds along: the load is one force, whatever the pin, the roller and the rigidity along it.</summary>
    [Fact]
    public void AlongAtOnePin_IsNotCut() => Assert.Equal(
        """
        # Loads
        - LoadIs Load 0 0 6
        Intensity0 = 100 N/m
        LoadAlong0.only = Intensity0[100] * 6 = 600 N Right
        LoadPlace0.only = (0 + 6) / 2 = 3 m
        """,
        HandTrace.Of(
            HandAgreement.Work(Beam(
                [new Span(3, Rigidity, 1e9), new Span(3, Rigidity, 2e9)],
                [Support.Pin(1), Support.Roller(5)],
                [new Load.Distributed(0, 6, 100, 100, ActsAlong: true)])),
            "Loads"));

    /// <summary>Rollers between pins hold nothing along.</summary>
    [Fact]
    public void AlongOverARoller_IsNotCutThere() => Assert.Equal(
        """
        # Loads
        - LoadIs Load 0 SupportPlace0[1] SupportPlace2[5]
        Intensity0 = 100 N/m
        LoadWidth0.only = SupportPlace2[5] - SupportPlace0[1] = 4 m
        LoadAlong0.only = Intensity0[100] * LoadWidth0.only = 400 N Right
        LoadPlace0.only = (SupportPlace0[1] + SupportPlace2[5]) / 2 = 3 m
        """,
        HandTrace.Of(
            HandAgreement.Work(Beam(
                6,
                [Support.Pin(1), Support.Roller(3), Support.Pin(5)],
                [new Load.Distributed(1, 5, 100, 100, ActsAlong: true)])),
            "Loads"));

    /// <summary>A pin at 1 and a surface at 5, rigidity changes at 3 and 4: increasing, each once; without a surface none.</summary>
    [Theory]
    [InlineData(0.5, new[] { 1.0, 3, 4, 5 })]
    [InlineData(0, new double[0])]
    public void CutsForASlopedSurface_AreWhereTheStretchChanges(double slope, double[] expected) => Assert.Equal(
        expected,
        ThreeMomentMethod.CutsAlong(
            Beam(
                [new Span(3, Rigidity, 1e9), new Span(1, Rigidity, 2e9), new Span(2, Rigidity, 1e9)],
                [Support.Pin(1), Support.Roller(5, slope)],
                []),
            [true, true]));

    /// <summary>Pins at 1 and 5, axial rigidity changes at 3: loads along are cut at all three, loads across at none.</summary>
    [Fact]
    public void AlongBetweenPins_IsCutAtPinsAndJoints()
    {
        string text = HandTrace.Of(
            HandAgreement.Work(Beam(
                [new Span(3, Rigidity, 1e9), new Span(3, Rigidity, 2e9)],
                [Support.Pin(1), Support.Pin(5)],
                [new Load.Distributed(0, 6, 100, 100, ActsAlong: true), Uniform(0, 6, 100)])),
            "Loads");

        Assert.Equal(
            """
            # Loads
            - LoadIs Load 0 0 6
            Intensity0 = 100 N/m
            - LoadIsCut Load 0 Cuts [SupportPlace0[1], 3, SupportPlace1[5]]
            LoadAlong0 = Intensity0[100] * SupportPlace0[1] = 100 N Right
            LoadPlace0 = (0 + SupportPlace0[1]) / 2 = 0.5 m
            LoadWidth0.1 = 3 - SupportPlace0[1] = 2 m
            LoadAlong0.1 = Intensity0[100] * LoadWidth0.1 = 200 N Right
            LoadPlace0.1 = (SupportPlace0[1] + 3) / 2 = 2 m
            LoadWidth0.2 = SupportPlace1[5] - 3 = 2 m
            LoadAlong0.2 = Intensity0[100] * LoadWidth0.2 = 200 N Right
            LoadPlace0.2 = (3 + SupportPlace1[5]) / 2 = 4 m
            LoadWidth0.3 = 6 - SupportPlace1[5] = 1 m
            LoadAlong0.3 = Intensity0[100] * LoadWidth0.3 = 100 N Right
            LoadPlace0.3 = (SupportPlace1[5] + 6) / 2 = 5.5 m
            - LoadIs Load 1 0 6
            Intensity1 = 100 N/m
            LoadForce1.only = Intensity1[100] * 6 = 600 N Down
            LoadPlace1.only = (0 + 6) / 2 = 3 m
            """,
            text);
    }
}
