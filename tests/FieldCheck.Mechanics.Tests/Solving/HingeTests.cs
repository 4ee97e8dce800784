using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Hinged beams, worked by hand part by part.</summary>
public sealed class HingeTests
{
    private const double W = 5e3;

    [Fact]
    public void FixedEndHingeAndProp_PartsAreWorkedOneAfterTheOther()
    {
        // From the hinge at 4 to the prop at 9: 12.5 kN each; the cantilever takes 12.5 kN at its tip.
        BeamResponse response = Solve(9, [Support.Fixed(0), Support.Roller(9)], [Uniform(4, 9, W)], [4]);

        Equal(12500, response.Reactions[1].Vertical);
        Equal(12500, response.Reactions[0].Vertical);
        Equal(50000, response.Reactions[0].Moment);
        Assert.Equal(0, response.At(4).Left.Moment);
        Equal(12500, response.At(4).Left.Shear);
        Equal(12500 * 64 / (3 * Rigidity), response.At(4).Left.Deflection);
        Assert.NotEqual(response.At(4).Left.Slope, response.At(4).Right.Slope);
    }

    [Theory]
    [InlineData(Side.Left)]
    [InlineData(Side.Right)]
    public void CoupleExactlyAtAHinge_TurnsThePartOnItsSide(Side side)
    {
        BeamResponse response = Solve(
            9, [Support.Fixed(0), Support.Roller(9)], [new Load.Couple(4, 1000, side)], [4]);

        // On the left the cantilever takes it whole; on the right the span 4-9 turns it into a pair 1000/5.
        double pair = side == Side.Right ? 1000.0 / 5 : 0;
        Equal(-pair, response.Reactions[1].Vertical);
        Equal(pair, response.Reactions[0].Vertical);
        Equal(side == Side.Left ? -1000 : pair * 4, response.Reactions[0].Moment);
        Assert.Equal(side == Side.Left ? 1000 : 0, response.At(4).Left.Moment, 1e-9);
        Assert.Equal(side == Side.Left ? 0 : -1000, response.At(4).Right.Moment, 1e-9);
    }

    [Fact]
    public void HingeAtASupport_MakesTwoSimpleSpans()
    {
        BeamResponse response = Solve(
            10, [Support.Pin(0), Support.Roller(4), Support.Roller(10)], [Uniform(0, 10, W)], [4]);

        Equal(W * 2, response.Reactions[0].Vertical);
        Equal(W * 5, response.Reactions[1].Vertical);
        Equal(W * 3, response.Reactions[2].Vertical);
        Assert.Equal(0, response.At(4).Left.Moment);
        Assert.Equal(0, response.Reactions[1].Moment);
        Equal(W * 64 / (24 * Rigidity), response.At(4).Left.Slope);
        Equal(-W * 216 / (24 * Rigidity), response.At(4).Right.Slope);
    }

    [Fact]
    public void LoadRightAtAHinge_GoesThroughItAsShear()
    {
        BeamResponse response = Solve(9, [Support.Fixed(0), Support.Roller(9)], [new Load.Point(4, 3000)], [4]);

        Equal(3000, response.Reactions[0].Vertical);
        Assert.Equal(0, response.Reactions[1].Vertical);
        Equal(12000, response.Reactions[0].Moment);
    }

    [Fact]
    public void TwoHingesInTheMiddleSpan_HangTheDropSpanFromTheArms()
    {
        // Supports 0, 6, 14, 20; hinges 8 and 12; load on the drop span only: 4 kN·m⁻¹ over 4 m, 8 kN to each arm.
        BeamResponse response = Solve(
            20,
            [Support.Pin(0), Support.Roller(6), Support.Roller(14), Support.Roller(20)],
            [Uniform(8, 12, 4e3)],
            [8, 12]);

        Equal(8e3 * 8 / 6, response.Reactions[1].Vertical);
        Equal(-8e3 * 2 / 6, response.Reactions[0].Vertical);
        Equal(-16e3, response.At(6).Left.Moment);
        Equal(8e3, response.At(10).Left.Moment);
    }
}
