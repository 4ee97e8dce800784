using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Every kind of support and movement on beams small enough to derive by hand.</summary>
public sealed class SupportKindTests
{
    private const double L = 6;
    private const double W = 3e3;
    private const double P = 5e3;

    [Theory]
    [InlineData(30)]
    [InlineData(-20)]
    [InlineData(60)]
    public void SlopedRoller_PushesNormalToItsSurface_AndThePinTakesTheThrust(double degrees)
    {
        double slope = degrees * Math.PI / 180;
        BeamResponse response = Solve(L, [Support.Pin(0), Support.Roller(L, slope)], [new Load.Point(2, P)]);

        double vertical = P * 2 / L;
        Equal(vertical, response.Reactions[1].Vertical);
        Equal(vertical / Math.Cos(slope), response.Reactions[1].Normal!.Value);
        Equal(-vertical * Math.Tan(slope), response.Reactions[1].Horizontal);
        Equal(vertical * Math.Tan(slope), response.Reactions[0].Horizontal);
        Equal(-vertical * Math.Tan(slope), response.At(1).Left.Axial);
    }

    [Fact]
    public void SlopedRoller_BeamShortens_EndSlidesDownTheSurface()
    {
        double slope = Math.PI / 6;
        BeamResponse response = Solve(
            Beam([new Span(L, 2e6, 3e5)], [Support.Pin(0), Support.Roller(L, slope)], [new Load.Point(2, P)]));

        // Thrust P·2/L·tan 30° shortens the beam by H·L/EA; the end keeps to the surface, so it sinks by that times tan
        // 30°.
        double shortening = P * 2 / L * Math.Tan(slope) * L / 3e5;
        Equal(shortening * Math.Tan(slope), response.At(L).Left.Deflection);
    }

    [Fact]
    public void TwoParallelSlopedRollers_CanSlideDownTheSurface()
    {
        BeamModel model = Beam(L, [Support.Roller(0, 0.3), Support.Roller(L, 0.3)], [Uniform(0, L, W)]);

        BeamOutcome.CanMove outcome = Assert.IsType<BeamOutcome.CanMove>(new BeamSolver().Solve(model));

        FreeMotion motion = Assert.Single(outcome.Motions);
        Assert.True(motion.SlidesAlong);
        Assert.Null(Assert.Single(motion.Parts).Centre);
    }

    [Fact]
    public void TwoFacingSlopedRollersAndALevelOneAside_StandWithoutAPin()
    {
        BeamResponse response = Solve(
            2 * L,
            [Support.Roller(0, -0.5), Support.Roller(L / 2), Support.Roller(2 * L, 0.5)],
            [Uniform(L, 2 * L, W)]);

        // Along: both normals alike. About the left end: B·L/2 + C·2L = W·L·1.5L, and 2C + B = W·L.
        Equal(W * L, response.Reactions[0].Vertical);
        Equal(-W * L, response.Reactions[1].Vertical);
        Equal(W * L, response.Reactions[2].Vertical);
        Equal(W * L * Math.Tan(0.5), response.Reactions[0].Horizontal);
        Equal(-W * L * Math.Tan(0.5), response.Reactions[2].Horizontal);
    }

    [Fact]
    public void ThreeRollersPushingThroughOnePoint_LetTheBeamTurnAboutIt()
    {
        BeamModel model = Beam(
            2 * L, [Support.Roller(0, -0.5), Support.Roller(L), Support.Roller(2 * L, 0.5)], [Uniform(0, 2 * L, W)]);

        BeamOutcome.CanMove outcome = Assert.IsType<BeamOutcome.CanMove>(new BeamSolver().Solve(model));

        FreeMotion motion = Assert.Single(outcome.Motions);
        Assert.True(motion.SlidesAlong);
        Assert.Equal(L, Assert.Single(motion.Parts).Centre);
    }

    [Fact]
    public void SpringUnderTheMiddle_TakesTheShareOfTheTwoStiffnesses()
    {
        const double k = 7e5;
        BeamResponse response = Solve(
            2 * L, [Support.Pin(0), Support.Spring(L, k), Support.Roller(2 * L)], [Uniform(0, 2 * L, W)]);

        double free = 5 * W * Math.Pow(2 * L, 4) / (384 * Rigidity);
        double flexibility = Math.Pow(2 * L, 3) / (48 * Rigidity);
        double force = free / (flexibility + 1 / k);
        Equal(force, response.Reactions[1].Vertical);
        Equal(force / k, response.At(L).Left.Deflection);
    }

    [Fact]
    public void SettledSpring_PushesOnlyBelowItsSettledPlace()
    {
        const double k = 7e5;
        BeamModel model = Beam(
            2 * L,
            [Support.Pin(0), Support.Spring(L, k) with { Settlement = 0.01 }, Support.Roller(2 * L)],
            [Uniform(0, 2 * L, W)]);
        BeamResponse response = Solve(model);

        double free = 5 * W * Math.Pow(2 * L, 4) / (384 * Rigidity);
        double flexibility = Math.Pow(2 * L, 3) / (48 * Rigidity);
        Equal((free - 0.01) / (flexibility + 1 / k), response.Reactions[1].Vertical);
        Equal(response.Reactions[1].Vertical / k + 0.01, response.At(L).Left.Deflection);
    }

    [Fact]
    public void RotationalSpringAtBothEnds_HoldsBetweenFreeAndFixed()
    {
        const double k = 5e5;
        Support left = new(0, Restraint.Held, Restraint.Held, new Restraint.Spring(k));
        Support right = new(L, Restraint.Free, Restraint.Held, new Restraint.Spring(k));
        BeamResponse response = Solve(L, [left, right], [Uniform(0, L, W)]);

        // End slope with moment M: wL³/24EI - ML/2EI = M/k.
        double moment = W * Math.Pow(L, 3) / (24 * Rigidity) / (L / (2 * Rigidity) + 1 / k);
        Equal(moment, response.Reactions[0].Moment);
        Equal(-moment, response.Reactions[1].Moment);
        Equal(-moment / k, response.At(0).Right.Slope);
    }

    [Fact]
    public void SettlementOfTheMiddleOfTwoSpans_BendsBy3EIdOverL2()
    {
        Support middle = Support.Roller(L) with { Settlement = 0.01 };
        BeamResponse response = Solve(2 * L, [Support.Pin(0), middle, Support.Roller(2 * L)], []);

        Equal(3 * Rigidity * 0.01 / (L * L), response.At(L).Left.Moment);
        Equal(-2 * 3 * Rigidity * 0.01 / (L * L * L), response.Reactions[1].Vertical);
        Equal(0.01, response.At(L).Left.Deflection);
    }

    [Fact]
    public void SettlementOfADeterminateBeam_MovesItWithoutAnyForce()
    {
        Support right = Support.Roller(L) with { Settlement = 0.012 };
        BeamResponse response = Solve(L, [Support.Pin(0), right], []);

        Assert.All(response.Reactions, reaction => Assert.Equal(new Reaction(0, 0, 0, null, false), reaction));
        Assert.Equal(0, response.ExtremesOf(Curve.Moment).Max.Value);
        Equal(0.006, response.At(L / 2).Left.Deflection);
        Equal(-0.002, response.At(L / 2).Left.Slope);
    }

    [Fact]
    public void SettlementOfASlopedRoller_RunsAlongItsNormal()
    {
        double slope = 0.4;
        Support right = Support.Roller(L, slope) with { Settlement = 0.012 };
        BeamResponse response = Solve(L, [Support.Pin(0), right], []);

        // The pin keeps the end from moving along, so it sinks by d / cos.
        Equal(0.012 / Math.Cos(slope), response.At(L).Left.Deflection);
    }

    [Fact]
    public void ImposedRotationOfAFixedEnd_ActsAs4EIphiOverL()
    {
        Support left = Support.Fixed(0) with { ImposedRotation = 0.002 };
        BeamResponse response = Solve(L, [left, Support.Fixed(L)], []);

        Equal(4 * Rigidity * 0.002 / L, response.Reactions[0].Moment);
        Equal(2 * Rigidity * 0.002 / L, response.Reactions[1].Moment);
        Equal(6 * Rigidity * 0.002 / (L * L), response.Reactions[0].Vertical);
        Equal(0.002, response.At(0).Right.Slope);
    }

    [Fact]
    public void Guide_CarriesMomentButNoForceAcross()
    {
        BeamResponse response = Solve(L, [Support.Fixed(0), Support.Guide(L)], [Uniform(0, L, W)]);

        Equal(W * L, response.Reactions[0].Vertical);
        Assert.Equal(0, response.Reactions[1].Vertical);
        Equal(W * L * L / 3, response.Reactions[0].Moment);
        Equal(W * L * L / 6, response.Reactions[1].Moment);
        Equal(W * Math.Pow(L, 4) / (24 * Rigidity), response.At(L).Left.Deflection);
    }

    [Fact]
    public void ShearFlexibility_AddsWL2Over8GAToTheDeflection_AndTurnsTheTangent()
    {
        const double shear = 4e5;
        BeamResponse response = Solve(
            Beam([new Span(L, Rigidity, 1e9, shear)], [Support.Pin(0), Support.Roller(L)], [Uniform(0, L, W)]));

        double bending = 5 * W * Math.Pow(L, 4) / (384 * Rigidity);
        Equal(bending + W * L * L / (8 * shear), response.ExtremesOf(Curve.Deflection).Max.Value);
        Equal(-W * Math.Pow(L, 3) / (24 * Rigidity) - W * L / (2 * shear), response.At(0).Right.Slope);
    }

    [Fact]
    public void ShearFlexibility_ProppedCantilever_ShiftsLoadToTheFixedEnd()
    {
        const double shear = 4e5;
        BeamResponse response = Solve(
            Beam([new Span(L, Rigidity, 1e9, shear)], [Support.Fixed(0), Support.Roller(L)], [Uniform(0, L, W)]));

        // Tip of the cantilever under w against R: wL⁴/8EI + wL²/2GA = R (L³/3EI + L/GA).
        double free = W * Math.Pow(L, 4) / (8 * Rigidity) + W * L * L / (2 * shear);
        Equal(free / (L * L * L / (3 * Rigidity) + L / shear), response.Reactions[1].Vertical);
    }

    [Fact]
    public void ForceAlong_GoesToThePinAndStretchesTheBeamBefore()
    {
        BeamResponse response = Solve(
            L,
            [Support.Pin(0), Support.Roller(L)],
            [new Load.Point(4, 0, 900), new Load.Distributed(0, L, 50, 50, true)]);

        Equal(-1200, response.Reactions[0].Horizontal);
        Equal(1200, response.At(0).Right.Axial);
        Equal(1000, response.At(4).Left.Axial);
        Equal(100, response.At(4).Right.Axial);
        Equal(1200, response.ExtremesOf(Curve.Axial).Max.Value);
        Assert.Equal(0, response.ExtremesOf(Curve.Axial).Min.Value);
    }

    [Fact]
    public void ForceAlongBetweenTwoPins_IsSharedByTheTwoLengths()
    {
        BeamResponse response = Solve(L, [Support.Pin(0), Support.Pin(L)], [new Load.Point(2, 0, 900)]);

        Equal(-600, response.Reactions[0].Horizontal);
        Equal(-300, response.Reactions[1].Horizontal);
    }

    [Fact]
    public void LoadsRightAtSupports_GoStraightIntoThem()
    {
        BeamResponse response = Solve(
            L, [Support.Pin(0), Support.Roller(L)], [new Load.Point(0, P, 70), new Load.Point(L, 2 * P)]);

        Equal(P, response.Reactions[0].Vertical);
        Equal(-70, response.Reactions[0].Horizontal);
        Equal(2 * P, response.Reactions[1].Vertical);
        Assert.Equal(0, response.ExtremesOf(Curve.Moment).Max.Value);
    }

    [Fact]
    public void SpringAlong_LetsTheBeamMoveButTakesTheForce()
    {
        Support left = new(0, new Restraint.Spring(1e6), Restraint.Held, Restraint.Free);
        BeamResponse response = Solve(L, [left, Support.Roller(L)], [new Load.Point(2, 0, 900)]);

        Equal(-900, response.Reactions[0].Horizontal);
    }
}
