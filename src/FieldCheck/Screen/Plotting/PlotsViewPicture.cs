using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen.Plotting;

/// <summary>Draws the Plots view between title and message line: the beam and its curves, large, and what is read off.</summary>
internal static class PlotsViewPicture
{
    private const int Narrowest = 20;
    private const int LeastCurve = 4;
    private const int SketchFrom = 14;
    private const int PeaksFrom = 16;
    private const int MostPeaks = 5;
    private const int CurvesFrom = 6;
    private const int MostReadings = 2;
    private const string More = " ...";

    /// <summary>The view; in a low window the curves that come first. The cursor stands on the reading line.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Of(ScreenState state, int width, int height)
    {
        ShownCurves shown = new(state);
        ImmutableArray<PictureLine> lines;
        int y = -1;
        if (ReadingLine.On(state, shown) is ReadingLine reading)
        {
            lines = ShownInfluence.Of(state) is ShownInfluence influence
                ? Influence(state, influence, reading, width, height)
                : Lines(state, shown, reading, width, height);
            y = lines.ToList().FindIndex(line => ColumnIn(line) >= 0);
        }
        else
        {
            lines = ResultsPicture.Of(state, width, height);
        }

        return new Picture(lines, y >= 0 ? (ColumnIn(lines[y]), y) : (0, Math.Max(lines.Length - 1, 0)));
    }

    // The column of the reading line, which no other sign of the drawings is.
    private static int ColumnIn(PictureLine line) => line.ToString().AsSpan().IndexOfAny('!', '│');

    private static ImmutableArray<PictureLine> Lines(
        ScreenState state, ShownCurves shown, ReadingLine line, int width, int height)
    {
        if (height < CurvesFrom)
        {
            return Filled(Foot(state, shown, line, width, height), width, height);
        }

        ImmutableArray<PictureLine> foot = CutShort(
            [.. Foot(state, shown, line, width, MostReadings)], Math.Max(shown.Envelope is null ? height / 4 : height / 3, 1), width);
        ImmutableArray<PlotCurve> chosen = [.. shown.Chosen.Select(curve => shown[curve]!)];
        int sketch = height >= SketchFrom ? PlotPicture.SketchHeight(state) : 0;
        int room = height - foot.Length - sketch;
        ImmutableArray<PlotCurve> curves = [.. chosen.Take(Math.Max(room / LeastCurve, 1))];
        int free = Math.Min(room - LeastCurve * curves.Length, MostPeaks);
        int peaks = free > 0 && height >= PeaksFrom ? Math.Min(free, PlotPicture.PeakLineCount(curves, width)) : 0;
        room -= peaks;
        room = Math.Min(room, Math.Max(curves.Length, 1) * PlotPicture.Highest);
        IEnumerable<PictureLine> plots = curves.IsEmpty
            ? Nothing(state, width, room)
            : curves.SelectMany((curve, index) => PlotPicture.Diagram(
                state, curve, line.Position, width, room * (index + 1) / curves.Length - room * index / curves.Length));
        IEnumerable<PictureLine> all =
        [
            .. PlotPicture.Sketch(state, line.Position, width, sketch),
            .. plots,
            .. PlotPicture.Peaks(state, curves, width, peaks),
            .. foot,
        ];
        return Filled(all, width, height);
    }

    private static ImmutableArray<PictureLine> Influence(
        ScreenState state, ShownInfluence influence, ReadingLine line, int width, int height)
    {
        PictureLine[] foot =
        [
            .. influence.Lines(line.Position, Math.Max(width, Narrowest)).Select(text => LineWriter.Line(text, width)),
            LineWriter.Line($"Esc: back to the curves.   {state.Table.KeyOf(CommandName.InfluenceLine)}: another", width, Role.Faint),
        ];
        foot = foot[..Math.Min(foot.Length, Math.Max(height / 3, 1))];
        int sketch = height >= SketchFrom ? PlotPicture.SketchHeight(state) : 0;
        int room = height - foot.Length - sketch;
        int peaks = room > LeastCurve ? Math.Min(room - LeastCurve, Math.Min(PlotPicture.PeakLineCount([influence.Curve], width), MostPeaks)) : 0;
        return Filled(
            [
                .. PlotPicture.Sketch(state, line.Position, width, sketch),
                .. PlotPicture.Diagram(state, influence.Curve, line.Position, width, Math.Min(room - peaks, PlotPicture.Highest)),
                .. PlotPicture.Peaks(state, [influence.Curve], width, peaks),
                .. foot,
            ],
            width,
            height);
    }

    private static ImmutableArray<PictureLine> Filled(IEnumerable<PictureLine> lines, int width, int height) =>
        [.. lines.Concat(Enumerable.Repeat(LineWriter.Line("", width), height)).Take(height)];

    // What has no room is not left out in silence.
    private static ImmutableArray<PictureLine> CutShort(ImmutableArray<PictureLine> lines, int most, int width) =>
        lines.Length <= most
            ? lines
            : [.. lines.Take(most - 1), LineWriter.Line(TextColumns.Cut(lines[most - 1].ToString().TrimEnd(), width - More.Length) + More, width)];

    private static IEnumerable<PictureLine> Foot(
        ScreenState state, ShownCurves shown, ReadingLine line, int width, int readings)
    {
        string tab = state.Table.KeyOf(CommandName.NextMark);
        return
        [
            .. line.Lines(Math.Max(width, Narrowest)).Take(readings).Select(text => LineWriter.Line(text, width)),
            .. Round(state, shown, line, width),
            LineWriter.Line(line.MarksInWords(tab), width, Role.Faint),
        ];
    }

    // Which line is which, then what may be at the reading line.
    private static IEnumerable<PictureLine> Round(ScreenState state, ShownCurves shown, ReadingLine line, int width)
    {
        if (shown.Envelope is not Envelope envelope)
        {
            return [];
        }

        string legend = PlotBand.Legend(line.Beam, envelope, state.CombinationShown);
        return
        [
            LineWriter.Line(TextColumns.FitWithMark(legend, width), width, Role.Faint),
            .. PlaceReadout.Band(line.Beam, envelope, shown.Chosen, line.Position, Math.Max(width, Narrowest))
                .Select(text => LineWriter.Line(text, width)),
        ];
    }

    private static ImmutableArray<PictureLine> Nothing(ScreenState state, int width, int height)
    {
        string words = $"None of the curves that are shown can be drawn. {state.Table.KeyOf(CommandName.MomentCurve)} shows the moment.";
        return Filled([LineWriter.Line(words, width)], width, height);
    }
}
