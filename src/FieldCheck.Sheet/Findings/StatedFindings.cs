using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Stated;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of stated figures: which do not hold, which are not judged, and what nobody states.</summary>
internal static class StatedFindings
{
    internal static IEnumerable<Message> Of(BuiltBeam beam, StatedFigures stated) =>
    [
        .. stated.Figures.Select(figure => Of(beam, figure)).OfType<Message>(),
        .. stated.Unstated.Select(unstated => new Message(
            Severity.Caution,
            MessageCodes.NotStated,
            $"Nobody states that {unstated.Label} must {Act(beam, unstated)}{Under(beam, unstated.Against)}.")),
    ];

    private static Message? Of(BuiltBeam beam, StatedFigure figure) => figure.Verdict switch
    {
        ReactionVerdict.Low => new Message(Severity.Fault, MessageCodes.StatedLow, Beside(beam, figure)),
        ReactionVerdict.High => new Message(Severity.Caution, MessageCodes.StatedHigh, Beside(beam, figure)),
        ReactionVerdict.NotJudged => new Message(
            Severity.Caution,
            MessageCodes.NotJudged,
            $"{Judged(figure)}: {TextSafety.ForTerminal(figure.Reason)}."),
        _ => null,
    };

    private static string Beside(BuiltBeam beam, StatedFigure figure) =>
        $"{Judged(figure)}; computed {StatedWording.Directed(beam, figure.Component, figure.Comparison!.Value.Computed)}"
            + $"{Under(beam, figure.Against!)}."
            + (VerdictWords.IsTooMuchPush(figure) ? " Less is left to hold the beam down than stated." : "");

    private static string Judged(StatedFigure figure) => $"{VerdictWords.WithSide(figure)}: {StatedWording.Stated(figure)}";

    private static string Act(BuiltBeam beam, UnstatedReaction unstated)
    {
        ReactionComponent component = unstated.Component;
        string acts = $"{StatedWording.Size(beam, component, unstated.Value)} {component.Way(unstated.Value)}";
        return component == ReactionComponent.Horizontal ? $"push {acts}"
            : component == ReactionComponent.Moment ? $"turn the beam {acts}"
            : $"hold {acts}";
    }

    /// <summary>Which answer it is, where there are several.</summary>
    private static string Under(BuiltBeam beam, StatedAgainst against)
    {
        string name = TextSafety.ForTerminal(against.Name);
        string loads = against.Governs is Situation governs
            ? string.Concat(SituationWords.Loads(beam, governs, against.Factors).Select(one => ", " + TextSafety.ForTerminal(one)))
            : "";
        return against.IsCase ? $" under case {name} alone{loads}"
            : against.Governs is not null ? SituationWords.After(beam, against.Governs)
            : beam.Model.Combinations.Length > 1 ? $" under {name}"
            : "";
    }
}
