using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Response;

/// <summary>Reading a response: both sides of a place, zeros, peaks, ties. Values derived by hand.</summary>
public sealed class BeamResponseTests
{
    private const double L = 6;

    [Fact]
    public void At_PointLoad_GivesBothSidesOfTheJump()
    {
        BeamResponse response = CentrePointLoad();

        (SectionState left, SectionState right) = response.At(3);

        Equal(500, left.Shear);
        Equal(-500, right.Shear);
        Equal(1500, left.Moment);
        Assert.Equal(left.Moment, right.Moment);
    }

    [Fact]
    public void At_TheEnds_OutsideCarriesNothingButMovesAlong()
    {
        BeamResponse response = CentrePointLoad();

        (SectionState outside, SectionState inside) = response.At(0);
        (SectionState last, SectionState beyond) = response.At(L);

        Assert.Equal(new SectionState(0, 0, 0, inside.Slope, inside.Deflection), outside);
        Equal(500, inside.Shear);
        Equal(-500, last.Shear);
        Assert.Equal(new SectionState(0, 0, 0, last.Slope, last.Deflection), beyond);
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(6.001)]
    [InlineData(double.NaN)]
    public void At_OffTheBeam_Throws(double position) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CentrePointLoad().At(position));

    [Fact]
    public void At_BetweenBreaks_IsOnThePolynomial()
    {
        BeamResponse response = Solve(L, SimpleSupports(), [new Load.Distributed(0, L, 0, 3000)]);

        // w(x) = 500 x: V = 3000 - 250 x², M = 3000 x - 250 x³ / 3.
        Equal(3000 - 250 * 1.3 * 1.3, response.At(1.3).Left.Shear);
        Equal(3000 * 1.3 - 250 * Math.Pow(1.3, 3) / 3, response.At(1.3).Right.Moment);
    }

    [Fact]
    public void Breaks_AreJointsSupportsHingesAndLoadEnds()
    {
        BeamResponse response = Solve(
            Beam(
                [new Span(4, 2e6, 1e9), new Span(4, 2e6, 1e9)],
                [Support.Fixed(0), Support.Roller(7)],
                [new Load.Point(1, 5), new Load.Couple(2.5, 6), Uniform(3, 8, 7)],
                [5]));

        Assert.Equal([0, 1, 2.5, 3, 4, 5, 7, 8], response.Breaks.ToArray());
    }

    [Fact]
    public void ExtremesOf_EqualPeaks_TakesTheLeftmost()
    {
        BeamResponse response = Solve(
            Beam(
                [new Span(0.3, 2e6, 1e9), new Span(0.3, 2e6, 1e9), new Span(0.3, 2e6, 1e9)],
                [Support.Pin(0), Support.Roller(0.3), Support.Roller(0.6), Support.Roller(0.3 + 0.3 + 0.3)],
                [Uniform(0, 0.3 + 0.3 + 0.3, 1000)]));

        // Joints at 0.1 steps do not add up exactly, so the two outer peaks tie only within rounding.
        Extremes moment = response.ExtremesOf(Curve.Moment);
        Equal(0.12, moment.Max.Position);
        Assert.Equal(0.3, moment.Min.Position);
    }

    [Fact]
    public void ExtremesOf_Plateau_TakesItsLeftEnd()
    {
        BeamResponse response = Solve(L, SimpleSupports(), [new Load.Point(2, 900), new Load.Point(4, 900)]);

        Extreme moment = response.ExtremesOf(Curve.Moment).Max;

        Equal(1800, moment.Value);
        Assert.Equal(2, moment.Position);
    }

    [Fact]
    public void ExtremesOf_ShearAtAJump_TakesTheJumpsPlace()
    {
        BeamResponse response = Solve(L, SimpleSupports(), [new Load.Point(2, 900), Uniform(2, 6, -300)]);

        Extremes shear = response.ExtremesOf(Curve.Shear);

        // Right end: (900·2 - 1200·4)/6 = -500 up; left end 200. V left of the load 200, right of it -700, then up to
        // 500.
        Equal(500, shear.Max.Value);
        Equal(-700, shear.Min.Value);
        Assert.Equal(2, shear.Min.Position);
    }

    [Fact]
    public void ExtremesOf_NothingActs_AreZeroAtTheLeftEnd()
    {
        BeamResponse response = Solve(L, SimpleSupports(), []);

        foreach (Curve curve in Enum.GetValues<Curve>())
        {
            Assert.Equal(new Extremes(new Extreme(0, 0), new Extreme(0, 0)), response.ExtremesOf(curve));
        }
    }

    [Fact]
    public void ZerosOf_SignChangeAcrossAJump_IsTheJumpsPlace() =>
        Assert.Equal([3], CentrePointLoad().ZerosOf(Curve.Shear).ToArray());

    [Fact]
    public void ZerosOf_RootSharedByTwoPieces_IsGivenOnce()
    {
        // A break at midspan where the shear passes through zero.
        BeamResponse response = Solve(L, SimpleSupports(), [Uniform(0, 3, 1000), Uniform(3, 6, 1000)]);

        Equal(3, Assert.Single(response.ZerosOf(Curve.Shear)));
    }

    [Fact]
    public void ZerosOf_ZeroStretch_GivesItsTwoEnds()
    {
        BeamResponse response = Solve(L, SimpleSupports(), [new Load.Point(2, 900), new Load.Point(4, 900)]);

        Assert.Equal([2, 4], response.ZerosOf(Curve.Shear).ToArray());
    }

    [Fact]
    public void ZerosOf_ZeroStretchToTheEnd_GivesItsInnerEndOnly()
    {
        BeamResponse response = Solve(9, [Support.Pin(0), Support.Roller(6)], [new Load.Point(3, 900)]);

        Assert.Equal([3, 6], response.ZerosOf(Curve.Shear).ToArray());
        Assert.Equal([6], response.ZerosOf(Curve.Moment).ToArray());
    }

    [Fact]
    public void ZerosOf_WholeCurveZero_HasNoPlacesInside() =>
        Assert.Empty(CentrePointLoad().ZerosOf(Curve.Axial));

    [Fact]
    public void ZerosOf_TouchWithoutPassing_Counts()
    {
        // Overhangs c on a span 2b under w: M at midspan is w (b² - c²) / 2, zero for b = c; it only touches.
        BeamResponse response = Solve(8, [Support.Pin(2), Support.Roller(6)], [Uniform(0, 8, 1000)]);

        Assert.Equal([4], response.ZerosOf(Curve.Moment).ToArray());
        Assert.Equal(0, response.ExtremesOf(Curve.Moment).Max.Value, 1e-9);
    }

    [Fact]
    public void ZerosOf_Contraflexure_LiesWhereTheFormulaSays()
    {
        BeamResponse response = Solve(L, [Support.Fixed(0), Support.Fixed(L)], [Uniform(0, L, 1000)]);

        // Roots of x² - L x + L²/6.
        ImmutableArray<double> zeros = response.ZerosOf(Curve.Moment);
        Equal(L * (0.5 - Math.Sqrt(1.0 / 12)), zeros[0]);
        Equal(L * (0.5 + Math.Sqrt(1.0 / 12)), zeros[1]);
        Assert.Equal(2, zeros.Length);
    }

    [Fact]
    public void PeaksOf_Shear_HasBothSidesOfTheJumpAtASupport()
    {
        BeamResponse response = Solve(
            Beam(
                [new Span(L, 2e6, 1e9), new Span(L, 2e6, 1e9)],
                [Support.Pin(0), Support.Roller(L), Support.Roller(2 * L)],
                [Uniform(0, 2 * L, 800)]));

        ImmutableArray<Extreme> peaks = response.PeaksOf(Curve.Shear);

        Assert.Equal([0, L, L, 2 * L], peaks.Select(peak => peak.Position));
        Equal(0.375 * 800 * L, peaks[0].Value);
        Equal(-0.625 * 800 * L, peaks[1].Value);
        Equal(0.625 * 800 * L, peaks[2].Value);
        Equal(-0.375 * 800 * L, peaks[3].Value);
    }

    [Fact]
    public void PeaksOf_Moment_AreSpanAndSupportMoments()
    {
        BeamResponse response = Solve(
            Beam(
                [new Span(L, 2e6, 1e9), new Span(L, 2e6, 1e9)],
                [Support.Pin(0), Support.Roller(L), Support.Roller(2 * L)],
                [Uniform(0, 2 * L, 800)]));

        ImmutableArray<Extreme> peaks = response.PeaksOf(Curve.Moment);

        Assert.Equal(5, peaks.Length);
        Equal(3 * L / 8, peaks[1].Position);
        Assert.Equal(L, peaks[2].Position);
        Equal(13 * L / 8, peaks[3].Position);
        Equal(-800 * L * L / 8, peaks[2].Value);
    }

    [Fact]
    public void PeaksOf_ConstantCurve_IsItsLeftEnd()
    {
        BeamResponse response = Solve(L, [Support.Fixed(0)], [new Load.Couple(L, 250)]);

        Extreme peak = Assert.Single(response.PeaksOf(Curve.Moment));

        Equal(250, peak.Value);
        Assert.Equal(0, peak.Position);
    }

    [Fact]
    public void HasDeflections_FollowsTheModel()
    {
        Span[] spans = [new Span(L, 1, 1)];

        Assert.True(Solve(Beam(spans, SimpleSupports(), [])).HasDeflections);
        Assert.False(Solve(Beam(spans, SimpleSupports(), [], hasAbsoluteStiffness: false)).HasDeflections);
    }

    private static Support[] SimpleSupports() => [Support.Pin(0), Support.Roller(L)];

    private static BeamResponse CentrePointLoad() => Solve(L, SimpleSupports(), [new Load.Point(3, 1000)]);
}
