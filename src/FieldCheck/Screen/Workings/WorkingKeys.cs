using System.Collections.Immutable;
using FieldCheck.Reporting.Tables;
using FieldCheck.Reporting.Working;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Screen.Workings;

/// <summary>Does what the commands of the Working view say.</summary>
internal static class WorkingKeys
{
    /// <summary>Does what a command of the Working view says.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">The command.</param>
    /// <param name="key">The key it was reached by; null: another, or the menu.</param>
    internal static ScreenState Change(ScreenState state, CommandName name, KeyName? key)
    {
        WorkingOptions options = state.Preferences.Working;
        return name switch
        {
            CommandName.Scroll => Scrolled(state, key),
            CommandName.NextPoint => ToPoint(state, right: true),
            CommandName.PreviousPoint => ToPoint(state, right: false),
            CommandName.MomentsAbout => PlaceKeys.Ask(state, LineText.Empty, PlaceUse.MomentsAbout),
            CommandName.StepNames => With(state, options with { HasStepNames = !options.HasStepNames }),
            CommandName.ShortForm => With(state, options with { IsShort = !options.IsShort }),
            _ => state,
        };
    }

    /// <summary>Takes moments about a point.</summary>
    /// <param name="state">The state.</param>
    /// <param name="point">The point; null: the one that leaves fewest unknowns.</param>
    internal static ScreenState TakeAbout(ScreenState state, MomentPoint? point) => state with
    {
        About = point,
        Notice = new Notice(point is not null && state.Shown.Beam is BuiltBeam beam
            ? $"Moments are taken about {PlaceReadout.Place(beam, point.On(beam))}."
            : "Moments are taken about the point that leaves fewest unknowns."),
    };

    /// <summary>The first line that is shown where that is possible: else the last screenful.</summary>
    /// <param name="state">The state.</param>
    /// <param name="wanted">The line wanted uppermost, counted from 0.</param>
    internal static int Top(ScreenState state, int wanted)
    {
        int most = state.Worked.Lines(state.Size.Width).Length - ScreenPicture.BodyHeight(state.Size.Height);
        return Math.Clamp(wanted, 0, Math.Max(most, 0));
    }

    /// <summary>The state in a window of another size: about the same part of the working is uppermost.</summary>
    /// <param name="state">The state.</param>
    /// <param name="size">Columns and lines of the window.</param>
    internal static ScreenState Resized(ScreenState state, (int Width, int Height) size)
    {
        ScreenState resized = state with { Size = size };
        if (state.View != ScreenView.Working || state.WorkingTop == 0 || size.Width == state.Size.Width)
        {
            return resized;
        }

        int before = state.Worked.Lines(state.Size.Width).Length;
        int after = state.Worked.Lines(size.Width).Length;
        return resized with { WorkingTop = (int)((long)Top(state, state.WorkingTop) * after / Math.Max(before, 1)) };
    }

    private static ScreenState Scrolled(ScreenState state, KeyName? key)
    {
        // One line of the screenful before stays to be seen.
        int page = Math.Max(ScreenPicture.BodyHeight(state.Size.Height) - 1, 1);
        int top = Top(state, state.WorkingTop);
        return state with
        {
            WorkingTop = Top(state, key switch
            {
                KeyName.Up => top - 1,
                KeyName.Down => top + 1,
                KeyName.PageUp => top - page,
                KeyName.PageDown => top + page,
                KeyName.Home => 0,
                KeyName.End => int.MaxValue,
                _ => top,
            }),
        };
    }

    private static ScreenState ToPoint(ScreenState state, bool right) => new ShownCurves(state).Beam is BuiltBeam beam
        ? TakeAbout(state, MomentPoint.Next(beam, state.About, right))
        : PlaceKeys.Ask(state, LineText.Empty, PlaceUse.MomentsAbout);

    private static ScreenState With(ScreenState state, WorkingOptions options)
    {
        ScreenState after = state with { Preferences = state.Preferences with { Working = options } };
        after = after with { Worked = ShownWorking.Of(state.Worked, after) };
        return after with { WorkingTop = Kept(state, after), Notice = new Notice(WorkingWords.Form(options)) };
    }

    // The uppermost line that both forms have stays uppermost.
    private static int Kept(ScreenState before, ScreenState after)
    {
        int width = before.Size.Width;
        ImmutableArray<WorkingLine> old = before.Worked.Lines(width);
        Dictionary<(string, int), int> found = [];
        foreach ((int index, string text, int turn) in Numbered(after.Worked.Lines(width)))
        {
            found[(text, turn)] = index;
        }

        int top = Top(before, before.WorkingTop);
        return top == 0 ? 0 : Numbered(old)
            .Where(line => line.Index >= top && found.ContainsKey((line.Text, line.Turn)))
            .Select(line => found[(line.Text, line.Turn)])
            .FirstOrDefault(top);
    }

    // Each line that is not empty, and how many of the same text come before it.
    private static IEnumerable<(int Index, string Text, int Turn)> Numbered(ImmutableArray<WorkingLine> lines)
    {
        Dictionary<string, int> turns = [];
        for (int index = 0; index < lines.Length; index++)
        {
            string text = lines[index].Text;
            if (text.Length > 0)
            {
                turns[text] = turns.GetValueOrDefault(text) + 1;
                yield return (index, text, turns[text]);
            }
        }
    }
}
