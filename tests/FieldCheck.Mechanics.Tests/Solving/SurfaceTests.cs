using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Directions on a sloped surface, and what a roller on one forbids.</summary>
public sealed class SurfaceTests
{
    public static TheoryData<double> Slopes() => [0.1, -0.3, 0.7, 1.2, -1.5, 3];

    [Theory]
    [MemberData(nameof(Slopes))]
    public void Directions_AreOfUnitLength_ToTheLastOf106Bits(double slope)
    {
        SurfaceDirection surface = SurfaceDirection.Of(slope);

        Assert.True(surface.IsSloped);
        Assert.Equal(Math.Cos(slope), (double)surface.Cosine, 1e-16);
        Assert.Equal(Math.Sin(slope), (double)surface.Sine, 1e-16);
        DoubleDouble excess = surface.Cosine * surface.Cosine + surface.Sine * surface.Sine - 1;
        Assert.InRange((double)excess, -1e-30, 1e-30);
    }

    [Theory]
    [MemberData(nameof(Slopes))]
    public void Vector_HasItsPartsAlongAndNormal(double slope)
    {
        SurfaceDirection surface = SurfaceDirection.Of(slope);
        (DoubleDouble right, DoubleDouble up) = surface.ToRightAndUp(3, 5);

        Assert.Equal(3 * Math.Cos(slope) - 5 * Math.Sin(slope), (double)right, 1e-14);
        Assert.Equal(3 * Math.Sin(slope) + 5 * Math.Cos(slope), (double)up, 1e-14);
        Assert.Equal(3, (double)surface.AlongOf(right, up), 1e-15);
        Assert.Equal(5, (double)surface.NormalOf(right, up), 1e-15);
    }

    [Fact]
    public void LevelSurface_IsNotSloped()
    {
        Assert.False(SurfaceDirection.Level.IsSloped);
        Assert.Equal((3.0, 5.0), ((double)SurfaceDirection.Level.ToRightAndUp(3, 5).Right, (double)SurfaceDirection.Level.ToRightAndUp(3, 5).Up));
    }

    [Fact]
    public void RollerOnASlope_ForbidsTheMovementNormalToIt()
    {
        RestraintRow row = RestraintRow.OfAcross(Support.Roller(3, 0.5), 0.25);

        Assert.Equal((0.75 * Math.Cos(0.5), 0.25 * Math.Cos(0.5), -Math.Sin(0.5)), (row.Left, row.Right, row.Along));
        RestraintRow level = RestraintRow.OfAcross(Support.Roller(3), 0.25);
        Assert.Equal((0.75, 0.25, 0.0), (level.Left, level.Right, level.Along));
    }
}
