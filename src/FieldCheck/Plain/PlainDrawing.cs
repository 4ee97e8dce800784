using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Screen;
using FieldCheck.Screen.Plotting;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Plain;

/// <summary>The beam and the curves along it, drawn in ASCII where they are asked for.</summary>
internal static class PlainDrawing
{
    private const int Width = 72;
    private const int PlotRows = 9;

    /// <summary>The beam, its shear and its moment, or the one of them that is named.</summary>
    internal static PlainStep Draw(PlainState state, string text)
    {
        ScreenState form = state.Form;
        return text.Trim().ToLowerInvariant() switch
        {
            _ when form.Settled.Beam is null => state.Say(PlainWords.Outcome(form)),
            "beam" => state.Say([.. Sketch(form)]),
            "" => state.Say([.. Sketch(form), .. Plot(form, Curve.Shear), .. Plot(form, Curve.Moment)]),
            "shear" => state.Say([.. Plot(form, Curve.Shear)]),
            "moment" => state.Say([.. Plot(form, Curve.Moment)]),
            "deflection" => state.Say([.. Plot(form, Curve.Deflection)]),
            "axial" => state.Say([.. Plot(form, Curve.Axial)]),
            _ => state.Say("Draw what? Nothing behind it for all; or beam, shear, moment, deflection, axial."),
        };
    }

    private static ImmutableArray<string> Sketch(ScreenState form) =>
        BeamSketch.Draw(form.Settled, form.CombinationShown, Width, new SketchStyle());

    private static ImmutableArray<string> Plot(ScreenState form, Curve curve)
    {
        Calculation calculation = form.Settled;
        if (calculation is not { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands stands })
        {
            return [];
        }

        if (curve == Curve.Deflection && !beam.Model.HasAbsoluteStiffness)
        {
            return ["The deflection is not known: it needs a section and a material."];
        }

        PlotOptions plots = form.Preferences.Plots;
        BeamResponse response = stands.Combinations[form.CombinationShown].Response;
        PlotCurve plot = PlotCurve.Of(beam, response, curve, plots.IsSagDown);
        return
        [
            plot.Heading,
            .. DiagramPlot.Draw(plot, Width, PlotRows, new PlotStyle(IsFilled: plots.IsFilled)),
            .. DiagramPlot.PeakLines(plot, Width),
        ];
    }
}
