using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;

namespace FieldCheck.Reporting.Tests.Drawing;

public sealed class PeakLinesTests
{
    private static readonly PlotCurve Curve = new()
    {
        Length = 4,
        At = _ => (0, 0),
        Breaks = [0, 4],
        Peaks = [new Extreme(2, 1), new Extreme(-1, 2), new Extreme(7, 3), new Extreme(-5, 3.5)],
        Edge = ["moment", "kNm"],
        Number = value => $"{value:0.0}",
        Say = value => $"{value:+0.0;-0.0}",
        Place = place => $"{place:0.0} m",
    };

    [Fact]
    public void WhereAllFits_PeaksStandFromLeftToRight() => Assert.Equal(
        "moment: +2.0 at 1.0 m   -1.0 at 2.0 m   +7.0 at 3.0 m   -5.0 at 3.5 m",
        Assert.Single(PeakLines.Of([Curve], 80, 1)));

    [Fact]
    public void WhereNotAllFits_TheGreatestOfEachSignStand_AndNoNumberIsCut() => Assert.Equal(
        "moment: +7.0 at 3.0 m   -5.0 at 3.5 m   ...", Assert.Single(PeakLines.Of([Curve], 50, 1)));

    // A level stretch of 10 mm, which the places cannot show.
    [Fact]
    public void StretchShorterThanItsPlacesTell_StandsAtAPlace()
    {
        PlotCurve level = Curve with
        {
            At = place => place is >= 2 and <= 2.01 ? (-4, -4) : (0, 0),
            Breaks = [0, 2, 2.01, 4],
            Peaks = [new Extreme(-4, 2.005)],
        };

        Assert.Equal("moment: -4.0 at 2.0 m", Assert.Single(PeakLines.Of([level], 80, 1)));
        Assert.Equal(
            "moment: -4.0 from 2.00 m to 2.01 m",
            Assert.Single(PeakLines.Of([level with { Place = place => $"{place:0.00} m" }], 80, 1)));
    }
}
