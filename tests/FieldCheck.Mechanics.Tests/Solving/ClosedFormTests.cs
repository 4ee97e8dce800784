using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Textbook formulas of single spans, from memory, each derived again by hand; EI = 2e6 N·m².</summary>
public sealed class ClosedFormTests
{
    private const double L = 6;
    private const double W = 3e3;
    private const double P = 5e3;

    [Fact]
    public void SimpleSpan_UniformLoad_DeflectsFiveWL4Over384()
    {
        BeamResponse response = Solve(L, [Support.Pin(0), Support.Roller(L)], [Uniform(0, L, W)]);

        Equal(W * L / 2, response.Reactions[0].Vertical);
        Extreme moment = response.ExtremesOf(Curve.Moment).Max;
        Equal(W * L * L / 8, moment.Value);
        Equal(L / 2, moment.Position);
        Extreme deflection = response.ExtremesOf(Curve.Deflection).Max;
        Equal(5 * W * Math.Pow(L, 4) / (384 * Rigidity), deflection.Value);
        Equal(L / 2, deflection.Position);
        Equal(-W * Math.Pow(L, 3) / (24 * Rigidity), response.At(0).Right.Slope);
    }

    [Fact]
    public void SimpleSpan_PointLoadOffCentre_DeflectsMostTowardMidspan()
    {
        const double a = 2;
        const double b = L - a;
        BeamResponse response = Solve(L, [Support.Pin(0), Support.Roller(L)], [new Load.Point(a, P)]);

        Equal(P * b / L, response.Reactions[0].Vertical);
        Equal(P * a * b / L, response.ExtremesOf(Curve.Moment).Max.Value);
        Equal(P * a * a * b * b / (3 * Rigidity * L), response.At(a).Left.Deflection);
        Extreme most = response.ExtremesOf(Curve.Deflection).Max;
        Equal(L - Math.Sqrt((L * L - a * a) / 3), most.Position);
        Equal(P * a * Math.Pow(L * L - a * a, 1.5) / (9 * Math.Sqrt(3) * L * Rigidity), most.Value);
    }

    [Fact]
    public void SimpleSpan_TriangularLoad_BendsMostAtLOverRootThree()
    {
        BeamResponse response = Solve(
            L, [Support.Pin(0), Support.Roller(L)], [new Load.Distributed(0, L, 0, W)]);

        Equal(W * L / 6, response.Reactions[0].Vertical);
        Equal(W * L / 3, response.Reactions[1].Vertical);
        Extreme moment = response.ExtremesOf(Curve.Moment).Max;
        Equal(L / Math.Sqrt(3), moment.Position);
        Equal(W * L * L / (9 * Math.Sqrt(3)), moment.Value);
    }

    [Fact]
    public void SimpleSpan_CoupleInside_ReactsWithAPairOfForces()
    {
        const double a = 2;
        BeamResponse response = Solve(L, [Support.Pin(0), Support.Roller(L)], [new Load.Couple(a, 1200)]);

        // Counter-clockwise couple: the left end is pulled up by M/L, the moment jumps down by M.
        Equal(1200 / L, response.Reactions[0].Vertical);
        Equal(-1200 / L, response.Reactions[1].Vertical);
        Equal(1200 * a / L, response.At(a).Left.Moment);
        Equal(1200 * a / L - 1200, response.At(a).Right.Moment);
        Assert.Equal(new Extreme(1200 * a / L - 1200, a), response.ExtremesOf(Curve.Moment).Min);
    }

    [Fact]
    public void Cantilever_TipLoad_DeflectsPL3Over3()
    {
        BeamResponse response = Solve(L, [Support.Fixed(0)], [new Load.Point(L, P)]);

        Equal(P, response.Reactions[0].Vertical);
        Equal(P * L, response.Reactions[0].Moment);
        Equal(-P * L, response.At(0).Right.Moment);
        Equal(P * Math.Pow(L, 3) / (3 * Rigidity), response.At(L).Left.Deflection);
        Equal(-P * L * L / (2 * Rigidity), response.At(L).Left.Slope);
    }

    [Fact]
    public void Cantilever_HeldAtTheRight_ReactsWithTheOtherSense()
    {
        BeamResponse response = Solve(L, [Support.Fixed(L)], [Uniform(0, L, W)]);

        Equal(-W * L * L / 2, response.Reactions[0].Moment);
        Equal(-W * L * L / 2, response.At(L).Left.Moment);
        Equal(-W * L, response.At(L).Left.Shear);
        Equal(W * Math.Pow(L, 4) / (8 * Rigidity), response.At(0).Right.Deflection);
    }

    [Fact]
    public void ProppedCantilever_UniformLoad_PropCarriesThreeEighths()
    {
        BeamResponse response = Solve(L, [Support.Fixed(0), Support.Roller(L)], [Uniform(0, L, W)]);

        Equal(5 * W * L / 8, response.Reactions[0].Vertical);
        Equal(3 * W * L / 8, response.Reactions[1].Vertical);
        Equal(W * L * L / 8, response.Reactions[0].Moment);
        Extreme moment = response.ExtremesOf(Curve.Moment).Max;
        Equal(9 * W * L * L / 128, moment.Value);
        Equal(5 * L / 8, moment.Position);
        Equal(L / 4, Assert.Single(response.ZerosOf(Curve.Moment)));
    }

    [Fact]
    public void FixedEnds_UniformLoad_HogsWL2Over12()
    {
        BeamResponse response = Solve(L, [Support.Fixed(0), Support.Fixed(L)], [Uniform(0, L, W)]);

        Equal(W * L * L / 12, response.Reactions[0].Moment);
        Equal(-W * L * L / 12, response.Reactions[1].Moment);
        Equal(W * L * L / 24, response.At(L / 2).Left.Moment);
        Equal(W * Math.Pow(L, 4) / (384 * Rigidity), response.At(L / 2).Left.Deflection);
    }

    [Fact]
    public void FixedEnds_TriangularLoad_HogsWL2Over30And20()
    {
        BeamResponse response = Solve(L, [Support.Fixed(0), Support.Fixed(L)], [new Load.Distributed(0, L, 0, W)]);

        Equal(W * L * L / 30, response.Reactions[0].Moment);
        Equal(-W * L * L / 20, response.Reactions[1].Moment);
        Equal(3 * W * L / 20, response.Reactions[0].Vertical);
        Equal(7 * W * L / 20, response.Reactions[1].Vertical);
    }

    [Fact]
    public void FixedEnds_PointLoad_HogsPab2OverL2()
    {
        const double a = 2;
        const double b = 4;
        BeamResponse response = Solve(L, [Support.Fixed(0), Support.Fixed(L)], [new Load.Point(a, P)]);

        Equal(P * a * b * b / (L * L), response.Reactions[0].Moment);
        Equal(-P * a * a * b / (L * L), response.Reactions[1].Moment);
        Equal(P * b * b * (L + 2 * a) / (L * L * L), response.Reactions[0].Vertical);
        Equal(P * Math.Pow(a * b, 3) / (3 * Rigidity * L * L * L), response.At(a).Right.Deflection);
    }

    [Fact]
    public void TwoEqualSpans_UniformLoad_MiddleCarriesTenEighths()
    {
        BeamResponse response = Solve(
            Beam(
                [new Span(L, Rigidity, 1e9), new Span(L, Rigidity, 1e9)],
                [Support.Pin(0), Support.Roller(L), Support.Roller(2 * L)],
                [Uniform(0, 2 * L, W)]));

        Equal(3 * W * L / 8, response.Reactions[0].Vertical);
        Equal(10 * W * L / 8, response.Reactions[1].Vertical);
        Equal(-W * L * L / 8, response.At(L).Left.Moment);
        Extremes moment = response.ExtremesOf(Curve.Moment);
        Equal(9 * W * L * L / 128, moment.Max.Value);
        Equal(3 * L / 8, moment.Max.Position);
        Assert.Equal(L, moment.Min.Position);
    }

    [Fact]
    public void ThreeEqualSpans_UniformLoad_ReactAsOnePointOneOverPointFour()
    {
        Span span = new(L, Rigidity, 1e9);
        BeamResponse response = Solve(
            Beam(
                [span, span, span],
                [Support.Pin(0), Support.Roller(L), Support.Roller(2 * L), Support.Roller(3 * L)],
                [Uniform(0, 3 * L, W)]));

        Equal(0.4 * W * L, response.Reactions[0].Vertical);
        Equal(1.1 * W * L, response.Reactions[1].Vertical);
        Equal(-0.1 * W * L * L, response.At(L).Right.Moment);
    }

    [Fact]
    public void SteppedCantilever_TipLoad_AddsTheTwoParts()
    {
        BeamResponse response = Solve(
            Beam(
                [new Span(2, Rigidity, 1e9), new Span(3, Rigidity / 4, 1e9)],
                [Support.Fixed(0)],
                [new Load.Point(5, P)]));

        // ∫ M·m / EI by hand: inner part (125 - 27)/3, outer part four times 27/3.
        Equal(P * ((125.0 - 27) / 3 + 4 * 27.0 / 3) / Rigidity, response.At(5).Left.Deflection);
    }

    [Fact]
    public void Overhang_UniformLoadOnIt_LiftsTheFarEnd()
    {
        BeamResponse response = Solve(8, [Support.Pin(0), Support.Roller(6)], [Uniform(6, 8, W)]);

        Equal(-W * 2 * 1 / 6, response.Reactions[0].Vertical);
        Equal(W * 2 * 7 / 6, response.Reactions[1].Vertical);
        Equal(-W * 2, response.At(6).Left.Moment);
        Assert.Equal(0, response.At(8).Left.Moment);
        Assert.Equal(0, response.At(8).Left.Shear);
    }

    [Fact]
    public void PartialLinearLoad_OnASimpleSpan_ActsAtItsCentroid()
    {
        BeamResponse response = Solve(
            L, [Support.Pin(0), Support.Roller(L)], [new Load.Distributed(1, 4, 1e3, 3e3)]);

        // Total 6 kN; about the left end 1·3·2.5 + 2·3/2·3 = 16.5 kN·m.
        Equal(16500 / L, response.Reactions[1].Vertical);
        Equal(6000 - 16500 / L, response.Reactions[0].Vertical);
        Equal(16500, -response.Proof.LoadMoment);
    }
}
