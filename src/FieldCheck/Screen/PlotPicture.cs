using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Screen;

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
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 0 or more.</param>
    internal static ImmutableArray<PictureLine> Sketch(ScreenState state, int width, int height) =>
        Drawn(OfBeam(state.Shown, width, height, state.CombinationShown, ReadingOf(state)), RoleOf(state), width, height);

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

    /// <summary>A curve in so many lines; blank where the beam cannot be worked out.</summary>
    /// <param name="state">The state.</param>
    /// <param name="curve">Which.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 0 or more.</param>
    internal static ImmutableArray<PictureLine> Diagram(ScreenState state, Curve curve, int width, int height)
    {
        bool fits = width >= Narrowest && height >= Lowest;
        ImmutableArray<string> rows = fits && CurveOf(state, curve) is PlotCurve plot
            ? DiagramPlot.Draw(plot, Math.Min(width, Widest), Math.Min(height, Highest), StyleOf(state))
            : [];
        return Drawn(rows, RoleOf(state), width, height);
    }

    /// <summary>How many lines the peaks of curves take in words.</summary>
    /// <param name="state">The state.</param>
    /// <param name="curves">Which.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static int PeakLineCount(ScreenState state, ImmutableArray<Curve> curves, int width) =>
        PeakLines(state, curves, width, int.MaxValue).Length;

    /// <summary>The peaks of curves in words.</summary>
    /// <param name="state">The state.</param>
    /// <param name="curves">Which.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 0 or more.</param>
    internal static ImmutableArray<PictureLine> Peaks(
        ScreenState state, ImmutableArray<Curve> curves, int width, int height)
    {
        Role role = state.Age == ResultsAge.UpToDate ? Role.Text : Role.Faint;
        return Drawn(PeakLines(state, curves, width, height), role, width, height);
    }

    /// <summary>The curves of the Plots view that can be drawn, from its top down.</summary>
    /// <param name="state">The state.</param>
    internal static IEnumerable<Curve> CurvesOf(ScreenState state) =>
        state.Preferences.Plots.Curves.Where(curve => Has(state, curve));

    /// <summary>True: the curve can be drawn; deflections need a stiffness, axial forces something that acts along.</summary>
    /// <param name="state">The state.</param>
    /// <param name="curve">Which.</param>
    internal static bool Has(ScreenState state, Curve curve) => CurveOf(state, curve) is not null;

    private static ImmutableArray<string> PeakLines(
        ScreenState state, ImmutableArray<Curve> curves, int width, int mostLines) => width < Narrowest
            ? []
            : DiagramPlot.PeakLines(
                curves.Select(curve => CurveOf(state, curve)).OfType<PlotCurve>(), Math.Min(width, Widest), mostLines);

    private static PlotCurve? CurveOf(ScreenState state, Curve curve)
    {
        if (state.Shown is not { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands stands }
            || (curve == Curve.Deflection && !beam.Model.HasAbsoluteStiffness))
        {
            return null;
        }

        BeamResponse response = stands.Combinations[state.CombinationShown].Response;
        PlotCurve plot = PlotCurve.Of(beam, response, curve, state.Preferences.Plots.IsSagDown);
        return curve == Curve.Axial && plot.Peaks.All(peak => Math.Abs(peak.Value) <= plot.Negligible) ? null : plot;
    }

    private static PlotStyle StyleOf(ScreenState state)
    {
        PlotOptions plots = state.Preferences.Plots;
        PlotGlyphs glyphs = state.IsAsciiOnly ? PlotGlyphs.Ascii : plots.Glyphs;
        return new PlotStyle(glyphs, plots.IsFilled, Margin, ReadingOf(state));
    }

    private static double? ReadingOf(ScreenState state) =>
        state.View == ScreenView.Plots ? ReadingLine.On(state)?.Position : null;

    private static Role RoleOf(ScreenState state) =>
        state.Age == ResultsAge.UpToDate ? Role.Accent : Role.Faint;

    private static ImmutableArray<PictureLine> Drawn(ImmutableArray<string> rows, Role role, int width, int height) =>
    [
        .. rows.Take(height).Select(row => LineWriter.Line(row, width, role)),
        .. Enumerable.Repeat(LineWriter.Line("", width), Math.Max(height - rows.Length, 0)),
    ];
}
