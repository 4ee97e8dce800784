using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Where statics is not enough, a sloped surface gives way by what another one pushes along: such beams are not reached, and what
/// does not depend on it is worked. Reactions were worked apart from statics and the stiffness of each bay.
/// </summary>
public sealed class HandTraceTiedSlopesTests
{
    private static readonly double Slope = Math.Atan(0.75);

    /// <summary>As many unknowns as for two surfaces alone, but the pin holds along.</summary>
    [Fact]
    public void PinAndTwoSurfaces_AreNotReached() => Assert.Equal(
        """
        = Partial
        0:
        1:
        2:
        """,
        Trace(6, [Support.Pin(0), Support.Roller(3, Slope), Support.Roller(6, -Slope)], 1, []));

    /// <summary>The surface at 8 is found by statics, that of the rest is beyond it: inside, at its left end or at its right.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(0)]
    [InlineData(2)]
    public void SurfaceBesideOneThatStaticsFinds_IsNotReached(int sloped)
    {
        double[] places = [0, 3, 6];
        Support[] supports =
        [
            .. places.Select((x, i) => i == sloped ? Support.Roller(x, Slope) : i == (sloped + 1) % 3 ? Support.Pin(x) : Support.Roller(x)),
            Support.Roller(8, -Slope),
        ];

        Assert.Equal(
            """
            = Partial
            0:
            1:
            2:
            3: V 150 N
            """,
            Trace(8, supports, 7, [6]));
    }

    /// <summary>The left stretch has no surface and is worked; the right one has, beside the one at 10.</summary>
    [Fact]
    public void StretchWithoutASurface_IsWorkedBefore() => Assert.Equal(
        """
        = Partial
        0: V 121.875 N
        1: V 206.25 N
        2: V -28.125 N
        3:
        4:
        5:
        6: V 0 N
        """,
        Trace(
            10,
            [
                Support.Pin(0), Support.Roller(1), Support.Roller(2), Support.Roller(6), Support.Roller(7, Slope), Support.Roller(8),
                Support.Roller(10, -Slope),
            ],
            0.5,
            [3, 5, 9]));

    private static string Trace(double length, Support[] supports, double load, double[] hinges) => HandTrace.Of(
        HandAgreement.Work(Beam(length, supports, [new Load.Point(load, 300)], hinges)), "Together", HandTrace.Found);
}
