using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Screen.Plotting;

/// <summary>Does what the commands of the Plots view say, and moves the reading line in any view.</summary>
internal static class PlotsKeys
{
    /// <summary>Does what a command of the Plots view says.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">The command.</param>
    /// <param name="key">The key it was reached by; null: another, or the menu.</param>
    internal static ScreenState Change(ScreenState state, CommandName name, KeyName? key)
    {
        PlotOptions plots = state.Preferences.Plots;
        return name switch
        {
            CommandName.MoveReading => Read(state, line => line.Moved(key)),
            CommandName.NextMark => Read(state, line => line.NextMark(right: true)?.Position ?? 0),
            CommandName.PreviousMark => Read(state, line => line.NextMark(right: false)?.Position ?? line.Beam.Model.Length),
            CommandName.Filling => With(state, plots with { IsFilled = !plots.IsFilled }) with
            {
                Notice = plots.Glyphs == PlotGlyphs.HalfBlocks
                    ? new Notice($"Half blocks are always filled; {state.Table.KeyOf(CommandName.Glyphs)} draws in ASCII.")
                    : null,
            },
            CommandName.SagSide => With(state, plots with { IsSagDown = !plots.IsSagDown }),
            CommandName.EnvelopeCurves => WithOtherEnvelope(state, plots),
            CommandName.Glyphs => WithOtherGlyphs(state, plots),
            CommandName.ShearCurve => Toggle(state, Curve.Shear),
            CommandName.MomentCurve => Toggle(state, Curve.Moment),
            CommandName.DeflectionCurve => Toggle(state, Curve.Deflection),
            CommandName.AxialCurve => Toggle(state, Curve.Axial),
            _ => state,
        };
    }

    /// <summary>Puts the reading line at a place; outside the Plots view, what acts there is told.</summary>
    /// <param name="state">The state.</param>
    /// <param name="position">The place [m from the left end].</param>
    internal static ScreenState ReadAt(ScreenState state, double position)
    {
        ScreenState read = Read(state, _ => position);
        return state.View != ScreenView.Plots && ReadingLine.On(read) is ReadingLine line
            ? read with { Notice = new Notice(string.Join(' ', line.Lines(int.MaxValue))) }
            : read;
    }

    private static ScreenState Read(ScreenState state, Func<ReadingLine, double> to) =>
        ReadingLine.On(state) is ReadingLine line ? state with { Reading = to(line) } : state;

    private static ScreenState Toggle(ScreenState state, Curve curve)
    {
        PlotOptions plots = state.Preferences.Plots;
        PlotOptions toggled = plots.Toggled(curve);
        ScreenState after = With(state, toggled);
        if (toggled == plots)
        {
            return after with { Notice = new Notice("One curve stays.") };
        }

        ShownCurves shown = new(state);
        bool isMissed = toggled.Curves.Contains(curve) && shown.Beam is not null && shown[curve] is null;
        return !isMissed ? after : after with
        {
            Notice = new Notice(curve == Curve.Axial
                ? "Nothing acts along this beam: there is no axial force to draw."
                : "Deflection needs a section and a material: none is known.", Role.Warn),
        };
    }

    private static ScreenState WithOtherEnvelope(ScreenState state, PlotOptions plots)
    {
        ScreenState after = With(state, plots with { HasEnvelope = !plots.HasEnvelope });
        bool isMissed = !plots.HasEnvelope && new ShownCurves(after) is { Beam: not null, Envelope: null };
        return !isMissed ? after : after with
        {
            Notice = new Notice(
                $"No envelope here: one combination is all that may happen. {state.Table.KeyOf(CommandName.CasesView)} has more."),
        };
    }

    private static ScreenState WithOtherGlyphs(ScreenState state, PlotOptions plots)
    {
        ScreenState after = With(state, plots.WithOtherGlyphs());
        return state.IsAsciiOnly
            ? after with { Notice = new Notice("This terminal's text is not UTF-8: curves stay in ASCII here.", Role.Warn) }
            : after;
    }

    private static ScreenState With(ScreenState state, PlotOptions plots) =>
        state with { Preferences = state.Preferences with { Plots = plots } };
}
