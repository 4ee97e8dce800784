using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Where both ends of a spread load may move, lines whose worst case lies inside the ranges; worked apart.</summary>
public sealed class SpreadLoadSearchTests
{
    private static readonly LoadIndex Index = new(0, 0);

    // Rising to 1 in the middle of 10 m. Of a load that keeps its total the mean counts: with its right end at 7 m most where
    // the line at the left end is the mean itself: h = (7 - 2√2) / 5 at 5h.
    private static readonly double Mean = (7 - 2 * Math.Sqrt(2)) / 5;

    [Theory]
    [InlineData(false, 0)]
    [InlineData(true, 0)]
    [InlineData(false, 10)] // on a level that is always there
    [InlineData(false, -10)]
    public void TotalThatIsKept_UnderARoof(bool along, double level)
    {
        InfluenceLine line = Roof(along, 1, level);

        Near(450 * (Mean + level), Search(line, Load(100, 100, along), keepsTotal: true, 1), 0.05);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void TotalThatIsKept_OverAValley_IsLeastThere(bool along) =>
        Near(450 * Mean, Search(Roof(along, -1, 0), Load(100, 100, along), keepsTotal: true, -1), 0.05);

    // The shear at 5 m: -x / 10 left of it, 1 - x / 10 right of it. 290 N from 5 m on, no farther than 6 m: 0.45 times that.
    [Theory]
    [InlineData(1, Side.Left)]
    [InlineData(-1, Side.Right)]
    public void TotalThatIsKept_BeginsAtTheSection(int sign, Side side)
    {
        Load.Distributed load = new(4.1, 7, 100 * sign, 100 * sign);
        SpreadLoadSearch search = new(Box(load, 1.4, 1, keepsTotal: true), Shear(side), along: false, sign);

        Near(130.5, search, 0.2);
    }

    // 1 - (x - 5)² / 4 is nil at 3 and 7 m; over it 100 to 300 N/m from 2.4 to 4.4 and to 5.7 to 7.7 m, both ways.
    [Theory]
    [InlineData(100, 300, 1, false)]
    [InlineData(300, 100, 1, false)]
    [InlineData(100, 300, -1, false)]
    [InlineData(-100, 300, 1, false)]
    [InlineData(100, -300, 1, false)]
    [InlineData(100, 300, 1, true)]
    [InlineData(300, 100, -1, true)]
    [InlineData(-100, 300, 1, true)]
    [InlineData(100, -300, -1, true)]
    public void VaryingLoad_OverAWave(double start, double end, int sign, bool keepsTotal)
    {
        InfluenceLine wave = new(
            [new Stretch(0, 10, 0, 10, [-5.25, 25, -25, 0, 0, 0, 0, 0, 0])], Target.Of(0, ReactionPart.Vertical), 25);
        Load.Distributed load = new(3.4, 6.7, start, end);
        double[] values =
        [
            .. from i in Enumerable.Range(0, 101) from j in Enumerable.Range(0, 101)
               select sign * Effect(load, 2.4 + i / 50.0, 5.7 + j / 50.0, keepsTotal),
        ];

        SpreadLoadSearch search = new(Box(load, 1, 1, keepsTotal), wave, along: false, sign);

        Near(values.Max(), search, 1e-3 * (values.Max() - values.Min()));
    }

    // A figure that is the same wherever the load stands but for rounding: that is not searched.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void LevelLine_LeavesNothingToSearch(bool along)
    {
        double[] coefficients = [1e3, 1e-11, -1e-11, 0, 1e3, 1e-11, 0, 0, 0];
        InfluenceLine level = new([new Stretch(0, 10, 0, 10, coefficients)], Target.Of(0, ReactionPart.Horizontal), 1e3);

        Near(4.5e9, Search(level, Load(1e6, 1e6, along), keepsTotal: true, 1), 1);
    }

    // Next to nothing up to 3.6 m, 1 within a centimetre, then 1 - x / 100. 0.3 N keep their total from there to 5.1 m: 0.28694
    // N. So steep a line is not searched to the end, and the band says so; downward nothing is that steep.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void SearchThatIsGivenUp_IsABound(bool along)
    {
        InfluenceLine step = new(
            [
                Straight(along, 0, 3.6, 0, 10, 0, 0.01),
                Straight(along, 3.6, 3.61, 3.6, 0.01, 0, 1),
                Straight(along, 3.61, 10, 0, 10, 1, -0.1),
            ],
            Target.Of(0, ReactionPart.Vertical), 1);
        LoadBox box = Box(new Load.Distributed(3.5, 6.5, 0.1, 0.1, along), 1.4, 1.4, keepsTotal: true);

        Band band = SpreadLoadRange.Of(box, step, along);

        Assert.Equal(BandCertainty.Bound, band.Certainty);
        Assert.InRange(band.High, 0.3 * (1 - (3.61 + 5.1) / 200), 0.29);
        Assert.True(new SpreadLoadSearch(box, step, along, -1) is var down && down.Greatest() < 0 && down.IsNear);
    }

    private static SpreadLoadSearch Search(InfluenceLine line, Load.Distributed load, bool keepsTotal, int sign) =>
        new(Box(load, 1, 1, keepsTotal), line, load.ActsAlong, sign);

    /// <summary>From 3.5 to 8 m.</summary>
    private static Load.Distributed Load(double start, double end, bool along) => new(3.5, 8, start, end, along);

    private static LoadBox Box(Load load, double from, double to, bool keepsTotal) => Assert.Single(LoadBox.Of(
        Said.Simple(10, load), [new InputSpread.LoadFrom(Index, from, keepsTotal), new InputSpread.LoadTo(Index, to, keepsTotal)]));

    private static InfluenceLine Roof(bool along, double height, double level) => new(
        [Straight(along, 0, 5, 0, 5, level, height), Straight(along, 5, 10, 5, 5, level + height, -height)],
        Target.Of(0, ReactionPart.Vertical), 1 + Math.Abs(level));

    private static Stretch Straight(bool along, double from, double to, double origin, double unit, double start, double rise) =>
        new(from, to, origin, unit, along ? [0, 0, 0, 0, start, rise, 0, 0, 0] : [start, rise, 0, 0, 0, 0, 0, 0, 0]);

    private static InfluenceLine Shear(Side side) => new(
        [
            new Stretch(0, 5, 0, 10, [0, -1, 0, 0, 0, 0, 0, 0, 0]), new Stretch(5, 10, 0, 10, [1, -1, 0, 0, 0, 0, 0, 0, 0]),
        ],
        Target.At(5, side, Curve.Shear), 1);

    /// <summary>On the wave, by Simpson's rule, which is exact here.</summary>
    private static double Effect(Load.Distributed load, double a, double b, bool keepsTotal)
    {
        double scale = keepsTotal ? (load.To - load.From) / (b - a) : 1;
        return scale * (b - a) / 6 * (At(0) + 4 * At(0.5) + At(1));

        double At(double share) => (load.StartIntensity + share * (load.EndIntensity - load.StartIntensity))
            * (1 - Math.Pow(a + share * (b - a) - 5, 2) / 4);
    }

    private static void Near(double expected, SpreadLoadSearch search, double above)
    {
        double rounding = 1e-9 * Math.Abs(expected);

        Assert.InRange(search.Greatest(), expected - rounding, expected + rounding + above);
        Assert.True(search.IsNear);
    }
}
