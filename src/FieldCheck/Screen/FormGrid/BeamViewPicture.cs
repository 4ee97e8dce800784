using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;

namespace FieldCheck.Screen.FormGrid;

/// <summary>Draws the Beam view between title and message line: form, results, sketches.</summary>
/// <remarks>
/// Where there is not room for all, the moment goes first, then the shear, then the sketch of the beam; then the
/// results shrink to their first lines. The form is always there.
/// </remarks>
internal static class BeamViewPicture
{
    private const int WideFrom = 80;
    private const int LeastForm = 9;
    private const int FormBesidePlots = 14;
    private const int SketchHeight = 4;
    private const int PlotHeight = 4;
    private const int TallPlot = 9;
    private const int WidestForm = 110;
    private const string Rule = "| ";

    /// <summary>True: in this size parts of the view are left out.</summary>
    /// <param name="width">Columns of the screen.</param>
    /// <param name="height">Lines of the screen.</param>
    internal static bool IsSmall(int width, int height) => width < 60 || height < 16;

    /// <summary>The view.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Of(ScreenState state, int width, int height) =>
        width >= WideFrom ? Wide(state, width, height) : Narrow(state, width, height);

    private static Picture Wide(ScreenState state, int width, int height)
    {
        ShownCurves curves = new(state);
        BeamViewHeights heights = HeightsBeside(
            height,
            FormLayout.HeightOf(state.Sheet),
            PlotPicture.SketchHeight(state),
            curves.Beam?.Model.HasAbsoluteStiffness == true);
        int form = Math.Min(width - Math.Clamp(width * 45 / 100, 34, 56) - Rule.Length, WidestForm);
        int results = width - form - Rule.Length;
        Picture left = FormPicture.Of(state, form, heights.Form);
        ImmutableArray<PictureLine> right = ResultsPicture.Of(state, results, heights.Form);
        IEnumerable<PictureLine> top = left.Lines.Zip(right, (one, other) =>
            new LineWriter(width).Add(one).Add(Rule, Role.Faint).Add(other).End());
        IEnumerable<PictureLine> spare = Enumerable.Repeat(LineWriter.Line("", width), height);
        return new Picture([.. top.Concat(Below(state, curves, width, heights)).Concat(spare).Take(height)], left.Cursor);
    }

    private static Picture Narrow(ScreenState state, int width, int height)
    {
        BeamViewHeights heights = HeightsStacked(width, height);
        Picture form = FormPicture.Of(state, width, heights.Form);
        return new Picture(
            [.. form.Lines, .. ResultsPicture.Of(state, width, heights.Results), .. Below(state, new ShownCurves(state), width, heights)],
            form.Cursor);
    }

    private static IEnumerable<PictureLine> Below(
        ScreenState state, ShownCurves curves, int width, BeamViewHeights heights)
    {
        PlotCurve[] named = [.. new[] { curves[Curve.Shear], curves[Curve.Moment] }.OfType<PlotCurve>()];
        return
        [
            .. PlotPicture.Sketch(state, null, width, heights.Sketch),
            .. Diagram(Curve.Shear, heights.Shear),
            .. Diagram(Curve.Moment, heights.Moment),
            .. Diagram(Curve.Deflection, heights.Deflection),
            .. PlotPicture.Peaks(state, named, width, heights.Peaks),
        ];

        ImmutableArray<PictureLine> Diagram(Curve curve, int height) => height == 0
            ? []
            : PlotPicture.Diagram(state, curves[curve], null, width, height);
    }

    // What is left over goes to where it is missed most: the form as it was designed, tall curves, every row of the form,
    // the deflection, taller curves yet. What nothing gains by stays blank, at the bottom.
    private static BeamViewHeights HeightsBeside(int height, int wanted, int wantedSketch, bool hasDeflection)
    {
        int sketch = height >= LeastForm + SketchHeight ? wantedSketch : 0;
        int shear = height >= LeastForm + SketchHeight + PlotHeight ? PlotHeight : 0;
        int moment = height >= LeastForm + SketchHeight + 2 * PlotHeight ? PlotHeight : 0;
        int left = height - LeastForm - sketch - shear - moment;
        if (moment == 0)
        {
            return new BeamViewHeights(LeastForm + left, 0, sketch, shear, 0, 0, 0);
        }

        // The line that a larger sketch takes is the form's.
        int least = LeastForm + Math.Min(left, 0);
        left = Math.Max(left, 0);
        int form = least + Take(FormBesidePlots - least);
        int peaks = Take(2);
        int moreMoment = Math.Min((left + 1) / 2, TallPlot - PlotHeight);
        moment += Take(moreMoment);
        shear += Take(TallPlot - PlotHeight);
        sketch += Take(2);
        form += Take(Math.Max(wanted - form, 0));
        int deflection = hasDeflection && left >= TallPlot ? Take(TallPlot) : 0;
        moment += Take(Math.Min((left + 1) / 2, PlotPicture.Highest - moment));
        shear += Take(PlotPicture.Highest - shear);
        return new BeamViewHeights(form, 0, sketch, shear, moment, deflection, peaks);

        int Take(int most)
        {
            int taken = Math.Clamp(most, 0, left);
            left -= taken;
            return taken;
        }
    }

    private static BeamViewHeights HeightsStacked(int width, int height)
    {
        int sketch = width >= 60 && height >= 17 ? SketchHeight : 0;
        int shear = width >= 60 && height >= 17 + SketchHeight + PlotHeight ? PlotHeight : 0;
        int moment = width >= 60 && height >= 17 + SketchHeight + 2 * PlotHeight ? PlotHeight : 0;
        int left = height - sketch - shear - moment;
        int results = left switch
        {
            <= 2 => 0,
            <= 5 => 1,
            <= 8 => 3,
            _ => left * 9 / 20 + 1,
        };
        return new BeamViewHeights(left - results, results, sketch, shear, moment, 0, 0);
    }
}
