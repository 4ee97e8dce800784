using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Workings;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Plotting;

/// <summary>Places typed over a view: to read off there, or to take moments about.</summary>
internal static class PlaceKeys
{
    /// <summary>What a key does in a view where a place can be typed; what can begin one opens the line for it.</summary>
    /// <param name="state">The state, nothing lying over the view.</param>
    /// <param name="stroke">The key.</param>
    /// <param name="use">What a place typed there is for.</param>
    internal static ScreenStep Press(ScreenState state, KeyStroke stroke, PlaceUse use) => stroke switch
    {
        _ when state.Table.Of(stroke, state.View) is ScreenCommand command =>
            Commands.Run(state, command.Name, stroke),
        KeyStroke.Text text when text.Grapheme != " " => Ask(state, LineText.Of(text.Grapheme), use).Step(),
        KeyStroke.Paste when OverlayKeys.Typed(LineText.Empty, stroke) is LineText line => Ask(state, line, use).Step(),
        _ => state.Step(),
    };

    /// <summary>Opens the line in which a place is typed, where there is a beam that stands.</summary>
    /// <param name="state">The state.</param>
    /// <param name="begun">What stands in it already.</param>
    /// <param name="use">What the place is for.</param>
    internal static ScreenState Ask(ScreenState state, LineText begun, PlaceUse use) => new ShownCurves(state).Beam is null
        ? state with
        {
            Notice = new Notice(
                $"There is nothing to {(use == PlaceUse.MomentsAbout ? "work" : "read off")} yet: see the results.", Role.Warn),
        }
        : state with { Overlay = new Overlay.PlaceLine(begun, use) };

    /// <summary>What a key does in the line in which a place is typed.</summary>
    internal static ScreenStep Press(ScreenState state, Overlay.PlaceLine line, KeyStroke stroke)
    {
        if (stroke is KeyStroke.Named { Key: KeyName.Enter })
        {
            return Take(state, line).Step();
        }

        return OverlayKeys.Typed(line.Text, stroke) is LineText typed
            ? (state with { Overlay = line with { Text = typed } }).Step()
            : state.Step();
    }

    /// <summary>Finds a place as it was typed; a number without unit has the unit that lengths are shown in.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="text">As typed.</param>
    internal static Reading<double> Find(BuiltBeam beam, string text) => BeamPlaces.Find(
        beam, CellShorthand.ExpandPlace(text, CellUnits.Of(QuantityKind.Length, beam.Display.System)));

    private static ScreenState Take(ScreenState state, Overlay.PlaceLine asked)
    {
        ScreenState closed = state with { Overlay = null };
        string text = asked.Text.Text.Trim();
        if (asked.Use == PlaceUse.Influence)
        {
            return InfluenceKeys.Take(state, closed, text);
        }

        if (text.Length == 0 || new ShownCurves(state).Beam is not BuiltBeam beam)
        {
            return closed;
        }

        return Find(beam, text) switch
        {
            Reading<double>.Refused refused => state with { Notice = new Notice($"{text}: {refused.Text}", Role.Warn) },
            Reading<double>.Accepted place when asked.Use == PlaceUse.ReadOff => PlotsKeys.ReadAt(closed, place.Value),
            Reading<double>.Accepted place => WorkingKeys.TakeAbout(closed, MomentPoint.At(beam, place.Value)),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
