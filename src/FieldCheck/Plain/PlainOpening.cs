using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;

namespace FieldCheck.Plain;

/// <summary>The list of beams to open, and another beam in place of the one before.</summary>
internal static class PlainOpening
{
    private const string AsCopy = " as copy";
    private const int MostListed = 30;

    /// <summary>The beams are known: what was named is opened, or they are listed.</summary>
    /// <param name="step">The step so far.</param>
    /// <param name="list">The list.</param>
    internal static PlainStep Found(PlainStep step, Overlay.OpenList list)
    {
        PlainState state = step.State with { Wanted = null };
        return step.State.Wanted is string wanted
            ? Choose(state, list, wanted)
            : state.Say([.. Listed(list.Found!, list.Found!.Choices)]);
    }

    /// <summary>A choice from the list: a number, a name or part of it, or a file.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="list">The list.</param>
    /// <param name="text">The choice; empty for none. " as copy" behind it opens a copy.</param>
    internal static PlainStep Choose(PlainState state, Overlay.OpenList list, string text)
    {
        bool asCopy = text.EndsWith(AsCopy, StringComparison.OrdinalIgnoreCase);
        string name = asCopy ? text[..^AsCopy.Length].Trim() : text;
        if (name.Length == 0)
        {
            return (state with { Form = state.Form with { Overlay = null } }).Say();
        }

        Overlay.OpenList typed = list with { Filter = LineText.Of(name), Chosen = null, Preview = null };
        if (OpenListKeys.PathIn(typed) is not null)
        {
            return state.With(OpenListKeys.Open(state.Form, typed, asCopy));
        }

        return (Meant(typed, name), PlainCommands.Of(text)) switch
        {
            ([BeamChoice one], _) => state.With(OpenListKeys.Open(state.Form, typed with { Chosen = one }, asCopy)),
            ([_, ..] some, _) => state.Say([.. Listed(list.Found!, some)]),
            (_, not null) => PlainCommands.Run(state with { Form = state.Form with { Overlay = null } }, text),
            _ when name.Equals("list", StringComparison.OrdinalIgnoreCase) =>
                state.Say([.. Listed(list.Found!, list.Found!.Choices)]),
            _ => state.Say($"No name has these words: {name}. To open a file by its path, end it in .toml; list lists all."),
        };
    }

    /// <summary>True: another beam stands where one stood before.</summary>
    /// <param name="before">The form before.</param>
    /// <param name="after">The form after.</param>
    internal static bool IsShownAnew(ScreenState before, ScreenState after) =>
        !ReferenceEquals(before.Stored, after.Stored) && after.SavedAt is null && after.History.Steps.Length == 1;

    /// <summary>A beam just opened: what it is, what came of it, and the first question.</summary>
    /// <param name="step">The step that opened it.</param>
    internal static PlainStep Shown(PlainStep step)
    {
        // The form would lay the list of keys over itself for a key that is asked for; here it is asked.
        ScreenState form = step.State.Form with { Overlay = null };
        PlainState state = step.State with { Form = form };
        if (form.Origin.Text is null && !form.IsUnsaved)
        {
            return (step with { State = state with { Ask = PlainWalks.OfNewBeam } }).Then(PlainWalks.NewBeam);
        }

        PlainAsk? first = form.IsAsking ? PlainWalks.OfAsked(form.Document) : null;
        return (step with { State = state with { Ask = first } })
            .Then(PlainWords.Summary(form), PlainWords.Outcome(form));
    }

    private static ImmutableArray<BeamChoice> Meant(Overlay.OpenList typed, string name)
    {
        ImmutableArray<BeamChoice> all = typed.Found!.Choices;
        if (int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            && number >= 1 && number <= all.Length)
        {
            return [all[number - 1]];
        }

        ImmutableArray<BeamChoice> exact =
            [.. all.Where(choice => choice.Name.Equals(name, StringComparison.OrdinalIgnoreCase))];
        return exact.IsEmpty ? OpenListKeys.ShownIn(typed) : exact;
    }

    private static IEnumerable<string> Listed(FoundBeams found, ImmutableArray<BeamChoice> some)
    {
        IEnumerable<string> lines = some.Take(MostListed).Select(choice => string.Create(
            CultureInfo.InvariantCulture,
            $"{found.Choices.IndexOf(choice) + 1}: {choice.Name}, {OpenListWords.From(choice)}{Used(choice, found.Today)}."));
        int more = some.Length - MostListed;
        return more > 0 ? lines.Append($"And {more} more: type part of a name.") : lines;
    }

    private static string Used(BeamChoice choice, DateOnly today) =>
        choice.UsedAt is null ? "" : $", last used {OpenListWords.LastUsed(choice, today)}";
}
