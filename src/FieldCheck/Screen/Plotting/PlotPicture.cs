using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet;

namespace FieldCheck.Screen.Plotting;

/// <summary>Draws the beam and the curves along it.</summary>
internal static class PlotPicture
{
    /// <summary>Columns at the left edge, where quantity and unit stand.</summary>
    private const int Margin = 8;

    /// <summary>Lines above which a curve gains nothing.</summary>
    internal const int Highest = 20;

    private const int Narrowest = 20;
    private const int Widest = 200;
    private const int Lowest = 3;

    /// <summary>The sketch of the beam in so many lines.</summary>
    /// <param name="state">The state.</param>
    /// <param name="reading">Where the reading line stands [m from the left end]; null for none.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 0 or more.</param>
    internal static ImmutableArray<PictureLine> Sketch(ScreenState state, double? reading, int width, int height) =>
        Drawn(OfBeam(state.Shown, width, height, state.CombinationShown, reading), RoleOf(state), width, height);

    /// <summary>How many lines the sketch wants: one more where loads push up, from below the beam.</summary>
    /// <param name="state">The state.</param>
    internal static int SketchHeight(ScreenState state)
    {
        const int usual = 4;
        return state.Shown.Beam?.Loads.Any(named => PushesUp(named.Load)) == true ? usual + 1 : usual;
    }

    /// <summary>The sketch of a beam, in as many lines as it fits best.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Lines at most.</param>
    /// <param name="combination">Which combination's loads and reactions are shown, counted from 0.</param>
    /// <param name="reading">Where the reading line stands [m from the left end]; null for none.</param>
    internal static ImmutableArray<string> OfBeam(
        Calculation calculation, int width, int height, int combination = 0, double? reading = null)
    {
        if (width < Narrowest || height < 1)
        {
            return [];
        }

        ImmutableArray<string> rows = [];
        for (int labels = height > 4 ? 2 : 1; labels >= 0; labels--)
        {
            SketchStyle style = new(Margin, labels, reading);
            rows = BeamSketch.Draw(calculation, combination, Math.Min(width, Widest), style);
            if (rows.Length <= height)
            {
                break;
            }
        }

        return rows;
    }

    /// <summary>A curve in so many lines; blank where it cannot be drawn.</summary>
    /// <param name="state">The state.</param>
    /// <param name="plot">The curve; null where it cannot be drawn.</param>
    /// <param name="reading">Where the reading line stands [m from the left end]; null for none.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 0 or more.</param>
    internal static ImmutableArray<PictureLine> Diagram(
        ScreenState state, PlotCurve? plot, double? reading, int width, int height)
    {
        PlotOptions plots = state.Preferences.Plots;
        PlotGlyphs glyphs = state.IsAsciiOnly ? PlotGlyphs.Ascii : plots.Glyphs;
        PlotStyle style = new(glyphs, plots.IsFilled, Margin, reading);
        ImmutableArray<string> rows = plot is not null && width >= Narrowest && height >= Lowest
            ? DiagramPlot.Draw(plot, Math.Min(width, Widest), Math.Min(height, Highest), style)
            : [];
        return Drawn(rows, RoleOf(state), width, height);
    }

    /// <summary>The peaks of curves in words, in so many lines.</summary>
    /// <param name="state">The state.</param>
    /// <param name="curves">The curves.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 0 or more.</param>
    internal static ImmutableArray<PictureLine> Peaks(
        ScreenState state, IEnumerable<PlotCurve> curves, int width, int height)
    {
        Role role = state.Age == ResultsAge.UpToDate ? Role.Text : Role.Faint;
        return Drawn(InWords(curves, width, height), role, width, height);
    }

    /// <summary>How many lines the peaks of curves take in words.</summary>
    /// <param name="curves">The curves.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static int PeakLineCount(IEnumerable<PlotCurve> curves, int width) =>
        InWords(curves, width, int.MaxValue).Length;

    private static ImmutableArray<string> InWords(IEnumerable<PlotCurve> curves, int width, int mostLines) =>
        width < Narrowest ? [] : PeakLines.Of(curves, Math.Min(width, Widest), mostLines);

    private static bool PushesUp(Load load) => load
        is Load.Point { Down: < 0 }
        or Load.Distributed { ActsAlong: false, StartIntensity: < 0 }
        or Load.Distributed { ActsAlong: false, EndIntensity: < 0 };

    private static Role RoleOf(ScreenState state) =>
        state.Age == ResultsAge.UpToDate ? Role.Accent : Role.Faint;

    private static ImmutableArray<PictureLine> Drawn(ImmutableArray<string> rows, Role role, int width, int height) =>
    [
        .. rows.Take(height).Select(row => LineWriter.Line(row, width, role)),
        .. Enumerable.Repeat(LineWriter.Line("", width), Math.Max(height - rows.Length, 0)),
    ];
}
