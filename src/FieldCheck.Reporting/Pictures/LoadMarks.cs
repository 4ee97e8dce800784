using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Reporting.Pictures;

/// <summary>Draws the loads above the beam: spread ones in layers, single ones through them.</summary>
/// <param name="length">Length of the beam [m].</param>
internal sealed class LoadMarks(double length)
{
    private const double Layer = 17;
    private const double LayerGap = 3;
    private const double Least = 0.25;
    private const double ArrowEvery = 22;
    private const double Single = 20;
    private const int MostLayers = 6;

    private readonly List<List<(double From, double To)>> _layers = [];
    private bool _hasSingle;

    /// <summary>How far the loads reach above the beam [pt]; final once all of them are put.</summary>
    internal double Height => _layers.Count * (Layer + LayerGap) + (_hasSingle ? Single : 0);

    /// <summary>The layer of a spread load, counted from the beam.</summary>
    internal int LayerOf(Load load)
    {
        if (load is not Load.Distributed spread)
        {
            _hasSingle = true;
            return 0;
        }

        for (int layer = 0; layer < MostLayers; layer++)
        {
            if (layer == _layers.Count)
            {
                _layers.Add([]);
            }

            if (_layers[layer].All(taken => spread.To <= taken.From || spread.From >= taken.To))
            {
                _layers[layer].Add((spread.From, spread.To));
                return layer;
            }
        }

        return MostLayers - 1;
    }

    /// <summary>The marks of one load.</summary>
    /// <param name="load">The load.</param>
    /// <param name="factor">What it counts.</param>
    /// <param name="layer">Its layer.</param>
    /// <param name="beam">Upper side of the beam, from the top of the picture [pt].</param>
    internal IEnumerable<PictureMark> Of(Load load, double factor, int layer, double beam) => load switch
    {
        Load.Point point => Point(point, factor, beam),
        Load.Couple couple => Arrows.Turning(
            new(X(couple.Position), beam + PictureInk.Thick / 2), couple.Moment * factor > 0, PictureInk.Curve),
        Load.Distributed spread => Spread(spread, factor, beam - layer * (Layer + LayerGap) - 1),
        _ => [],
    };

    private IEnumerable<PictureMark> Point(Load.Point point, double factor, double beam)
    {
        (double down, double right) = (point.Down * factor, point.Right * factor);
        double size = Math.Sqrt(down * down + right * right);
        double reach = down == 0 ? Single : Height - 2;
        double x = X(point.Position);

        // A flat push must not run off the picture.
        double lean = down == 0 ? Math.Sign(right) * reach : Math.Clamp(right / Math.Abs(down), -1, 1) * Single;
        PicturePoint far = new(x - lean, beam - (down == 0 ? -PictureInk.Thick / 2 : reach));
        PicturePoint near = new(x, down == 0 ? beam + PictureInk.Thick / 2 : beam - 1);
        return size == 0 ? []
            : down < 0 ? Arrows.Straight(near, new(x + lean, far.Y), PictureInk.Curve)
            : Arrows.Straight(far, near, PictureInk.Curve);
    }

    private IEnumerable<PictureMark> Spread(Load.Distributed spread, double factor, double foot)
    {
        double start = spread.StartIntensity * factor;
        double end = spread.EndIntensity * factor;
        double largest = Math.Max(Math.Abs(start), Math.Abs(end));
        if (largest == 0)
        {
            return [];
        }

        (double from, double to) = (X(spread.From), X(spread.To));
        PicturePoint Top(double share) => new(
            from + share * (to - from),
            foot - Layer * Math.Max(Math.Abs(start + share * (end - start)) / largest, start * end == 0 ? 0 : Least));
        ImmutableArray<PicturePoint> outline = [new(from, foot), Top(0), Top(1), new(to, foot)];
        int arrows = Math.Max(2, (int)((to - from) / ArrowEvery) + 1);
        return
        [
            new PictureMark.Area(outline, PictureInk.Light),
            new PictureMark.Line([.. outline, outline[0]], PictureInk.Thin),
            .. Enumerable.Range(0, arrows).Select(i => i / (arrows - 1.0))
                .SelectMany(share => Inside(spread, start + share * (end - start), Top(share), foot)),
        ];
    }

    private static IEnumerable<PictureMark> Inside(Load.Distributed spread, double value, PicturePoint top, double foot)
    {
        PicturePoint under = new(top.X, foot);
        PicturePoint middle = new(top.X, (top.Y + foot) / 2);
        PicturePoint beside = new(top.X + Math.Sign(value) * ArrowEvery / 2, middle.Y);
        bool isTooShort = foot - top.Y < 3;
        return value == 0 || isTooShort ? []
            : spread.ActsAlong ? Arrows.Straight(middle, beside, PictureInk.Thin)
            : value > 0 ? Arrows.Straight(top, under, PictureInk.Thin)
            : Arrows.Straight(under, top, PictureInk.Thin);
    }

    private double X(double place) => PictureInk.X(place, length);
}
