using FieldCheck.Mechanics.Model;

namespace FieldCheck.Reporting.Pictures;

/// <summary>Draws a support below the beam, from what it holds; how the signs are to be read: docs/conventions.md.</summary>
internal static class SupportPicture
{
    /// <summary>How far the signs reach below the beam [pt].</summary>
    internal const double Depth = 15;

    /// <summary>How far they reach above it, less than any load with its label [pt].</summary>
    internal const double Above = Wall;

    private const double Half = 6;
    private const double Rise = 9;
    private const double Ball = 1.7;
    private const double Wall = 13;
    private const double Hatch = 3.2;

    /// <summary>The marks of a support.</summary>
    /// <param name="support">The support.</param>
    /// <param name="at">Where the beam is held: its under side.</param>
    /// <param name="isRightEnd">True: a wall stands to the right of it.</param>
    internal static IEnumerable<PictureMark> Of(Support support, PicturePoint at, bool isRightEnd)
    {
        double slope = support.SurfaceSlope;
        IEnumerable<PictureMark> marks = support switch
        {
            { Rotation: Restraint.Rigid, Across: Restraint.None } => Guide(at, isRightEnd),
            { Rotation: Restraint.Rigid } => WallAt(at, isRightEnd),
            { Across: Restraint.Spring } => Coil(at),
            { Across: Restraint.None } => [],
            { Along: Restraint.None, Action: SupportAction.HoldsDownOnly } => Strap(at),
            { Along: Restraint.None } => Roller(at),
            _ => Pin(at),
        };
        return [.. slope == 0 ? marks : marks.Select(mark => Turned(mark, at, slope)), .. RotationSpring(support, at)];
    }

    private static IEnumerable<PictureMark> Pin(PicturePoint at) =>
        [Triangle(at, Rise + 2 * Ball), .. Ground(at, Rise + 2 * Ball)];

    private static IEnumerable<PictureMark> Roller(PicturePoint at) =>
    [
        Triangle(at, Rise),
        new PictureMark.Circle(new(at.X - Half / 2, at.Y + Rise + Ball), Ball, PictureInk.Thin),
        new PictureMark.Circle(new(at.X + Half / 2, at.Y + Rise + Ball), Ball, PictureInk.Thin),
        .. Ground(at, Rise + 2 * Ball),
    ];

    private static IEnumerable<PictureMark> Strap(PicturePoint at) =>
    [
        new PictureMark.Circle(new(at.X, at.Y + Ball), Ball, PictureInk.Thin),
        new PictureMark.Line([new(at.X, at.Y + 2 * Ball), new(at.X, at.Y + Rise)], PictureInk.Thin),
        new PictureMark.Circle(new(at.X, at.Y + Rise + Ball), Ball, PictureInk.Thin),
        .. Ground(at, Rise + 2 * Ball),
    ];

    private static IEnumerable<PictureMark> Coil(PicturePoint at)
    {
        double step = (Rise + 2 * Ball) / 7;
        return
        [
            new PictureMark.Line(
                [
                    at,
                    new(at.X, at.Y + step),
                    .. Enumerable.Range(0, 5).Select(i =>
                        new PicturePoint(at.X + (i % 2 == 0 ? Half / 1.5 : -Half / 1.5), at.Y + (i + 1.5) * step)),
                    new(at.X, at.Y + 7 * step),
                ],
                PictureInk.Thin),
            .. Ground(at, Rise + 2 * Ball),
        ];
    }

    private static IEnumerable<PictureMark> WallAt(PicturePoint at, bool isRightEnd)
    {
        double y = at.Y - PictureInk.Thick / 2;
        double way = isRightEnd ? 1 : -1;
        return
        [
            new PictureMark.Line([new(at.X, y - Wall), new(at.X, y + Wall)], PictureInk.Curve),
            .. Enumerable.Range(0, (int)(2 * Wall / Hatch)).Select(i => new PictureMark.Line(
                [new(at.X, y - Wall + i * Hatch), new(at.X + way * Hatch, y - Wall + (i + 1) * Hatch)], PictureInk.Thin)),
        ];
    }

    /// <summary>A wall along which it may slide.</summary>
    private static IEnumerable<PictureMark> Guide(PicturePoint at, bool isRightEnd)
    {
        double y = at.Y - PictureInk.Thick / 2;
        double way = isRightEnd ? 1 : -1;
        return
        [
            .. WallAt(new(at.X + way * 2 * Ball, at.Y), isRightEnd),
            new PictureMark.Circle(new(at.X + way * Ball, y - Half), Ball, PictureInk.Thin),
            new PictureMark.Circle(new(at.X + way * Ball, y + Half), Ball, PictureInk.Thin),
        ];
    }

    private static IEnumerable<PictureMark> RotationSpring(Support support, PicturePoint at) =>
        support.Rotation is Restraint.Spring
            ? [new PictureMark.Circle(new(at.X, at.Y - PictureInk.Thick / 2), Half / 2, PictureInk.Thin)]
            : [];

    private static PictureMark.Line Triangle(PicturePoint at, double rise) =>
        new([at, new(at.X - Half, at.Y + rise), new(at.X + Half, at.Y + rise), at], PictureInk.Thin);

    private static IEnumerable<PictureMark> Ground(PicturePoint at, double depth) =>
    [
        new PictureMark.Line([new(at.X - Half - 2, at.Y + depth), new(at.X + Half + 2, at.Y + depth)], PictureInk.Curve),
    ];

    private static PictureMark Turned(PictureMark mark, PicturePoint about, double slope) => mark switch
    {
        PictureMark.Line line => line with { Points = [.. line.Points.Select(point => Turned(point, about, slope))] },
        PictureMark.Area area => area with { Points = [.. area.Points.Select(point => Turned(point, about, slope))] },
        PictureMark.Circle circle => circle with { Centre = Turned(circle.Centre, about, slope) },
        _ => mark,
    };

    // The surface rises to the right by the slope: on paper, with y down, a turn against the clock.
    private static PicturePoint Turned(PicturePoint point, PicturePoint about, double slope)
    {
        (double sine, double cosine) = Math.SinCos(slope);
        (double right, double down) = (point.X - about.X, point.Y - about.Y);
        return new(about.X + right * cosine + down * sine, about.Y - right * sine + down * cosine);
    }
}
