using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Working;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Plotting;
using FieldCheck.Screen.Workings;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Plain;

/// <summary>The working by hand, line by line.</summary>
internal static class PlainWorking
{
    private const string ShortWord = "short";

    /// <summary>Says the working of the combination last told, about the place that is named; or saves it.</summary>
    internal static PlainStep Say(PlainState state, string text)
    {
        if (state.Form.Settled is not { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands })
        {
            return state.Say(PlainWords.Outcome(state.Form));
        }

        if (PlainTokens.After(text, "save") is string name)
        {
            return name.Length > 0
                ? state.With(PaperFile.Save(state.Form, PaperKind.Working, name))
                : state.With(PaperFile.Ask(state.Form, PaperKind.Working).Step());
        }

        (string rest, bool isShort) = WithoutShort(text.Trim());
        if (rest.Length == 0)
        {
            return Said(state with { Form = state.Form with { About = null } }, isShort);
        }

        return PlainTokens.After(rest, "about") is not { Length: > 0 } place
            ? state.Say("Working how? As: working, working short, working about B, working save NAME.")
            : PlaceKeys.Find(beam, place) switch
            {
                Reading<double>.Accepted position => Said(
                    state with { Form = state.Form with { About = MomentPoint.At(beam, position.Value) } }, isShort),
                Reading<double>.Refused refused => state.Say(PlainWords.Sentence($"{place} is no place: {refused.Text}")),
                _ => throw new System.Diagnostics.UnreachableException(),
            };
    }

    private static (string How, bool IsShort) WithoutShort(string text) =>
        PlainTokens.After(text, ShortWord) is string behind ? (behind, true)
        : text.EndsWith(" " + ShortWord, StringComparison.OrdinalIgnoreCase) ? (text[..^ShortWord.Length].Trim(), true)
        : (text, false);

    private static PlainStep Said(PlainState state, bool isShort)
    {
        WorkingRequest request = new(SpokenWorking.Width)
        {
            About = state.Form.About?.On(state.Form.Settled.Beam!),
            IsShort = isShort,
            HasTables = false,
        };
        return state.Say([.. SpokenWorking.Of(
            WorkingText.Lines(state.Form.Settled, state.Form.CombinationShown, request).Select(line => line.Text))]);
    }
}
