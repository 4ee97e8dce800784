using System.Collections.Immutable;

namespace FieldCheck.Reporting.Pictures;

/// <summary>Dimensions below a beam: in a chain from point to point, and running from the left end (ISO 129-1).</summary>
/// <param name="length">Length of the beam [m].</param>
internal sealed class DimensionLines(double length)
{
    private const double Gap = 5;
    private const double Tick = 3;
    private const double Origin = 1.7;
    private const int MostRowsOfChain = 3;
    private const int MostRowsOfPlaces = 12;

    private readonly ImmutableArray<PictureMark>.Builder _marks = ImmutableArray.CreateBuilder<PictureMark>();

    /// <summary>What has been drawn.</summary>
    internal ImmutableArray<PictureMark> Marks => _marks.ToImmutable();

    /// <summary>How many dimensions found no room.</summary>
    internal int LeftOut { get; private set; }

    /// <summary>Distances from point to point.</summary>
    /// <param name="top">Where there is room from [pt].</param>
    /// <param name="all">The distances, left to right.</param>
    /// <returns>How far down it all reaches [pt].</returns>
    internal double Chain(double top, IEnumerable<(double From, double To, string Words)> all)
    {
        (double From, double To, string Words)[] parts = [.. all.Select(part => part with { Words = PictureInk.Fitted(part.Words) })];
        LabelRows rows = new(MostRowsOfChain);
        double line = top + Gap;
        DrawLine(line, length, parts.SelectMany(part => new[] { part.From, part.To }).Distinct());
        foreach ((double from, double to, string words) in parts)
        {
            if (rows.Put((X(from) + X(to)) / 2, words) is (int row, double middle))
            {
                Write(middle, line + PictureInk.Row * (1 + row), words);
            }
            else
            {
                LeftOut++;
            }
        }

        return line + PictureInk.Row * (1 + rows.Count) - PictureInk.Letters + 2;
    }

    /// <summary>Distances from the left end, each row on a line of its own that begins with a ring.</summary>
    /// <param name="top">Where there is room from [pt].</param>
    /// <param name="all">The places, left to right.</param>
    /// <returns>How far down it all reaches [pt]; the top where there are none.</returns>
    internal double Running(double top, IEnumerable<(double Place, string Words)> all)
    {
        LabelRows rows = new(MostRowsOfPlaces);
        const double High = Gap + PictureInk.Row + 2;
        ILookup<int?, (double Place, string Words, double Middle)> placed = all
            .Select(one => one with { Words = PictureInk.Fitted(one.Words) })
            .Select(one => (one.Place, one.Words, Put: rows.Put(X(one.Place), one.Words)))
            .ToLookup(one => one.Put?.Row, one => (one.Place, one.Words, one.Put?.Middle ?? 0));
        LeftOut += placed[null].Count();
        for (int row = 0; row < rows.Count; row++)
        {
            double line = top + Gap + row * High;
            DrawLine(line, placed[row].Max(one => one.Place), placed[row].Select(one => one.Place).Where(place => place > 0));
            _marks.Add(new PictureMark.Circle(new(X(0), line), Origin, PictureInk.Thin));
            foreach ((_, string words, double middle) in placed[row])
            {
                Write(middle, line + PictureInk.Row, words);
            }
        }

        return top + rows.Count * High;
    }

    private void DrawLine(double y, double to, IEnumerable<double> ticks)
    {
        _marks.Add(new PictureMark.Line([new(X(0), y), new(X(to), y)], PictureInk.Thin));
        _marks.AddRange(ticks.Select(place => new PictureMark.Line(
            [new(X(place) - Tick / 2, y + Tick), new(X(place) + Tick / 2, y - Tick)], PictureInk.Thin)));
    }

    private void Write(double x, double y, string words) =>
        _marks.Add(new PictureMark.Text(new(x, y), words, TextAnchor.Middle, PictureInk.Letters));

    private double X(double place) => PictureInk.X(place, length);
}
