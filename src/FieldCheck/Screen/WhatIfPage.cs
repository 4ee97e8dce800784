using System.Collections.Immutable;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Reporting;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Screen;

/// <summary>What the beam would take, asked for by a key: it can take some hundred solves.</summary>
internal static class WhatIfPage
{
    private const int Narrowest = 30;
    private const string NothingToAsk = "Nothing to ask yet: no check holds the beam against anything.";

    /// <summary>The page with every answer.</summary>
    /// <param name="state">The state.</param>
    internal static ScreenState Ask(ScreenState state)
    {
        Calculation calculation = state.Settled;
        if (calculation is not { WhatIf: WhatIf whatIf, Beam: BuiltBeam beam })
        {
            return state with { Notice = new Notice(NothingToAsk) };
        }

        WhatIfWords words = new(beam, calculation.Document);
        bool isOver = calculation.Checks.Verdict == CheckVerdict.Over;
        ImmutableArray<string> answers =
        [
            words.Live(whatIf.Live, whatIf.LiveNames),
            .. words.Needed(whatIf.Needed) is { Length: > 0 } needed ? new[] { needed } : [],
            words.FirstBay(whatIf.LongestFirstBay),
            .. ReadingLine.On(state)?.Position is double place ? new[] { words.Heaviest(place, whatIf.HeaviestAt(place)) } : [],
            .. isOver ? words.Props(whatIf.Props(stiffness: null)) : ["No prop is needed: no judged check is over."],
            .. calculation.Checks.All.Any(check => check.Figures.Verdict == CheckVerdict.NotJudged)
                ? new[] { "What is NOT JUDGED is not judged in any of these either." }
                : [],
        ];
        return state with { Overlay = new Overlay.Answers(answers) };
    }

    /// <summary>How heavy one more load may be at the reading line, told at once.</summary>
    /// <param name="state">The state.</param>
    internal static ScreenState AtReadingLine(ScreenState state) => state with
    {
        Notice = new Notice(
            state.Settled is { WhatIf: WhatIf whatIf, Beam: BuiltBeam beam } && ReadingLine.On(state)?.Position is double place
                ? new WhatIfWords(beam, state.Settled.Document).Heaviest(place, whatIf.HeaviestAt(place))
                : NothingToAsk),
    };

    /// <summary>The list of sections that would do, in the place of the one that the person is on.</summary>
    /// <param name="state">The state.</param>
    internal static ScreenStep Sections(ScreenState state)
    {
        if (state.Settled.WhatIf is not WhatIf whatIf)
        {
            return (state with { Notice = new Notice(NothingToAsk) }).Step();
        }

        WouldDo found = whatIf.SectionsThatDo([]);
        int row = StickRows.Sections(state.Document).IndexOf(found.Replaced);
        FormPlace place = new(FormBlock.Sections, Math.Max(row, 0), FormColumn.Shape);
        Overlay list = new Overlay.CatalogueList(place, null, LineText.Empty) { Passing = found };
        return (state with { Overlay = list }).Step();
    }

    internal static Picture Picture(Overlay.Answers answers, int width, int height)
    {
        ImmutableArray<string> lines = Lines(answers, Math.Max(width - 2, 1));
        int choice = Math.Min(answers.Choice, lines.Length - 1);
        return ListPicture.Of("What it would take", lines, choice, (null, "> "), [], width, height);
    }

    internal static ScreenStep Press(ScreenState state, Overlay.Answers answers, KeyStroke stroke) => (state with
    {
        Overlay = answers with { Choice = OverlayKeys.Moved(answers.Choice, Lines(answers, Narrowest).Length, stroke) },
    }).Step();

    private static ImmutableArray<string> Lines(Overlay.Answers answers, int width) =>
        [.. answers.Sentences.SelectMany(line => TextColumns.Wrap(PlainAscii.Of(line), width))];
}
