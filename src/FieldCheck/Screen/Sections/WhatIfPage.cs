using System.Collections.Immutable;
using FieldCheck.Reporting;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Screen.Sections;

/// <summary>What the beam would take, asked for by a key: it can take some hundred solves.</summary>
internal static class WhatIfPage
{
    /// <summary>The page with every answer.</summary>
    /// <param name="state">The state.</param>
    internal static ScreenState Ask(ScreenState state)
    {
        ImmutableArray<string> answers = WhatIfAnswers.Of(state.Settled, ReadingLine.On(state)?.Position);
        return answers.IsEmpty
            ? state with { Notice = new Notice(WhatIfAnswers.NothingToAsk) }
            : state with { Overlay = new Overlay.Answers(answers) { Props = WhatIfAnswers.Props(state.Settled, stiffness: null) } };
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

        WouldDo found = whatIf.SectionsThatDo(state.Families.Tried(whatIf));
        int row = StickRows.Sections(state.Document).IndexOf(found.Replaced);
        FormPlace place = new(FormBlock.Sections, Math.Max(row, 0), FormColumn.Shape);
        Overlay list = new Overlay.CatalogueList(place, null, LineText.Empty) { Passing = found };
        return (state with { Overlay = list }).Step();
    }

    /// <summary>The page; below, while a stiffness is typed, what it reads as.</summary>
    /// <param name="state">The state.</param>
    /// <param name="answers">What is told.</param>
    /// <param name="width">Columns; 1 or more.</param>
    /// <param name="height">Lines; 1 or more.</param>
    internal static Picture Picture(ScreenState state, Overlay.Answers answers, int width, int height)
    {
        ImmutableArray<string> lines = Lines(answers, Math.Max(width - 2, 1));
        int choice = Math.Min(answers.Choice, lines.Length - 1);
        ImmutableArray<string> below = answers.Draft is LineText draft
            ? [.. TextColumns.Wrap(PlainAscii.Of(PropLine.ReadBackOf(state, draft.Text)), width)]
            : [];
        return ListPicture.Of("What it would take", lines, choice, (null, "> "), below, width, height);
    }

    internal static ScreenStep Press(ScreenState state, Overlay.Answers answers, KeyStroke stroke)
    {
        if (!answers.Props.IsEmpty && PropLine.Press(state, answers, stroke) is ScreenState typed)
        {
            // Where the answer begins is in sight.
            bool isNew = typed.Overlay is Overlay.Answers after && after.Props != answers.Props;
            int first = Lines(answers with { Props = [] }, Math.Max(state.Size.Width - 2, 1)).Length;
            return (isNew ? typed with { Overlay = ((Overlay.Answers)typed.Overlay!) with { Choice = first } } : typed).Step();
        }

        int count = Lines(answers, Math.Max(state.Size.Width - 2, 1)).Length;
        return (state with { Overlay = answers with { Choice = OverlayKeys.Moved(answers.Choice, count, stroke) } }).Step();
    }

    private static ImmutableArray<string> Lines(Overlay.Answers answers, int width) =>
        [.. answers.Sentences.Concat(answers.Props).SelectMany(line => TextColumns.Wrap(PlainAscii.Of(line), width))];
}
