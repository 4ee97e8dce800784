using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Screen;

/// <summary>Draws what fills the screen over a view: help, the list of presets, keys without a column.</summary>
internal static class OverlayPicture
{
    private const int WidestKeys = 22;

    /// <summary>The picture; null where the overlay leaves the view to be seen.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture? Of(ScreenState state, int width, int height) => state.Overlay switch
    {
        Overlay.Help help => Help(state, help, width, height),
        Overlay.OpenList list => OpenList(list, width, height),
        Overlay.Settings settings => SettingsPicture.Of(state, settings, width, height),
        Overlay.Details details => Details(state, details, width, height),
        _ => null,
    };

    private static Picture Help(ScreenState state, Overlay.Help help, int width, int height)
    {
        ImmutableArray<HelpLine> lines = HelpLines.Of(state.Table, state.View, help.Filter.Text);
        int keys = Math.Min(WidestKeys, width / 4);
        return ListPicture.Of(
            $"Help   type to search: {help.Filter.Text}",
            [.. lines.Select(line => line.Command is null && line.Keys.Length == 0
                ? line.Words
                : $"{TextColumns.FitWithMark(line.Keys, keys)} {line.Words}")],
            help.Choice,
            ($"Help   type to search: {help.Filter.Before}", ""),
            [],
            width,
            height);
    }

    private static Picture OpenList(Overlay.OpenList list, int width, int height)
    {
        ImmutableArray<Preset> shown = OpenListKeys.ShownIn(list);
        string count = list.Presets is ImmutableArray<Preset> all
            ? $"{shown.Length} of {all.Length} shown"
            : "looking...";
        string before = $"Open   type to search: {list.Filter.Before}";
        string heading = $"Open   type to search: {list.Filter.Text}   {count}";
        ImmutableArray<string> lines = shown.IsEmpty
            ? [list.Filter.Text.Length == 0
                ? "No presets were found."
                : "No preset is called so. Enter opens a file of this name."]
            : [.. shown.Select(preset => $"{TextColumns.FitWithMark(preset.Name, 36)}  {Words(preset.Place)}")];
        return ListPicture.Of(heading, lines, list.Choice, (before, ""), Preview(list, width), width, height);
    }

    private static ImmutableArray<string> Preview(Overlay.OpenList list, int width)
    {
        if (list.Preview is not { Beam: not null } preview)
        {
            return [];
        }

        string asks = preview.Document.Ask.Count == 0 ? "" : $"   asks for {preview.Document.Ask.Count} of its cells";
        string length = preview.Beam.Display.Say(preview.Beam.Model.Length, QuantityKind.Length);
        return
        [
            $"{preview.Document.Title ?? ""}   {length}, {Count(preview.Document.Supports.Count, "support")}, "
                + $"{Count(preview.Document.Loads.Count, "load")}{asks}",
            .. PlotPicture.OfBeam(preview, width, 4),
        ];
    }

    private static string Count(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    private static Picture Details(ScreenState state, Overlay.Details details, int width, int height)
    {
        ImmutableArray<DetailLine> lines = DetailLines.Of(state.Document, details.Page);
        int choice = Math.Min(details.Choice, lines.Length - 1);
        string title = details.Page.Block is { } block
            ? $"More of {FormWords.Row(state.Sheet, block, details.Page.Row)}"
            : "More of the beam";
        const int words = 34;
        string before = $"> {TextColumns.FitWithMark(lines[choice].Words, words)} [{details.Draft?.Before ?? ""}";
        return ListPicture.Of(
            title,
            [.. lines.Select((line, index) => index == choice
                ? $"{TextColumns.FitWithMark(line.Words, words)} [{details.Draft?.Text ?? line.Text ?? ""}]"
                : $"{TextColumns.FitWithMark(line.Words, words)}  {line.Text ?? "-"}")],
            choice,
            (null, before),
            [],
            width,
            height);
    }

    private static string Words(PresetPlace place) => place switch
    {
        PresetPlace.BuiltIn => "built in",
        PresetPlace.Personal => "your presets",
        _ => "site folder",
    };
}
