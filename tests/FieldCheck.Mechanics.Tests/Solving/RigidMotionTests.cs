using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Parts that move and their centres, from the rises of ends and hinges.</summary>
public sealed class RigidMotionTests
{
    private static readonly ImmutableArray<Support> Supports = [Support.Pin(2), Support.Roller(5), Support.Roller(11)];

    [Fact]
    public void PartThatTurns_HasTheCentreByProportion()
    {
        FreeMotion motion = RigidMotion.Of(Supports, [0, 8, 12], [0.25, -0.75, 0], 0);

        Assert.False(motion.SlidesAlong);
        Assert.Equal([new MovingPart(0, 8, 2), new MovingPart(8, 12, 12)], motion.Parts.AsEnumerable());
    }

    [Fact]
    public void PartThatStandsStill_IsLeftOut_WhateverTheScale()
    {
        foreach (double scale in new[] { 1e-12, 1, 1e12 })
        {
            // Two thousand millionths of the greatest movement count, half of one does not.
            FreeMotion motion = RigidMotion.Of(
                Supports, [0, 4, 8, 12, 16], [0, 0.5e-9 * scale, 0, 0.5 * scale, -scale], 0);

            Assert.Equal([(8.0, 12.0), (12.0, 16.0)], motion.Parts.Select(part => (part.From, part.To)));
            Assert.Equal(
                3, RigidMotion.Of(Supports, [0, 4, 8, 12], [0, 2e-9 * scale, 0, scale], 0).Parts.Length);
        }
    }

    [Fact]
    public void PartThatRisesLevel_HasNoCentre()
    {
        MovingPart part = Assert.Single(RigidMotion.Of(Supports, [0, 12], [1, 1 + 1e-10], 0).Parts);

        Assert.Null(part.Centre);
        Assert.NotNull(Assert.Single(RigidMotion.Of(Supports, [0, 12], [1, 1 + 1e-8], 0).Parts).Centre);
    }

    [Theory]
    [InlineData(1.0, 0, true)]
    [InlineData(2e-9, 1, true)]
    [InlineData(0.5e-9, 1, false)]
    [InlineData(-1.0, 0.5, true)]
    public void Shift_CountsBesideTheGreatestMovement(double shift, double rise, bool slides) =>
        Assert.Equal(slides, RigidMotion.Of(Supports, [0, 12], [rise, 0], shift).SlidesAlong);

    [Theory]
    [InlineData(2, 2)]
    [InlineData(2 + 1e-9, 2)]
    [InlineData(5 - 1e-9, 5)]
    [InlineData(11 - 1e-9, 11)]
    [InlineData(11 + 1e-9, 11)]
    [InlineData(1e-9, 0)]
    [InlineData(12 - 1e-9, 12)]
    [InlineData(5.001, 5.001)]
    [InlineData(11.5, 11.5)]
    public void CentreThatOnlyRoundingPartsFromASupportOrAnEnd_IsThere(double centre, double settled)
    {
        MovingPart part = Assert.Single(RigidMotion.Of(Supports, [0, 12], [-centre, 12 - centre], 0).Parts);

        Assert.Equal(settled, part.Centre!.Value, settled == centre ? 1e-12 : 0);
    }
}
