using System.Collections.Immutable;

namespace FieldCheck.Reporting.Pictures;

/// <summary>Arrows, straight and turning.</summary>
internal static class Arrows
{
    private const double Head = 4;
    private const double HalfHead = 1.8;
    private const double Radius = 9;
    private const int Steps = 16;

    /// <summary>A straight arrow.</summary>
    internal static IEnumerable<PictureMark> Straight(PicturePoint from, PicturePoint to, double thickness)
    {
        double length = Math.Max(Math.Sqrt(Square(to.X - from.X) + Square(to.Y - from.Y)), 1e-9);
        (double right, double down) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
        double head = Math.Min(Head, length / 2);
        PicturePoint neck = new(to.X - head * right, to.Y - head * down);
        return
        [
            new PictureMark.Line([from, neck], thickness),
            new PictureMark.Area(
                [
                    to,
                    new(neck.X - HalfHead * down, neck.Y + HalfHead * right),
                    new(neck.X + HalfHead * down, neck.Y - HalfHead * right),
                ],
                0),
        ];
    }

    /// <summary>An arrow round a point, open at the bottom.</summary>
    internal static IEnumerable<PictureMark> Turning(PicturePoint centre, bool isCounterClockwise, double thickness)
    {
        // Angles from the right, counter-clockwise, as on paper.
        double start = isCounterClockwise ? -0.15 * Math.PI : 1.15 * Math.PI;
        double end = isCounterClockwise ? 1.05 * Math.PI : -0.05 * Math.PI;
        ImmutableArray<PicturePoint> arc =
        [
            .. Enumerable.Range(0, Steps + 1).Select(step => On(centre, start + (end - start) * step / Steps)),
        ];
        double tip = end + (isCounterClockwise ? 0.15 : -0.15) * Math.PI;
        return [new PictureMark.Line(arc, thickness), .. Straight(arc[^1], On(centre, tip), thickness)];
    }

    private static PicturePoint On(PicturePoint centre, double angle) =>
        new(centre.X + Radius * Math.Cos(angle), centre.Y - Radius * Math.Sin(angle));

    private static double Square(double value) => value * value;
}
