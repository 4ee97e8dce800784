using System.Collections.Immutable;
using FieldCheck.Reporting;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Sections;

/// <summary>Draws the list that a cell of the Section view is chosen from over the whole of a view.</summary>
internal static class CataloguePicture
{
    /// <summary>The picture.</summary>
    /// <param name="state">The state.</param>
    /// <param name="list">The list.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Of(ScreenState state, Overlay.CatalogueList list, int width, int height)
    {
        ImmutableArray<CatalogueChoice> shown = CatalogueChoices.Of(state, list);
        ImmutableArray<string> lines = shown.IsEmpty
            ? [list switch
            {
                { Catalogue: null, Passing: null } => "looking...",
                { Passing.Passing.IsEmpty: true } => "None of them would do.",
                _ => "Nothing has these words.",
            }]
            : [.. shown.Select(choice => TextSafety.ForTerminal(choice.Line))];
        ImmutableArray<string> below = shown.ElementAtOrDefault(list.Choice) is CatalogueChoice chosen
            ? [.. Limits(state, list, width)
                .Concat(chosen.About.SelectMany(line => TextColumns.Wrap(line, width))).Take(Math.Max(height / 2 - 1, 0))]
            : [.. Limits(state, list, width)];
        string what = list.Passing is null ? Heading(list.Place.Column) : "Sections that would do";
        return ListPicture.Of(
            $"{what}   type to search: {list.Filter.Text}",
            lines,
            list.Choice,
            ($"{what}   type to search: {list.Filter.Before}", ""),
            below,
            width,
            height);
    }

    /// <summary>What the message line says.</summary>
    /// <param name="state">The state.</param>
    /// <param name="list">The list.</param>
    internal static Notice Message(ScreenState state, Overlay.CatalogueList list) => new(list switch
    {
        { Passing: WouldDo found } => string.Join(' ', [$"{WouldDoWords.Count(found)}.", .. About(state, found)]),
        _ => OfCell(state, list),
    });

    /// <summary>What was left out of the sections that would do, and what nobody looked at; may be empty.</summary>
    /// <param name="state">The state.</param>
    /// <param name="found">What was found.</param>
    /// <param name="isAsked">True: the families were asked for by name, so that none was left out.</param>
    internal static ImmutableArray<string> About(ScreenState state, WouldDo found, bool isAsked = false) => state.Settled.WhatIf is WhatIf whatIf
        ?
        [
            .. new[]
            {
                WouldDoWords.Open(found),
                isAsked ? "" : WouldDoWords.LeftOut(found, whatIf.Families, whatIf.Material, whatIf.Family),
                WouldDoWords.Made(found, whatIf),
            }.Where(text => text.Length > 0),
        ]
        : [];

    // What would do is said by what it would, and what no one looked at.
    private static IEnumerable<string> Limits(ScreenState state, Overlay.CatalogueList list, int width) =>
        list.Passing is null || state.Settled.Checks.All.IsEmpty
            ? []
            :
            [
                .. TextColumns.Wrap(PlainAscii.Of(JudgedByWords.Of(state.Settled.Checks)), width),
                TextColumns.CutWithMark(PlainAscii.Of(JudgedByWords.NotChecked(state.Settled.Checks)), width),
            ];

    private static string OfCell(ScreenState state, Overlay.CatalogueList list) => list.Place.Column switch
    {
        FormColumn.Grade => "Grade not known? Type unknown, timber or steel: the lowest of each family.",
        FormColumn.Factors => "Enter puts it beside those there are; one of the same name gives way.",
        FormColumn.Rules => "Enter takes them: strengths are judged by these rules.",
        _ => $"Enter takes it for {FormWords.Row(state.Sheet, list.Place.Block, list.Place.Row)}.",
    };

    private static string Heading(FormColumn column) => column switch
    {
        FormColumn.Grade => "Grades",
        FormColumn.Factors => "Factors of timber",
        FormColumn.Rules => "Rules",
        _ => "Shapes",
    };
}
