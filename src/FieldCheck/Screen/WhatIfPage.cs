using System.Collections.Immutable;
using FieldCheck.Reporting;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Screen;

/// <summary>What the beam would take, asked for by a key: it can take some hundred solves.</summary>
internal static class WhatIfPage
{
    private const int Narrowest = 30;

    /// <summary>The page with every answer.</summary>
    /// <param name="state">The state.</param>
    internal static ScreenState Ask(ScreenState state)
    {
        ImmutableArray<string> answers = WhatIfAnswers.Of(state.Settled, ReadingLine.On(state)?.Position);
        return answers.IsEmpty
            ? state with { Notice = new Notice(WhatIfAnswers.NothingToAsk) }
            : state with { Overlay = new Overlay.Answers(answers) };
    }

    /// <summary>How heavy one more load may be at the reading line, told at once.</summary>
    /// <param name="state">The state.</param>
    internal static ScreenState AtReadingLine(ScreenState state) => state with
    {
        Notice = new Notice(
            (ReadingLine.On(state)?.Position is double place ? WhatIfAnswers.Heaviest(state.Settled, place) : null)
                ?? WhatIfAnswers.NothingToAsk),
    };

    /// <summary>The list of sections that would do, in the place of the one that the person is on.</summary>
    /// <param name="state">The state.</param>
    internal static ScreenStep Sections(ScreenState state)
    {
        if (state.Settled.WhatIf is not WhatIf whatIf)
        {
            return (state with { Notice = new Notice(WhatIfAnswers.NothingToAsk) }).Step();
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
