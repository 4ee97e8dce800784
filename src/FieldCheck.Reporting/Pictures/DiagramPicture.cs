using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Reporting.Drawing;

namespace FieldCheck.Reporting.Pictures;

/// <summary>Draws one quantity along a beam: the curve, what it lies between over all that may happen, and its peaks.</summary>
public sealed class DiagramPicture
{
    private const double Half = 44;
    private const double Margin = 14;
    private const double NameRow = 11;
    private const int StepsBetweenBreaks = 24;
    private const int LabelRowsEachSide = 1;

    private readonly PlotCurve _curve;
    private readonly PeakReading _reading;
    private readonly double _scale;
    private readonly double _zero;
    private readonly double _height;
    private readonly ImmutableArray<PictureMark>.Builder _marks = ImmutableArray.CreateBuilder<PictureMark>();

    private DiagramPicture(PlotCurve curve)
    {
        _curve = curve;
        _reading = new PeakReading(curve);
        double[] values =
        [
            0,
            .. _reading.Peaks.Select(peak => Drawn(peak.Value)),
            .. curve.Band is PlotBand band ? new[] { Drawn(band.Max.Value), Drawn(band.Min.Value) } : [],
        ];
        double largest = values.Max(Math.Abs);
        _scale = largest > curve.Negligible ? Half / largest : 0;
        _zero = Margin + Math.Max(_scale * values.Max(), Margin / 2);
        _height = _zero + Math.Max(-_scale * values.Min(), Margin / 2) + Margin + NameRow;
    }

    /// <summary>Draws a curve.</summary>
    /// <param name="curve">The curve.</param>
    public static Picture Of(PlotCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        DiagramPicture picture = new(curve);
        picture.Draw();
        return new Picture(PictureInk.Width, picture._height, picture._marks.ToImmutable());
    }

    private void Draw()
    {
        ImmutableArray<PicturePoint> outline = Outline();
        PicturePoint first = new(X(0), _zero);
        PicturePoint last = new(X(_curve.Length), _zero);
        ImmutableArray<PictureMark.Text> labels = [.. Labels()];
        _marks.Add(new PictureMark.Area([first, .. outline, last], PictureInk.Light));
        DrawMarks();
        _marks.Add(new PictureMark.Line([first, last], PictureInk.Thin));
        DrawBand();
        _marks.Add(new PictureMark.Line([first, .. outline, last], PictureInk.Curve));
        _marks.AddRange(labels.Select(PictureInk.Behind));
        _marks.AddRange(labels);
    }

    /// <summary>The curve from break to break, both sides of a jump.</summary>
    private ImmutableArray<PicturePoint> Outline()
    {
        ImmutableArray<PicturePoint>.Builder points = ImmutableArray.CreateBuilder<PicturePoint>();
        for (int i = 0; i + 1 < _curve.Breaks.Length; i++)
        {
            double from = _curve.Breaks[i];
            double to = _curve.Breaks[i + 1];
            points.Add(At(from, _curve.At(from).Right));
            double[] between =
            [
                .. Enumerable.Range(1, StepsBetweenBreaks - 1).Select(step => from + (to - from) * step / StepsBetweenBreaks),
                .. _reading.Peaks.Select(peak => peak.From).Where(place => place > from && place < to),
            ];
            points.AddRange(between.Order().Select(place => At(place, _curve.At(place).Left)));
            points.Add(At(to, _curve.At(to).Left));
        }

        return points.ToImmutable();
    }

    private void DrawMarks()
    {
        LabelRows rows = new(1);
        foreach (PlotMark mark in _curve.Marks)
        {
            double x = X(mark.Position);
            _marks.Add(new PictureMark.Line([new(x, Margin / 2), new(x, _height - NameRow)], PictureInk.Thin / 2, IsDashed: true));
            if (rows.Put(x, mark.Label) is (_, double middle))
            {
                _marks.Add(Text(middle, _height - 2, mark.Label));
            }
        }
    }

    private void DrawBand()
    {
        if (_curve.Band is PlotBand band)
        {
            (double Place, EnvelopeBand Value)[] edges = [.. BandOutline.Of(_curve, band)];
            _marks.Add(Edge(value => value.Max));
            _marks.Add(Edge(value => value.Min));

            PictureMark.Line Edge(Func<EnvelopeBand, double> side) =>
                new([.. edges.Select(edge => At(edge.Place, side(edge.Value)))], PictureInk.Thin, IsDashed: true);
        }
    }

    /// <summary>
    /// The greatest peaks first, so that they keep their place where not all fit; beside an envelope only its own two, for the
    /// curve has its figures in a drawing without one.
    /// </summary>
    private IEnumerable<PictureMark.Text> Labels()
    {
        (double, double Value)[] all = _curve.Band is PlotBand band
            ? [(band.Max.Position, band.Max.Value), (band.Min.Position, band.Min.Value)]
            : [.. _reading.Peaks.Select(peak => ((peak.From + peak.To) / 2, peak.Value))];
        IEnumerable<(double Place, double Value)> peaks = all
            .Where(peak => _curve.Number(peak.Item2) != _curve.Number(0))
            .Distinct()
            .OrderByDescending(peak => Math.Abs(peak.Item2));
        LabelRows above = new(LabelRowsEachSide);
        LabelRows below = new(LabelRowsEachSide);
        foreach ((double place, double value) in peaks)
        {
            bool isUp = Drawn(value) > 0;
            string words = _curve.Number(value);
            if ((isUp ? above : below).Put(X(place), words) is (_, double middle))
            {
                double y = At(place, value).Y + (isUp ? -3 : PictureInk.Letters + 1);
                yield return Text(middle, y, words);
            }
        }
    }

    private static PictureMark.Text Text(double x, double y, string words) =>
        new(new PicturePoint(x, y), words, TextAnchor.Middle, PictureInk.Letters);

    private double X(double place) => PictureInk.X(place, _curve.Length);

    private PicturePoint At(double place, double value) => new(X(place), _zero - _scale * Drawn(value));

    private double Drawn(double value) => _curve.IsPositiveDown ? -value : value;
}
