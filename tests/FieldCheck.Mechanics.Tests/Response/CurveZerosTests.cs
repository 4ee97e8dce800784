using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Response;

/// <summary>Zeros on later pieces, at jumps, and where a curve only just vanishes.</summary>
public sealed class CurveZerosTests
{
    [Fact]
    public void Of_CrossingInsideALaterPiece_IsFoundThere()
    {
        BeamResponse response = Solve(
            6, [Support.Pin(0), Support.Roller(6)], [new Load.Point(1, 300), Uniform(2, 5, 1000)]);

        // The left support pushes (300·5 + 3000·2.5) / 6 = 1500; 1200 of it are used up 1.2 m into the spread load.
        Equal(3.2, Assert.Single(response.ZerosOf(Curve.Shear)));
    }

    [Fact]
    public void Of_TwoCrossingsOnALaterPiece_AreBothFound()
    {
        // A clamped span under one even load, cut at 0.5 m: M = 0 at the roots of x² - L x + L²/6.
        BeamResponse response = Solve(
            6, [Support.Fixed(0), Support.Fixed(6)], [Uniform(0, 0.5, 1000), Uniform(0.5, 6, 1000)]);

        double[] zeros = [.. response.ZerosOf(Curve.Moment)];

        Assert.Equal(2, zeros.Length);
        Equal(6 * (0.5 - Math.Sqrt(1.0 / 12)), zeros[0]);
        Equal(6 * (0.5 + Math.Sqrt(1.0 / 12)), zeros[1]);
    }

    [Fact]
    public void Of_JumpThroughZero_IsThePlaceOfTheBreakToTheLastDigit()
    {
        // 0.2 + (0.9 - 0.2) is not 0.9 in binary.
        BeamResponse response = Solve(
            1.5, [Support.Pin(0), Support.Roller(1.5)], [new Load.Point(0.2, 10), new Load.Point(0.9, 1000)]);

        Assert.Equal([0.9], response.ZerosOf(Curve.Shear).ToArray());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void Of_ValueThatIsJustWithinTheCloseness_IsOneZeroAtItsPlace(double after)
    {
        // From 1 down to what still counts as zero, and on up or down from there.
        Piece[] pieces = [Line(0, 1, CurveScan.Closeness), Line(1, CurveScan.Closeness, after)];

        Assert.Equal([1], CurveZeros.Of(pieces, Curve.Moment).ToArray());
    }

    [Fact]
    public void Of_ValueJustBeyondTheCloseness_IsNone() => Assert.Empty(
        CurveZeros.Of([Line(0, 1, 1.1 * CurveScan.Closeness), Line(1, 1.1 * CurveScan.Closeness, 1)], Curve.Moment));

    /// <summary>A piece of one metre on which M runs in a straight line.</summary>
    private static Piece Line(double from, double start, double end) => new()
    {
        From = from,
        To = from + 1,
        Length = 1,
        Start = new PieceEnd(0, end - start, start, 0, 0),
        End = new PieceEnd(0, end - start, end, 0, 0),
        Up = 0,
        UpChange = 0,
        Right = 0,
        RightChange = 0,
        FlexuralRigidity = 1,
        ShearFlexibility = 0,
    };
}
