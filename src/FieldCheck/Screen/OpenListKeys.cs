using System.Collections.Immutable;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Screen;

/// <summary>Keys pressed in the list of presets.</summary>
internal static class OpenListKeys
{
    /// <summary>The presets whose names have the words of the filter.</summary>
    /// <param name="list">The list.</param>
    internal static ImmutableArray<Preset> ShownIn(Overlay.OpenList list)
    {
        string[] words = list.Filter.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. (list.Presets ?? []).Where(preset =>
            words.All(word => preset.Name.Contains(word, StringComparison.OrdinalIgnoreCase)))];
    }

    /// <summary>The list with one of its presets chosen, and what comes of that one.</summary>
    /// <param name="state">The state.</param>
    /// <param name="list">The list.</param>
    /// <param name="choice">Which is chosen, counted from 0 among those shown.</param>
    internal static Overlay.OpenList Chosen(ScreenState state, Overlay.OpenList list, int choice)
    {
        ImmutableArray<Preset> shown = ShownIn(list);
        int within = Math.Clamp(choice, 0, Math.Max(shown.Length - 1, 0));
        bool reads = shown.Length > 0 && Read(shown[within]) is BeamFileReading.Opened;
        return list with
        {
            Choice = within,
            Preview = reads ? state.Calculate(((BeamFileReading.Opened)Read(shown[within])).Document) : null,
        };
    }

    internal static ScreenStep Press(ScreenState state, Overlay.OpenList list, KeyStroke stroke) => stroke switch
    {
        KeyStroke.Named { Key: KeyName.Enter } => Open(state, list, asCopy: false),
        KeyStroke.Named { Key: KeyName.Tab } => Open(state, list, asCopy: true),
        KeyStroke.Named { Key: KeyName.Up or KeyName.Down or KeyName.PageUp or KeyName.PageDown } =>
            With(state, Chosen(state, list, OverlayKeys.Moved(list.Choice, ShownIn(list).Length, stroke))),
        _ => OverlayKeys.Typed(list.Filter, stroke) is LineText filter
            ? With(state, Chosen(state, list with { Filter = filter }, 0))
            : state.Step(),
    };

    private static ScreenStep With(ScreenState state, Overlay.OpenList list) => (state with { Overlay = list }).Step();

    private static ScreenStep Open(ScreenState state, Overlay.OpenList list, bool asCopy)
    {
        ImmutableArray<Preset> shown = ShownIn(list);
        string typed = list.Filter.Text.Trim();
        if (shown.IsEmpty)
        {
            return typed.Length > 0 ? state.Step(new Effect.Open(typed)) : state.Step();
        }

        Preset preset = shown[list.Choice];
        BeamOrigin origin = BeamOrigin.OfPreset(preset);
        return Read(preset) switch
        {
            BeamFileReading.Opened opened =>
                FileSteps.Show(state, opened.Document, asCopy ? origin with { Path = null } : origin).Step(),
            BeamFileReading.Refused refused =>
                FileAnswers.OpenRefused(state, new ScreenEvent.OpenRefused(preset.Name, refused.Problems)),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static BeamFileReading Read(Preset preset) => BeamFileText.Read(preset.Text.Name, preset.Text.Text);
}
