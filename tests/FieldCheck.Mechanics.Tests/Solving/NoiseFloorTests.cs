using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>What is taken as rounding, of an element 4 m long: of the greatest force, and of stiffness times movement.</summary>
public sealed class NoiseFloorTests
{
    private const double L = 4;

    // 12EI/L³ = 3·EI/16, 6EI/L² = 3·EI/8, EA/L.
    private static readonly Element Element = new(new Span(L, 16e6, 8e6), L);
    private static NodeMovement Still => default;

    [Theory]
    [InlineData(700, 30, 40)]
    [InlineData(-30, -700, 40)]
    [InlineData(30, 40, -2800)]
    public void GreatestForce_IsOfAxialForceShearAndMomentOverLength_AtEitherEnd(double axial, double shear, double moment)
    {
        SectionForces small = new(1, 2, 3);
        SectionForces large = new(axial, shear, moment);
        foreach (ElementForces forces in new ElementForces[] { new(small, large), new(large, small) })
        {
            NoiseFloor noise = new(L);
            noise.Take(Element, Still, Still, forces);
            noise.Take(Element, Still, Still, new(small, small));

            Assert.Equal(700, noise.GreatestForce);
            Assert.Equal(0, noise.Force(7e-18));
            Assert.Equal(7.1e-18, noise.Force(7.1e-18));
            Assert.Equal(0, noise.Moment(-2.8e-17));
            Assert.Equal(-2.81e-17, noise.Moment(-2.81e-17));
        }
    }

    [Fact]
    public void GreatestMovement_IsOfAllMovementsOfOneElementTogether_TurnsTimesTheLength()
    {
        NodeMovement left = new() { Right = -0.01, Up = 0.02, TurnLeft = 9, TurnRight = -0.04 };
        NodeMovement right = new() { Right = 0.03, Up = -0.05, TurnLeft = 0.01, TurnRight = 9 };
        NoiseFloor noise = new(L);

        noise.Take(Element, left, right, default);
        noise.Take(Element, Still, Still, default);

        Assert.Equal(0.11 + L * 0.05, noise.GreatestMovement, 1e-15);
        Assert.Equal(0, noise.Movement(3.09e-21));
        Assert.Equal(-3.11e-21, noise.Movement(-3.11e-21));
        Assert.Equal(0, noise.Turn(7.7e-22));
        Assert.Equal(7.8e-22, noise.Turn(7.8e-22));
    }

    [Theory]
    [InlineData(0.5, 0.25, 0, 0, 0, 0, 0.75 * 3e6)]
    [InlineData(0, 0, 0.5, 0.25, 0, 0, 0.75 * 6e6)]
    [InlineData(0, 0, 0, 0, 0.5, 0.25, 0.75 * 2e6)]
    [InlineData(0.5, 0, 0.25, 0, 1, 0, 1.5e6 + 1.5e6 + 2e6)]
    public void Force_BelowTheRoundingOfStiffnessTimesMovement_IsNothing(
        double up, double far, double turn, double farTurn, double along, double farAlong, double stiff)
    {
        NodeMovement left = new() { Up = up, TurnRight = -turn, Right = along };
        NodeMovement right = new() { Up = -far, TurnLeft = farTurn, Right = -farAlong };
        NoiseFloor noise = new(L);

        noise.Take(Element, left, right, default);

        Assert.Equal(0, noise.Force(0.999e-28 * stiff));
        Assert.Equal(1.001e-28 * stiff, noise.Force(1.001e-28 * stiff));
    }

    [Fact]
    public void WithoutForcesAndMovements_OnlyZeroIsNothing()
    {
        NoiseFloor noise = new(L);

        Assert.Equal(0, noise.Force(0));
        Assert.Equal(1e-300, noise.Force(1e-300));
        Assert.Equal(1e-300, noise.Movement(1e-300));
    }
}
