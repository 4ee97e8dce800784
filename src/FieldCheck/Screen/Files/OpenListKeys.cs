using System.Collections.Immutable;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Screen.Files;

/// <summary>Keys pressed in the list of beams to open.</summary>
internal static class OpenListKeys
{
    /// <summary>The beams whose names have the words of the filter, wherever and in whatever order.</summary>
    /// <param name="list">The list.</param>
    internal static ImmutableArray<BeamChoice> ShownIn(Overlay.OpenList list)
    {
        string[] words = list.Filter.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. (list.Found?.Choices ?? []).Where(choice =>
            words.All(word => choice.Name.Contains(word, StringComparison.OrdinalIgnoreCase)))];
    }

    /// <summary>What is typed as the path of a file; null where beams are shown, or it is none.</summary>
    /// <param name="list">The list.</param>
    internal static string? PathIn(Overlay.OpenList list)
    {
        string typed = list.Filter.Text.Trim();
        bool isPath = typed.AsSpan().ContainsAny('/', '\\') || typed.EndsWith(".toml", StringComparison.OrdinalIgnoreCase);
        return list.Found is not null && list.Chosen is null && isPath ? typed : null;
    }

    /// <summary>The list with the beam that was chosen, while it is shown; else with the first shown.</summary>
    /// <param name="state">The state.</param>
    /// <param name="list">The list.</param>
    internal static Overlay.OpenList Shown(ScreenState state, Overlay.OpenList list)
    {
        ImmutableArray<BeamChoice> shown = ShownIn(list);
        return Chosen(state, list, shown.FirstOrDefault(choice => IsChosen(list, choice)) ?? shown.FirstOrDefault());
    }

    /// <summary>True: it is the one that Enter opens.</summary>
    /// <param name="list">The list.</param>
    /// <param name="choice">The beam.</param>
    internal static bool IsChosen(Overlay.OpenList list, BeamChoice choice) => ReferenceEquals(choice, list.Chosen);

    internal static ScreenStep Press(ScreenState state, Overlay.OpenList list, KeyStroke stroke) => stroke switch
    {
        KeyStroke.Named { Key: KeyName.Enter } => Open(state, list, asCopy: false),
        KeyStroke.Named { Key: KeyName.Tab } => Open(state, list, asCopy: true),
        KeyStroke.Named { Key: KeyName.Up or KeyName.Down or KeyName.PageUp or KeyName.PageDown } =>
            With(state, Moved(state, list, stroke)),
        _ => OverlayKeys.Typed(list.Filter, stroke) is LineText filter
            ? With(state, Shown(state, list with { Filter = filter }))
            : state.Step(),
    };

    private static ScreenStep With(ScreenState state, Overlay.OpenList list) => (state with { Overlay = list }).Step();

    private static Overlay.OpenList Moved(ScreenState state, Overlay.OpenList list, KeyStroke stroke)
    {
        ImmutableArray<BeamChoice> shown = ShownIn(list);
        int index = shown.TakeWhile(choice => !IsChosen(list, choice)).Count();
        return shown.IsEmpty ? list : Chosen(state, list, shown[OverlayKeys.Moved(index, shown.Length, stroke)]);
    }

    // Calculated once a choice: typing that leaves it chosen costs nothing.
    private static Overlay.OpenList Chosen(ScreenState state, Overlay.OpenList list, BeamChoice? choice) =>
        ReferenceEquals(choice, list.Chosen)
            ? list
            : list with
            {
                Chosen = choice,
                Preview = choice?.Reading is BeamFileReading.Opened opened ? state.Calculate(opened.Document) : null,
            };

    /// <summary>Opens the beam chosen, or the file whose path is typed; nothing where there is neither.</summary>
    /// <param name="state">The state.</param>
    /// <param name="list">The list.</param>
    /// <param name="asCopy">True: as a copy, which saving asks a name for.</param>
    internal static ScreenStep Open(ScreenState state, Overlay.OpenList list, bool asCopy) => list.Chosen switch
    {
        // What lies in a file may have changed since the list was made, so it is read anew.
        BeamChoice { Path: string path } choice => state.Step(new Effect.Open(path, asCopy ? OpenAs.Copy : choice.As)),
        BeamChoice { Reading: BeamFileReading.Opened shipped } choice => FileSteps
            .Show(state, shipped.Document, OriginOf(choice, shipped).As(asCopy ? OpenAs.Copy : OpenAs.Pattern))
            .Step(new Effect.Remember(choice.Name, IsFile: false)),
        _ when PathIn(list) is string path => state.Step(new Effect.Open(path, asCopy ? OpenAs.Copy : OpenAs.File)),
        _ => state.Step(),
    };

    private static BeamOrigin OriginOf(BeamChoice choice, BeamFileReading.Opened shipped) =>
        new(choice.Name, null, shipped.Origin);
}
