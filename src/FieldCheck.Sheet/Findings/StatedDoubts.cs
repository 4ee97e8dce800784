using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Stated;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>
/// What must be said of stated figures whatever their verdict: which agree only because they are written to few digits, and which
/// were held against the loads as they stand where more may happen.
/// </summary>
internal static class StatedDoubts
{
    /// <summary>Share of a reaction below which rounding is not worth a word [–]; common practice, no source.</summary>
    private const double Small = 0.05;

    internal static IEnumerable<Message> Of(
        BuiltBeam beam, StatedFigures stated, Lazy<ImmutableArray<Envelope>> envelopes) =>
    [
        .. stated.Figures.Where(IsRough).Select(figure => new Message(
            Severity.Caution,
            MessageCodes.StatedRough,
            $"{Stated(figure)}: agrees only because it is written to so few digits; computed {Size(beam, figure, figure.Comparison!.Value.Computed)}. "
                + "Ask for more digits.")),
        .. stated.Figures.Select(figure => NotTheWorst(beam, figure, envelopes)).OfType<Message>(),
    ];

    /// <summary>Too little by more than a small share but for the rounding of its last digit.</summary>
    private static bool IsRough(StatedFigure figure) =>
        figure is { PlusOrMinus: 0, Comparison: { Verdict: ReactionVerdict.Agrees } comparison }
        && Math.Abs(comparison.Computed) - Math.Abs(comparison.Stated) is double lacking
        && lacking > Math.Max(comparison.Allowed - figure.AsWritten, Small * Math.Abs(comparison.Computed));

    private static Message? NotTheWorst(BuiltBeam beam, StatedFigure figure, Lazy<ImmutableArray<Envelope>> envelopes)
    {
        if (!beam.Varies
            || figure is not { Against: { IsCase: false, Governs: null } against, Comparison: { } comparison }
            || envelopes.Value.FirstOrDefault(one => one.Basis == against.Basis) is not { } envelope)
        {
            return null;
        }

        bool isMax = Math.Abs(End(isMax: true)) >= Math.Abs(End(isMax: false));
        double worst = End(isMax);
        if (Math.Abs(worst) <= Math.Abs(comparison.Computed) + comparison.Allowed)
        {
            return null;
        }

        string asked = $"extreme = \"{(isMax ? "max" : "min")}\"";
        string says = Math.Abs(comparison.Stated - worst) <= comparison.Allowed
            ? $"it agrees with the worst of all that may stand or roll, {Size(beam, figure, worst)}. If that is meant, say {asked}."
            : $"held against the loads as they stand; with what may roll or be away it comes to {Size(beam, figure, worst)}. "
                + $"If the worst is stated, say {asked}.";
        return new Message(Severity.Caution, MessageCodes.StatedNotWorst, $"{Stated(figure)}: {says}");

        double End(bool isMax) => new StatedExtreme(figure.Support, figure.Component, isMax).Of(envelope.Reactions).Value;
    }

    private static string Stated(StatedFigure figure) =>
        $"{TextSafety.ForTerminal(figure.Text.Trim())} stated as the {figure.Component.Name} reaction of {figure.Label}";

    private static string Size(BuiltBeam beam, StatedFigure figure, double value) =>
        $"{beam.Display.Say(Math.Abs(value), figure.Component.Kind)} {figure.Component.Way(value)}";
}
