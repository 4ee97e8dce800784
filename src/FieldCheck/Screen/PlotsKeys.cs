using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Screen;

/// <summary>Keys pressed in the Plots view, and the reading line in any view.</summary>
internal static class PlotsKeys
{
    /// <summary>What a key does in the Plots view; what can begin a place opens the line to type it in.</summary>
    /// <param name="state">The state, nothing lying over the view.</param>
    /// <param name="stroke">The key.</param>
    internal static ScreenStep Press(ScreenState state, KeyStroke stroke) => stroke switch
    {
        _ when state.Table.Of(stroke, ScreenView.Plots) is ScreenCommand command =>
            Commands.Run(state, command.Name, stroke),
        KeyStroke.Text text when text.Grapheme != " " => AskPlace(state, LineText.Of(text.Grapheme)).Step(),
        KeyStroke.Paste when OverlayKeys.Typed(LineText.Empty, stroke) is LineText line => AskPlace(state, line).Step(),
        _ => state.Step(),
    };

    /// <summary>What a key does in the line in which a place is typed.</summary>
    internal static ScreenStep Press(ScreenState state, Overlay.PlaceLine line, KeyStroke stroke)
    {
        if (stroke is KeyStroke.Named { Key: KeyName.Enter })
        {
            return Jump(state, line).Step();
        }

        return OverlayKeys.Typed(line.Text, stroke) is LineText typed
            ? (state with { Overlay = new Overlay.PlaceLine(typed) }).Step()
            : state.Step();
    }

    /// <summary>Opens the line in which a place is typed, where there is something to read off.</summary>
    /// <param name="state">The state.</param>
    /// <param name="begun">What stands in it already.</param>
    internal static ScreenState AskPlace(ScreenState state, LineText begun) => new ShownCurves(state).Beam is null
        ? state with { Notice = new Notice("There is nothing to read off yet: see the results.", Role.Warn) }
        : state with { Overlay = new Overlay.PlaceLine(begun) };

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
            CommandName.Glyphs => WithOtherGlyphs(state, plots),
            CommandName.ShearCurve => Toggle(state, Curve.Shear),
            CommandName.MomentCurve => Toggle(state, Curve.Moment),
            CommandName.DeflectionCurve => Toggle(state, Curve.Deflection),
            CommandName.AxialCurve => Toggle(state, Curve.Axial),
            _ => state,
        };
    }

    private static ScreenState Read(ScreenState state, Func<ReadingLine, double> to) =>
        ReadingLine.On(state) is ReadingLine line ? state with { Reading = to(line) } : state;

    private static ScreenState Jump(ScreenState state, Overlay.PlaceLine asked)
    {
        ScreenState closed = state with { Overlay = null };
        if (ReadingLine.On(state) is not ReadingLine line || asked.Text.Text.Trim().Length == 0)
        {
            return closed;
        }

        switch (line.Find(asked.Text.Text))
        {
            case Reading<double>.Accepted place:
                ScreenState read = closed with { Reading = place.Value };
                return state.View == ScreenView.Plots
                    ? read
                    : read with { Notice = new Notice(string.Join(' ', (line with { Position = place.Value }).Lines(int.MaxValue))) };
            case Reading<double>.Refused refused:
                return state with { Notice = new Notice($"{asked.Text.Text.Trim()}: {refused.Text}", Role.Warn) };
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

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
