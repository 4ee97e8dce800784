using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Sections;

/// <summary>How stiff a prop stands that would be put under the beam: typed on the page of what it would take.</summary>
internal static class PropLine
{
    /// <summary>What is asked for.</summary>
    internal const string Asks = "Type how stiff the prop stands, as 5 kN/mm or 30 kip/in; nothing and Enter: rigid.";

    private const string Wanted = "a stiffness, force per length the prop gives way, as 5 kN/mm or 30 kip/in; nothing: rigid";
    private const string NotStiff = "a prop that carries is stiffer than zero";

    /// <summary>What a key does to the line; null: nothing.</summary>
    /// <param name="state">The state.</param>
    /// <param name="page">The page.</param>
    /// <param name="stroke">The key.</param>
    internal static ScreenState? Press(ScreenState state, Overlay.Answers page, KeyStroke stroke) => (stroke, page.Draft) switch
    {
        (KeyStroke.Named { Key: KeyName.Enter }, LineText draft) => Take(state, page, draft.Text.Trim()),
        (KeyStroke.Named { Key: KeyName.Enter }, null) => With(state, page, LineText.Of(page.Stiffness)),
        (_, null) when state.Table.Is(stroke, CommandName.EditCell) => With(state, page, LineText.Of(page.Stiffness)),
        (KeyStroke.Text or KeyStroke.Paste, _) when OverlayKeys.Typed(page.Draft ?? LineText.Empty, stroke) is LineText typed =>
            With(state, page, typed),
        (KeyStroke.Named, LineText draft) => With(state, page, OverlayKeys.Typed(draft, stroke) ?? draft),
        _ => null,
    };

    /// <summary>What a text reads as, or what is wrong with it.</summary>
    /// <param name="state">The state.</param>
    /// <param name="text">As typed.</param>
    internal static string ReadBackOf(ScreenState state, string text) => text.Trim().Length == 0
        ? "Rigid: it does not give way."
        : Read(state, text) switch
        {
            Reading<Quantity>.Accepted { Value.Value: > 0 } read => ReadBack.Say(
                Expanded(state, text), read.Value, QuantityKind.Stiffness, new DisplayUnits(state.Document.Units)),
            _ => $"Wanted: {Wanted}.",
        };

    /// <summary>The stiffness that a text gives, null where it is rigid; or why it gives none.</summary>
    /// <param name="state">The state.</param>
    /// <param name="text">As typed; empty: rigid.</param>
    internal static (double? Stiffness, string? Why) Find(ScreenState state, string text) =>
        (text.Length == 0 ? null : Read(state, text)) switch
        {
            null => (null, null),
            Reading<Quantity>.Accepted { Value.Value: <= 0 } => (null, NotStiff),
            Reading<Quantity>.Accepted read => (read.Value.Value, null),
            Reading<Quantity>.Refused refused => (null, $"{refused.Text}; wanted: {Wanted}"),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static ScreenState Take(ScreenState state, Overlay.Answers page, string text) => Find(state, text) switch
    {
        { Why: string why } => Refused(state, text, why),
        { Stiffness: var stiffness } => Answered(state, page, text, stiffness),
    };

    private static ScreenState Answered(ScreenState state, Overlay.Answers page, string text, double? stiffness) => state with
    {
        Overlay = page with { Props = WhatIfAnswers.Props(state.Settled, stiffness), Stiffness = text, Draft = null },
    };

    private static ScreenState Refused(ScreenState state, string text, string why) =>
        state with { Notice = new Notice($"{TextSafety.ForTerminal(text)}: {why}.", Role.Warn) };

    private static ScreenState With(ScreenState state, Overlay.Answers page, LineText draft) =>
        state with { Overlay = page with { Draft = draft } };

    private static Reading<Quantity> Read(ScreenState state, string text) =>
        QuantityReader.Read(Expanded(state, text), QuantityKind.Stiffness);

    private static string Expanded(ScreenState state, string text) =>
        CellShorthand.Expand(text.Trim(), QuantityKind.Stiffness, state.Document.Units);
}
