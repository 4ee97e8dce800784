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

    private const int Narrowest = 20;
    private const int Widest = 200;
    private const int Lowest = 3;
    private const int Highest = 20;

    /// <summary>The sketch of the beam in so many lines.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 0 or more.</param>
    internal static ImmutableArray<PictureLine> Sketch(ScreenState state, int width, int height) =>
        Drawn(OfBeam(state.Shown, width, height, state.CombinationShown), RoleOf(state), width, height);

    /// <summary>The sketch of a beam, in as many lines as it fits best.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Lines at most.</param>
    /// <param name="combination">Which combination's loads and reactions are shown, counted from 0.</param>
    internal static ImmutableArray<string> OfBeam(Calculation calculation, int width, int height, int combination = 0)
    {
        if (width < Narrowest || height < 1)
        {
            return [];
        }

        ImmutableArray<string> rows = [];
        for (int labels = height > 4 ? 2 : 1; labels >= 0; labels--)
        {
            rows = BeamSketch.Draw(calculation, combination, Math.Min(width, Widest), new SketchStyle(Margin, labels));
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
            ? DiagramPlot.Draw(plot, Math.Min(width, Widest), Math.Min(height, Highest), new PlotStyle(Margin: Margin))
            : [];
        return Drawn(rows, RoleOf(state), width, height);
    }

    /// <summary>The peaks of curves in words.</summary>
    /// <param name="state">The state.</param>
    /// <param name="curves">Which.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 0 or more.</param>
    internal static ImmutableArray<PictureLine> Peaks(
        ScreenState state, ImmutableArray<Curve> curves, int width, int height)
    {
        IEnumerable<string> lines = width < Narrowest
            ? []
            : curves
                .Select(curve => CurveOf(state, curve))
                .OfType<PlotCurve>()
                .SelectMany(plot => DiagramPlot.PeakLines(plot, width));
        return Drawn([.. lines.Take(height)], state.Age == ResultsAge.UpToDate ? Role.Text : Role.Faint, width, height);
    }

    /// <summary>True: the curve can be drawn; deflections need a stiffness.</summary>
    /// <param name="state">The state.</param>
    /// <param name="curve">Which.</param>
    internal static bool Has(ScreenState state, Curve curve) => CurveOf(state, curve) is not null;

    private static PlotCurve? CurveOf(ScreenState state, Curve curve) =>
        state.Shown is { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands stands }
        && (curve != Curve.Deflection || beam.Model.HasAbsoluteStiffness)
            ? PlotCurve.Of(beam, stands.Combinations[state.CombinationShown].Response, curve)
            : null;

    private static Role RoleOf(ScreenState state) =>
        state.Age == ResultsAge.UpToDate ? Role.Accent : Role.Faint;

    private static ImmutableArray<PictureLine> Drawn(ImmutableArray<string> rows, Role role, int width, int height) =>
    [
        .. rows.Take(height).Select(row => LineWriter.Line(row, width, role)),
        .. Enumerable.Repeat(LineWriter.Line("", width), Math.Max(height - rows.Length, 0)),
    ];
}
