using System.Collections.Immutable;
using FieldCheck.CommandLine;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Record;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Plotting;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Plain;

/// <summary>What came of the beam: in sentences, at a place, as a drawing.</summary>
internal static class PlainResults
{
    private const string Beware = "A check aid: cautions says what is not checked.";

    /// <summary>Everything, of all combinations or of the one named by number or name.</summary>
    internal static PlainStep Say(PlainState state, string text)
    {
        string wanted = text.Trim();
        if (state.Form.Settled is not { Outcome: BeamOutcome.Stands stands } || wanted.Length == 0)
        {
            return state.Form.Settled.Beam is null
                ? Problems(state)
                : state.Say([.. SpokenAnswer.Lines(state.Form.Settled, null), Beware]);
        }

        return AskedCombination.Find(stands, wanted) switch
        {
            Reading<int>.Accepted { Value: int index } => (state with { Form = state.Form with { Combination = index } })
                .Say([.. SpokenAnswer.Lines(state.Form.Settled, index), Beware]),
            Reading<int>.Refused refused => state.Say(PlainWords.Sentence($"{wanted}: {refused.Text}")),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    /// <summary>The envelopes; of a beam where they say no more than its results, so much.</summary>
    internal static PlainStep Worst(PlainState state) => state.Form.Settled is not { Outcome: BeamOutcome.Stands }
        ? state.Say(PlainWords.Outcome(state.Form))
        : SpokenAnswer.Worst(state.Form.Settled) is [_, ..] worst
            ? state.Say([.. worst])
            : state.Say("One combination alone, nothing bay by bay and nothing that rolls: results says all of it.");

    /// <summary>Shear, moment and what else is known at a place.</summary>
    internal static PlainStep At(PlainState state, string text)
    {
        Calculation calculation = state.Form.Settled;
        if (calculation is not { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands })
        {
            return state.Say(PlainWords.Outcome(state.Form));
        }

        if (text.Length == 0)
        {
            return state.Say("At which place? As: at 1.25 m, at B, at mid 1, at end - 6 in.");
        }

        string unit = CellUnits.Of(QuantityKind.Length, state.Form.Document.Units);
        string place = CellShorthand.ExpandPlace(text, unit);
        return AtPlace(state, beam, text, position =>
            [.. SpokenAnswer.At(calculation, new AskedPlace(place, position), state.Form.CombinationShown)]);
    }

    /// <summary>What is said of a place as it was typed, or why it is none.</summary>
    /// <param name="state">The conversation.</param>
    /// <param name="beam">The beam.</param>
    /// <param name="text">The place.</param>
    /// <param name="say">What is said of it, in metres from the left end.</param>
    internal static PlainStep AtPlace(
        PlainState state, BuiltBeam beam, string text, Func<double, ImmutableArray<string>> say) => PlaceKeys.Find(beam, text) switch
        {
            Reading<double>.Accepted position => state.Say([.. say(position.Value)]),
            Reading<double>.Refused refused => state.Say(PlainWords.Sentence($"{text} is no place: {refused.Text}")),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>Every cell that is to be mended or is waited for.</summary>
    internal static PlainStep Problems(PlainState state)
    {
        ImmutableArray<string> told = ProblemWords.Of(state.Form.Settled, PlainHints.OfMissing);
        return told.IsEmpty
            ? state.Say("No cell is to mend.", PlainWords.Outcome(state.Form))
            : state.Say([.. told.Select(problem => PlainWords.Sentence(PlainWords.WithoutGaps(problem)))]);
    }

    /// <summary>How far a check goes.</summary>
    internal static PlainStep Cautions(PlainState state) => state.Say([.. SpokenAnswer.Cautions(state.Form.Settled)]);
}
