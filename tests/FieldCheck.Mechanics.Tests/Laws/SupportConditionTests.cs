using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>
/// Every support holds what it holds and lets go what it lets go. With equilibrium, continuity and the differential
/// laws these conditions leave one answer only, so together they prove each drawn beam without a second solver.
/// </summary>
public sealed class SupportConditionTests
{
    private const double Rounding = 1e-12;

    [Fact]
    public void FlatSupportHeldAcross_MovesByItsSettlementOnly() => AtEverySupport((_, response, support, _, scale) =>
    {
        if (support is { Across: Restraint.Rigid, SurfaceSlope: 0 })
        {
            Law.Equal(
                support.Settlement,
                response.At(support.Position).Right.Deflection,
                Rounding * scale.Deflection,
                $"at {support.Position:R}");
        }
    });

    [Fact]
    public void SpringAcross_PushesByItsStiffnessTimesTheMovementBeyondItsSettlement() =>
        AtEverySupport((_, response, support, reaction, scale) =>
        {
            if (support is { Across: Restraint.Spring spring, SurfaceSlope: 0 })
            {
                double pressed = response.At(support.Position).Right.Deflection - support.Settlement;
                double size = scale.Force + (spring.Stiffness * scale.Deflection);
                Law.Equal(spring.Stiffness * pressed, reaction.Vertical, Rounding * size, $"at {support.Position:R}");
            }
        });

    [Fact]
    public void RotationHeldOrSprung_TurnsAsImposedOrAsItsMomentAsks() =>
        AtEverySupport((model, response, support, reaction, scale) =>
        {
            double turn = Bending.RotationAt(model, response, support.Position);
            if (support.Rotation is Restraint.Rigid)
            {
                Law.Equal(support.ImposedRotation, turn, Rounding * scale.Slope, $"Turn at {support.Position:R}");
            }
            else if (support.Rotation is Restraint.Spring spring)
            {
                double size = scale.Moment + (spring.Stiffness * scale.Slope);
                Law.Equal(-spring.Stiffness * turn, reaction.Moment, Rounding * size, $"M at {support.Position:R}");
            }
        });

    [Fact]
    public void WhatIsFree_IsNotHeld() => AtEverySupport((_, _, support, reaction, _) =>
    {
        Assert.False(reaction.IsLiftedOff);
        Assert.True(support.Rotation is not Restraint.None || reaction.Moment == 0, "moment");
        Assert.True(support.Across is not Restraint.None || reaction.Vertical == 0, "across");
        Assert.True(
            support.Along is not Restraint.None || support.SurfaceSlope != 0 || reaction.Horizontal == 0, "along");
    });

    [Fact]
    public void SlopedSurface_PushesAlongItsNormalOnly() => AtEverySupport((_, _, support, reaction, scale) =>
    {
        if (support.SurfaceSlope == 0)
        {
            Assert.Null(reaction.Normal);
            return;
        }

        double normal = reaction.Normal!.Value;
        Law.Equal(
            -normal * Math.Sin(support.SurfaceSlope), reaction.Horizontal, Rounding * scale.Force, "Horizontal part");
        Law.Equal(normal * Math.Cos(support.SurfaceSlope), reaction.Vertical, Rounding * scale.Force, "Vertical part");
    });

    [Fact]
    public void SupportsThatHoldAlong_AgreeOnHowFarTheBeamMovesAlong() => Law.Holds(RandomBeam.Stable, model =>
    {
        BeamResponse response = Answer.To(model);
        Scale scale = new(model, response);
        double size = AlongMovement.Size(model, response);
        foreach (Support support in model.Supports.Where(AlongMovement.IsKnownAt))
        {
            size += Math.Abs(AlongMovement.KnownAt(support, response)) + SlopedShare(support, scale.Deflection);
        }

        double[] ends =
        [
            .. model.Supports.Where(AlongMovement.IsKnownAt).Select(support => AlongMovement.KnownAt(support, response)
                - AlongMovement.FromLeftEnd(model, response, support.Position)),
        ];
        Assert.NotEmpty(ends);
        Assert.All(ends, end => Law.Equal(ends[0], end, Rounding * size, "Movement of the left end"));
    });

    private static double SlopedShare(Support support, double deflection) =>
        support.SurfaceSlope == 0 ? 0 : deflection / Math.Abs(Math.Tan(support.SurfaceSlope));

    private static void AtEverySupport(Action<BeamModel, BeamResponse, Support, Reaction, Scale> law) =>
        Law.Holds(RandomBeam.Stable, model =>
        {
            BeamResponse response = Answer.To(model);
            Scale scale = new(model, response);
            foreach ((Support support, Reaction reaction) in model.Supports.Zip(response.Reactions))
            {
                law(model, response, support, reaction, scale);
            }
        });
}
