using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Record;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Sections;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Plain;

/// <summary>What the beam is held to: the checks, the work of one of them, and what would be needed or do.</summary>
internal static class PlainChecks
{
    /// <summary>All checks, or the work of the one whose number is given.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="text">A number; empty for all.</param>
    internal static PlainStep Say(PlainState state, string text) => text.Trim().Length > 0
        ? Work(state, text)
        : Refused(state) ?? state.Say([.. SpokenChecks.Lines(state.Form.Settled)]);

    /// <summary>The work of one check: the one that is used up most where no number is given.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="text">A number; empty for the one that is used up most.</param>
    internal static PlainStep Work(PlainState state, string text)
    {
        if (Refused(state) is PlainStep refused)
        {
            return refused;
        }

        int count = state.Form.Settled.Checks.All.Length;
        string wanted = text.Trim();
        return wanted.Length == 0 ? Said(SectionLines.ChosenIn(state.Form) ?? 0)
            : int.TryParse(wanted, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= 1 && number <= count
            ? Said(number - 1)
            : state.Say($"There is no check {wanted}. There {(count == 1 ? "is" : "are")} {FormWords.Count(count, "check")}, told by: checks.");

        PlainStep Said(int index) => state.Say([.. SpokenChecks.Work(state.Form.Settled, index)]);
    }

    /// <summary>How far loads and the first bay may grow, what section is needed, where a prop would do; or how heavy a load may be.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="text">"at" and a place; empty for the rest.</param>
    internal static PlainStep Headroom(PlainState state, string text)
    {
        if (Refused(state) is PlainStep refused)
        {
            return refused;
        }

        string place = PlainTokens.After(text, "at") ?? text.Trim();
        return state.Form.Settled is not { WhatIf: not null, Beam: BuiltBeam beam } ? state.Say(WhatIfAnswers.NothingToAsk)
            : PlainTokens.After(text, "prop") is string stiffness ? Prop(state, stiffness)
            : place.Length > 0
            ? PlainResults.AtPlace(state, beam, place, at =>
            [
                SpokenAnswer.Aloud(WhatIfAnswers.Heaviest(state.Form.Settled, at)!),
                SpokenAnswer.Aloud(JudgedByWords.NotChecked(state.Form.Settled.Checks)),
            ])
            : state.Say(
            [
                .. WhatIfAnswers.Of(state.Form.Settled, place: null)
                    .Concat(WhatIfAnswers.Props(state.Form.Settled, stiffness: null)).Select(SpokenAnswer.Aloud),
                "How heavy a load may stand at a place: headroom at 1.2 m. Where a prop that gives way would do: headroom prop 2 kN/mm.",
            ]);
    }

    /// <summary>Where a prop of a stiffness typed would do; a rigid one where none is.</summary>
    private static PlainStep Prop(PlainState state, string text) => PropLine.Find(state.Form, text) switch
    {
        { Why: string why } => state.Say(PlainWords.Sentence($"{text}: {why}")),
        { Stiffness: var stiffness } => state.Say(
        [
            .. (WhatIfAnswers.Props(state.Form.Settled, stiffness) is { IsEmpty: false } props
                    ? props
                    : [WhatIfAnswers.NoProp(state.Form.Settled)])
                .Append(JudgedByWords.Of(state.Form.Settled.Checks))
                .Append(JudgedByWords.NotChecked(state.Form.Settled.Checks)).Select(SpokenAnswer.Aloud),
        ]),
    };

    /// <summary>The sections of the catalogue that would do, of families named or of that of the present one, for one to be taken.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="text">"do" and the families; none for that of the present section.</param>
    internal static PlainStep WouldDo(PlainState state, string text)
    {
        if (Refused(state) is PlainStep refused)
        {
            return refused;
        }

        if (state.Form.Settled.WhatIf is not WhatIf whatIf
            || WhatIfPage.Sections(state.Form).State is not { Overlay: Overlay.CatalogueList list })
        {
            return state.Say(WhatIfAnswers.NothingToAsk);
        }

        string wanted = (PlainTokens.After(text, "do") ?? text).Trim();
        ImmutableArray<string> all = [.. whatIf.Families.Select(family => family.Name)];
        ImmutableArray<string> families = wanted.Length == 0 ? [] : Families(all, wanted);
        if (wanted.Length > 0 && families.IsEmpty)
        {
            return state.Say($"No family is called {wanted}. There are {string.Join("; ", all)}.");
        }

        return families.IsEmpty
            ? PlainCatalogue.ThatDo(state, list, isAsked: false)
            : PlainCatalogue.ThatDo(state, list with { Passing = whatIf.SectionsThatDo(families) }, isAsked: true);
    }

    // Each word is a family, or stands in its name.
    private static ImmutableArray<string> Families(ImmutableArray<string> all, string text)
    {
        string[] words = text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        string[] whole = [.. all.Where(family => string.Join(' ', family.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries))
            .Equals(string.Join(' ', words), StringComparison.OrdinalIgnoreCase))];
        string[][] meant = [.. words.Select(Meant)];
        return whole.Length > 0 ? [.. whole] : meant.Any(some => some.Length == 0) ? [] : [.. meant.SelectMany(some => some).Distinct()];

        string[] Meant(string word) => all.Contains(word, StringComparer.OrdinalIgnoreCase)
            ? [.. all.Where(family => family.Equals(word, StringComparison.OrdinalIgnoreCase))]
            : [.. all.Where(family => family.Contains(word, StringComparison.OrdinalIgnoreCase))];
    }

    // What is said of a beam that has no checks yet; null where it has.
    private static PlainStep? Refused(PlainState state) => state.Form.Settled.Outcome is not BeamOutcome.Stands
        ? state.Say(PlainWords.Outcome(state.Form))
        : state.Form.Settled.Checks.All.IsEmpty
        ? state.Say(["Nothing to hold the beam against yet.",
            .. SectionLines.NothingAsked.Select(line => PlainWords.Sentence(line.TrimStart('-', ' ').TrimEnd(';', ':')))])
        : null;
}
