using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>What a spread load does to a figure whose influence line is known, its ends and size in their ranges.</summary>
public sealed class SpreadLoadRangeTests
{
    private static readonly LoadIndex Index = new(0, 0);

    // The right reaction of 10 m: x / 10; along it is twice as much.
    private static readonly InfluenceLine Tenth = Line(new Stretch(0, 10, 0, 10, [0, 1, 0, 0, 0, 2, 0, 0, 0]));

    // 100 N/m within 10 % from 4 ± 0.5 to 6 ± 0.3 m. Most: 110 (6.3² - 3.5²) / 20; least: 90 (5.7² - 4.5²) / 20.
    [Theory]
    [InlineData(false, 55.08, 150.92)]
    [InlineData(true, 110.16, 301.84)]
    public void EvenLoad_IsWorstAtTheCornersOfItsRanges(bool along, double low, double high)
    {
        Band band = Of(
            Tenth, new Load.Distributed(4, 6, 100, 100, along),
            new InputSpread.LoadSize(Index, 0.1), new InputSpread.LoadFrom(Index, 0.5), new InputSpread.LoadTo(Index, 0.3));

        Assert.Equal((low, high, BandCertainty.Exact), (Math.Round(band.Low, 9), Math.Round(band.High, 9), band.Certainty));
    }

    // x - 5 to either side of its nil: 80 to 120 N/m on L = 6 - a, its middle at (6 + a) / 2. Most from 4.2 m on with
    // 80 at the left: 180 x 0.1 + 40 x 1.8² / 12; least from 3.8 m on with 120 there: -220 x 0.1 - 40 x 2.2² / 12.
    [Fact]
    public void EndsOfAnEvenLoad_MayDiffer_EachWithinItsRange()
    {
        InfluenceLine through = Line(new Stretch(0, 10, 0, 10, [-5, 10, 0, 0, 0, 0, 0, 0, 0]));

        Band band = Of(
            through, new Load.Distributed(4, 6, 100, 100), new InputSpread.LoadFrom(Index, 0.2),
            new InputSpread.StartIntensity(Index, 20), new InputSpread.EndIntensity(Index, 20));

        Assert.Equal((-38.133333, 28.8, BandCertainty.Exact), (Math.Round(band.Low, 6), Math.Round(band.High, 6), band.Certainty));
    }

    // x - 5 from a = 5 ± 1 to 9 m: 8 - (a - 5)² / 2, most where the line passes through nil.
    [Fact]
    public void EvenLoad_IsWorstWhereTheLinePassesThroughNil()
    {
        InfluenceLine through = Line(new Stretch(0, 10, 0, 10, [-5, 10, 0, 0, 0, 0, 0, 0, 0]));

        Band band = Of(through, new Load.Distributed(5, 9, 2, 2), new InputSpread.LoadFrom(Index, 1));

        Assert.Equal((15, 16), (Math.Round(band.Low, 9), Math.Round(band.High, 9)));
    }

    // In two stretches, the second counted from its own left end in its own unit.
    [Fact]
    public void EvenLoad_OverTwoStretches()
    {
        InfluenceLine both = Line(
            new Stretch(0, 5, 0, 5, [0, 0.5, 0, 0, 0, 0, 0, 0, 0]), new Stretch(5, 10, 5, 5, [0.5, 0.5, 0, 0, 0, 0, 0, 0, 0]));

        Band band = Of(both, new Load.Distributed(4, 6, 100, 100), new InputSpread.LoadFrom(Index, 0.5), new InputSpread.LoadTo(Index, 0.3));

        Assert.Equal((61.2, 137.2), (Math.Round(band.Low, 9), Math.Round(band.High, 9)));
    }

    // 100 to 300 N/m on L = b - a: 200 L with its centre 7 L / 12 from a. Most with a = 3.5, b = 6.5: 600 N at 5.25 m;
    // least with a = 4.5, b = 5.5: 200 N at 5.0833 m.
    [Fact]
    public void GrowingLoad_IsWorstAtTheCorners_WhereTheLineRises()
    {
        Band band = Of(
            Tenth, new Load.Distributed(4, 6, 100, 300), new InputSpread.LoadFrom(Index, 0.5), new InputSpread.LoadTo(Index, 0.5));

        Assert.Equal((101.666667, 315, BandCertainty.Exact), (Math.Round(band.Low, 6), Math.Round(band.High, 6), band.Certainty));
    }

    // 400 N whatever its length: at a + 7 (b - a) / 12.
    [Fact]
    public void LoadThatKeepsItsTotal_IsWorstWhereItsCentreIsFarthestOut()
    {
        Band band = Of(
            Tenth, new Load.Distributed(4, 6, 100, 300),
            new InputSpread.LoadFrom(Index, 0.5, KeepsTotal: true), new InputSpread.LoadTo(Index, 0.5, KeepsTotal: true));

        Assert.Equal((186.666667, 226.666667), (Math.Round(band.Low, 6), Math.Round(band.High, 6)));
    }

    /// <summary>
    /// Random cubics that meet in a jump, against a net of 61 by 61 places of the two ends:
    /// never less, and hardly more.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Search_IsNeverLessThanANetOfPlaces_AndHardlyMore(bool keepsTotal)
    {
        Random random = new(11);
        for (int i = 0; i < 12; i++)
        {
            double[][] cubics = [.. Enumerable.Range(0, 2).Select(_ => Enumerable.Range(0, 4).Select(_ => 2 * random.NextDouble() - 1).ToArray())];
            InfluenceLine line = new(
                [new Stretch(0, 5, 0, 5, [.. cubics[0], 0, 0, 0, 0, 0]), new Stretch(5, 10, 5, 5, [.. cubics[1], 0, 0, 0, 0, 0])],
                Target.Of(0, ReactionPart.Vertical), 10);
            Load.Distributed load = new(3.5, 6.5, 100, 100 + 400 * random.NextDouble());
            double half = 0.3 + random.NextDouble();

            Band band = Of(
                line, load, new InputSpread.LoadFrom(Index, half, keepsTotal), new InputSpread.LoadTo(Index, half, keepsTotal));

            double[] net =
            [
                .. from a in Enumerable.Range(0, 61).Select(k => 3.5 + half * (k / 30.0 - 1))
                   from b in Enumerable.Range(0, 61).Select(k => 6.5 + half * (k / 30.0 - 1))
                   select Effect(cubics, load, a, b, keepsTotal),
            ];
            double near = 5e-3 * (net.Max() - net.Min());
            Assert.InRange(band.High, net.Max() - near / 5, net.Max() + near);
            Assert.InRange(band.Low, net.Min() - near, net.Min() + near / 5);
        }
    }

    private static double Effect(double[][] cubics, Load.Distributed load, double a, double b, bool keepsTotal)
    {
        double scale = keepsTotal ? (load.To - load.From) / (b - a) : 1;
        return scale * (Part(cubics[0], a, 5) + Part(cubics[1], 5, b));

        // Gauss' three places, exact up to the fifth power.
        double Part(double[] c, double from, double to)
        {
            double half = (to - from) / 2;
            return half / 9 * (5 * At(-Math.Sqrt(0.6)) + 8 * At(0) + 5 * At(Math.Sqrt(0.6)));

            double At(double way)
            {
                double place = from + half * (1 + way);
                double t = (place < 5 ? place : place - 5) / 5;
                double intensity = load.StartIntensity
                    + (load.EndIntensity - load.StartIntensity) * (place - a) / (b - a);
                return intensity * (c[0] + t * (c[1] + t * (c[2] + t * c[3])));
            }
        }
    }

    private static InfluenceLine Line(params Stretch[] stretches) => new([.. stretches], Target.Of(0, ReactionPart.Vertical), 1);

    private static Band Of(InfluenceLine line, Load.Distributed load, params InputSpread[] inputs) => SpreadLoadRange.Of(
        Assert.Single(LoadBox.Of(Said.Simple(10, load), [.. inputs])), line, load.ActsAlong);
}
