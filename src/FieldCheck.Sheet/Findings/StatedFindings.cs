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
            $"{Stated(figure)}: {TextSafety.ForTerminal(figure.Reason)}."),
        _ => null,
    };

    private static string Beside(BuiltBeam beam, StatedFigure figure) =>
        $"{Stated(figure)}; computed {Directed(beam, figure)}{Under(beam, figure.Against!)}.";

    private static string Stated(StatedFigure figure) =>
        $"{VerdictWords.WithSide(figure)}: {TextSafety.ForTerminal(figure.Text.Trim())} stated as the "
            + $"{figure.Component.Name} reaction of {figure.Label}";

    private static string Directed(BuiltBeam beam, StatedFigure figure)
    {
        double computed = figure.Comparison!.Value.Computed;
        string size = Size(beam, figure.Component, computed);
        return size == Size(beam, figure.Component, 0) ? size : $"{size} {figure.Component.Way(computed)}";
    }

    private static string Act(BuiltBeam beam, UnstatedReaction unstated)
    {
        ReactionComponent component = unstated.Component;
        string acts = $"{Size(beam, component, unstated.Value)} {component.Way(unstated.Value)}";
        return component == ReactionComponent.Horizontal ? $"push {acts}"
            : component == ReactionComponent.Moment ? $"turn the beam {acts}"
            : $"hold {acts}";
    }

    private static string Size(BuiltBeam beam, ReactionComponent component, double value) =>
        beam.Display.Say(Math.Abs(value), component.Kind);

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
