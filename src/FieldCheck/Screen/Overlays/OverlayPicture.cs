using System.Collections.Immutable;
using FieldCheck.Screen.Combining;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Sections;

namespace FieldCheck.Screen.Overlays;

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
        Overlay.OpenList list => OpenListPicture.Of(list, width, height),
        Overlay.SetList list => SetListPicture.Of(state, list, width, height),
        Overlay.Answers answers => WhatIfPage.Picture(state, answers, width, height),
        Overlay.CatalogueList list => CataloguePicture.Of(state, list, width, height),
        Overlay.Families page => FamilyList.Picture(state, page, width, height),
        Overlay.MissingFile question => OpenListPicture.Of(question.List, width, height),
        Overlay.Results results => AllResults.Picture(state, results, width, height),
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
}
