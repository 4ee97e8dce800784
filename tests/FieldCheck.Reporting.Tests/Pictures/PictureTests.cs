using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Reporting.Pictures;
using FieldCheck.Sheet;
using Drawn = FieldCheck.Reporting.Pictures.Picture;

namespace FieldCheck.Reporting.Tests.Pictures;

/// <summary>Drawings in lines.</summary>
public sealed class PictureTests
{
    private const double Near = 1e-9;

    private static readonly IEqualityComparer<double> Close =
        EqualityComparer<double>.Create((one, other) => Math.Abs(one - other) < 1e-5, _ => 0);

    public static TheoryData<string> Names => Sheets.PresetNames();

    [Theory]
    [MemberData(nameof(Names))]
    public void EveryMark_LiesOnThePicture(string name) => Assert.All(
        PicturesOf(Sheets.Preset(name)),
        picture => Assert.All(picture.Marks.SelectMany(Points), point =>
        {
            Assert.InRange(point.X, -Near, picture.Width + Near);
            Assert.InRange(point.Y, -Near, picture.Height + Near);
        }));

    /// <summary>No label lies over another, letters taken as wide as they can be.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Labels_DoNotTouch(string name) => Assert.All(
        PicturesOf(Sheets.Preset(name)),
        picture =>
        {
            (double Left, double Right, double Top, double Bottom)[] boxes =
                [.. picture.Marks.OfType<PictureMark.Text>().Select(Box)];
            for (int i = 0; i < boxes.Length; i++)
            {
                for (int j = 0; j < i; j++)
                {
                    bool isApart = boxes[i].Right <= boxes[j].Left || boxes[j].Right <= boxes[i].Left
                        || boxes[i].Bottom <= boxes[j].Top || boxes[j].Bottom <= boxes[i].Top;
                    Assert.True(isApart, $"{picture.Marks.OfType<PictureMark.Text>().ElementAt(i)} over another");
                }
            }
        });

    /// <summary>Where a line would run through a label, be it a curve, an edge, a support's or a load's, white lies over the line.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Labels_AreNotStruckThrough(string name)
    {
        foreach (Drawn picture in PicturesOf(Sheets.Preset(name)))
        {
            foreach (PictureMark.Text label in picture.Marks.OfType<PictureMark.Text>())
            {
                (double left, double right, double top, double bottom) = Box(label);
                int last = picture.Marks.Select((mark, i) => mark is PictureMark.Line line && Crosses(line, left, right, top, bottom) ? i : -1).Max();
                if (last >= 0)
                {
                    Assert.Contains(picture.Marks.Skip(last), mark => mark is PictureMark.Area { Lightness: 1 } white
                        && white.Points.Min(point => point.X) <= left + Near && white.Points.Max(point => point.X) >= right - Near
                        && white.Points.Min(point => point.Y) <= top + Near && white.Points.Max(point => point.Y) >= bottom - Near);
                }
            }
        }
    }

    /// <summary>A simple span of 4 m under 3 kN/m: V from +6 to -6 kN in a straight line, M a parabola of 6 kNm at mid-span.</summary>
    [Fact]
    public void CurvesOfASimpleSpan_AreDrawnToScale()
    {
        Calculation calculation = Sheets.Run(Sheets.Overhang with
        {
            Spans = [new() { Length = "4 m" }],
            Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
            Loads = [new() { Kind = "distributed", Intensity = "3 kN/m" }],
        });
        BeamResponse response = ((BeamOutcome.Stands)calculation.Outcome!).Combinations[0].Response;

        ImmutableArray<PicturePoint> shear = Curve(DiagramPicture.Of(PlotCurve.Of(calculation.Beam!, response, Mechanics.Response.Curve.Shear)));
        ImmutableArray<PicturePoint> moment = Curve(DiagramPicture.Of(PlotCurve.Of(calculation.Beam!, response, Mechanics.Response.Curve.Moment)));

        double zero = shear[0].Y;
        Assert.Equal(zero, shear[^1].Y);
        Assert.Equal(zero - shear[1].Y, shear[^2].Y - zero, 1e-6);
        double peak = moment.Min(point => point.Y);
        double middle = moment.First(point => point.Y == peak).X;
        Assert.Equal((moment[0].X + moment[^1].X) / 2, middle, 1e-6);
        PicturePoint quarter = moment.MinBy(point => Math.Abs(point.X - (moment[0].X + middle) / 2));
        double share = (quarter.X - moment[0].X) / (moment[^1].X - moment[0].X);
        Assert.Equal(4 * share * (1 - share), (moment[0].Y - quarter.Y) / (moment[0].Y - peak), 1e-6);
    }

    /// <summary>
    /// Two bays of 4 m, 3 kN/m on either, both or none. Just right of the middle support the greatest shear is 5/8 w L = 7.5 kN
    /// (three-moment equation), just left of it none: an upright line, not a slope over the step before it.
    /// </summary>
    [Fact]
    public void EnvelopeAtASupport_JumpsUpright()
    {
        Calculation bays = Sheets.Run(Tables.EnvelopePanelTests.Bays(2, "3 kN/m"));
        PlotCurve curve = PlotCurve.Of(bays.Beam!, ((BeamOutcome.Stands)bays.Outcome!).Combinations[0].Response, Mechanics.Response.Curve.Shear);

        Drawn picture = DiagramPicture.Of(curve with { Band = PlotBand.Of(Assert.Single(bays.Envelopes), Mechanics.Response.Curve.Shear) });

        PictureMark.Line[] edges = [.. picture.Marks.OfType<PictureMark.Line>().Where(line => line.IsDashed && line.Points.Length > 2)];
        double middle = PictureInk.Width / 2;
        double zero = Curve(picture)[0].Y;
        double scale = (edges[0].Points[0].Y - zero) / -(7 / 16.0 * 3 * 4);
        Assert.Equal([zero, zero - 7.5 * scale], edges[0].Points.Where(point => point.X == middle).Select(point => point.Y), Close);
        Assert.Equal([zero + 7.5 * scale, zero], edges[1].Points.Where(point => point.X == middle).Select(point => point.Y), Close);
    }

    /// <summary>
    /// 1 kN/m on 4 m, and in another combination 4 kN at 1 m too. The greatest shear falls there from 1 + 3 to 1 kN (a simple
    /// span by hand), though the curve that is drawn has no load there.
    /// </summary>
    [Fact]
    public void EnvelopeAtALoadOfAnotherCombination_JumpsUpright()
    {
        Calculation calculation = Sheets.Run(Sheets.Overhang with
        {
            Spans = [new() { Length = "4 m" }],
            Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
            Loads =
            [
                new() { Kind = "distributed", Intensity = "1 kN/m", Case = "dead" },
                new() { Kind = "point", Force = "4 kN", At = "1 m", Case = "snow" },
            ],
            Combinations =
            [
                new() { Name = "bare", Factors = [new("dead", "1")] },
                new() { Name = "snow", Factors = [new("dead", "1"), new("snow", "1")] },
            ],
        });
        PlotCurve curve = PlotCurve.Of(
            calculation.Beam!, ((BeamOutcome.Stands)calculation.Outcome!).Combinations[0].Response, Mechanics.Response.Curve.Shear);

        Drawn picture = DiagramPicture.Of(curve with { Band = PlotBand.Of(Assert.Single(calculation.Envelopes), Mechanics.Response.Curve.Shear) });

        PictureMark.Line greatest = picture.Marks.OfType<PictureMark.Line>().First(line => line.IsDashed && line.Points.Length > 2);
        double zero = Curve(picture)[0].Y;
        double scale = (zero - greatest.Points[0].Y) / 5;
        Assert.Equal(
            [zero - 4 * scale, zero - scale],
            greatest.Points.Where(point => point.X == PictureInk.X(1, 4)).Select(point => point.Y),
            Close);
    }

    private static ImmutableArray<PicturePoint> Curve(Drawn picture) =>
        picture.Marks.OfType<PictureMark.Line>().MaxBy(line => line.Points.Length)!.Points;

    /// <summary>True: some of the line lies within the box (Liang and Barsky, 1984: what the four edges leave of each stretch).</summary>
    private static bool Crosses(PictureMark.Line line, double left, double right, double top, double bottom) =>
        line.Points.Zip(line.Points.Skip(1)).Any(pair =>
        {
            (double x, double y) = (pair.Second.X - pair.First.X, pair.Second.Y - pair.First.Y);
            (double from, double to) = (0, 1);
            foreach ((double step, double room) in (ReadOnlySpan<(double, double)>)
                [(-x, pair.First.X - left), (x, right - pair.First.X), (-y, pair.First.Y - top), (y, bottom - pair.First.Y)])
            {
                if (step == 0 && room <= 0)
                {
                    return false;
                }

                (from, to) = step < 0 ? (Math.Max(from, room / step), to) : step > 0 ? (from, Math.Min(to, room / step)) : (from, to);
            }

            return to - from > 1e-6;
        });

    private static IEnumerable<Drawn> PicturesOf(Calculation calculation) =>
        Pages.Records.Of(calculation).Blocks.OfType<Reporting.Pages.RecordBlock.Figure>().Select(figure => figure.Drawing);

    private static IEnumerable<PicturePoint> Points(PictureMark mark) => mark switch
    {
        PictureMark.Line line => line.Points,
        PictureMark.Area area => area.Points,
        PictureMark.Circle circle =>
        [
            new(circle.Centre.X - circle.Radius, circle.Centre.Y - circle.Radius),
            new(circle.Centre.X + circle.Radius, circle.Centre.Y + circle.Radius),
        ],
        PictureMark.Text text => [new(Box(text).Left, Box(text).Top), new(Box(text).Right, Box(text).Bottom)],
        _ => [],
    };

    private static (double Left, double Right, double Top, double Bottom) Box(PictureMark.Text text)
    {
        double width = PictureInk.WidthOf(text.Words, text.Size);
        double left = text.Anchor switch
        {
            TextAnchor.Start => text.At.X,
            TextAnchor.Middle => text.At.X - width / 2,
            _ => text.At.X - width,
        };
        return (left, left + width, text.At.Y - 0.75 * text.Size, text.At.Y);
    }
}
