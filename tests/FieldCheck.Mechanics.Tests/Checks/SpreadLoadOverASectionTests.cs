using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>
/// A load from 4 to 6 m that keeps its total and whose ends may all but meet, over a section that the line jumps at: never
/// less than a net of places of the two ends, and hardly more.
/// </summary>
public sealed class SpreadLoadOverASectionTests
{
    private static readonly LoadIndex Index = new(0, 0);

    // Left of the section -t + c t² + d t³ with t = x / 10, right of it one more.
    [Theory]
    [InlineData(4.6, 0.9, -0.3, 148, 179, 1.495, 1.03)]
    [InlineData(4.89, 0.6, -0.43, 178, 95, 1.942, 1.153)]
    [InlineData(4.596, 0.923, 0.501, 155, -98, 1.963, 1.503)]
    [InlineData(5.09, 0.84, -0.67, -115, -48, 1.288, 0.977)]
    [InlineData(4.2, 0, 0, 100, 100, 1.2, 0.8)]
    public void Search_IsNeverLessThanANetOfPlaces(
        double section, double c, double d, double start, double end, double halfFrom, double halfTo)
    {
        double[] left = [0, -1, c, d];
        double[] right = [1, -1, c, d];
        InfluenceLine line = new(
            [new Stretch(0, section, 0, 10, [.. left, 0, 0, 0, 0, 0]), new Stretch(section, 10, 0, 10, [.. right, 0, 0, 0, 0, 0])],
            Target.At(section, Side.Left, Curve.Shear), 1);
        LoadBox box = Assert.Single(LoadBox.Of(
            Said.Simple(10, new Load.Distributed(4, 6, start, end)),
            [new InputSpread.LoadFrom(Index, halfFrom, KeepsTotal: true), new InputSpread.LoadTo(Index, halfTo, KeepsTotal: true)]));
        double[] net =
        [
            .. from a in Net(box.From) from b in Net(box.To)
               let cut = Math.Clamp(section, a, b)
               select 2 / (b - a) * (Part(left, a, cut, a, b) + Part(right, cut, b, a, b)),
        ];

        Band band = SpreadLoadRange.Of(box, line, along: false);

        double near = 5e-3 * (net.Max() - net.Min());
        Assert.InRange(band.High, net.Max() - 1e-9, net.Max() + near);
        Assert.InRange(band.Low, net.Min() - near, net.Min() + 1e-9);
        Assert.Equal(BandCertainty.Exact, band.Certainty);

        IEnumerable<double> Net((double Low, double High) range) =>
            Enumerable.Range(0, 121).Select(k => range.Low + (range.High - range.Low) * k / 120).Append(
                Math.Clamp(section, range.Low, range.High));

        // Gauss' three places, exact up to the fifth power.
        double Part(double[] ordinate, double from, double to, double a, double b)
        {
            return (to - from) / 18 * (5 * At(-Math.Sqrt(0.6)) + 8 * At(0) + 5 * At(Math.Sqrt(0.6)));

            double At(double way)
            {
                double place = (from + to + way * (to - from)) / 2;
                double t = place / 10;
                return (start + (end - start) * (place - a) / (b - a))
                    * (ordinate[0] + t * (ordinate[1] + t * (ordinate[2] + t * ordinate[3])));
            }
        }
    }
}
