using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Stated;

namespace FieldCheck.Sheet.Findings;

/// <summary>
/// What must be said of stated figures whatever their verdict: which agree only because they are written to few digits, and which
/// were held against the loads as they stand where more may happen.
/// </summary>
internal static class StatedDoubts
{
    /// <summary>Share of a reaction below which rounding is not worth a word [–]; common practice, no source.</summary>
    private const double Small = 0.05;

    /// <summary>All of it.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="stated">What is stated of it.</param>
    /// <param name="worst">What pulls and pushes its supports most, where patterns or rolling loads let more happen.</param>
    /// <param name="envelopes">Its envelopes; asked for only where an end of one is stated.</param>
    internal static IEnumerable<Message> Of(
        BuiltBeam beam, StatedFigures stated, WorstReactions? worst, Lazy<ImmutableArray<Envelope>> envelopes) =>
    [
        .. stated.Figures.Where(IsRough).Select(figure => new Message(
            Severity.Caution,
            MessageCodes.StatedRough,
            $"{StatedWording.Stated(figure)}: agrees only because it is written to so few digits; "
                + $"computed {StatedWording.Directed(beam, figure.Component, figure.Comparison!.Value.Computed)}. "
                + "Ask for more digits.")),
        .. stated.Figures.Where(figure => IsOfAnEstimate(figure, envelopes)).Select(figure => new Message(
            Severity.Caution,
            MessageCodes.StatedEstimate,
            $"{StatedWording.Stated(figure)}: held against an estimate, found among what was tried; something else may give more.")),
        .. worst is null ? [] : stated.Figures.Select(figure => NotTheWorst(beam, figure, worst)).OfType<Message>(),
    ];

    /// <summary>Too little by more than a small share but for the rounding of its last digit.</summary>
    private static bool IsRough(StatedFigure figure) =>
        figure is { PlusOrMinus: 0, Comparison: { Verdict: ReactionVerdict.Agrees } comparison }
        && Math.Abs(comparison.Computed) - Math.Abs(comparison.Stated) is double lacking
        && lacking > Math.Max(comparison.Allowed - figure.AsWritten, Small * Math.Abs(comparison.Computed));

    private static bool IsOfAnEstimate(StatedFigure figure, Lazy<ImmutableArray<Envelope>> envelopes) =>
        figure is { Against: { Governs: not null } against, Comparison: not null }
        && envelopes.Value.Any(one => one.Basis == against.Basis && one.ReactionCertainty == EnvelopeCertainty.Estimate);

    private static Message? NotTheWorst(BuiltBeam beam, StatedFigure figure, WorstReactions worst)
    {
        if (figure is not { Against: { IsCase: false, Governs: null } against, Comparison: { } comparison }
            || worst.Greatest(beam, figure.Support, figure.Component, against.Basis) is not double most
            || Math.Abs(most) <= Math.Abs(comparison.Computed) + comparison.Allowed)
        {
            return null;
        }

        string size = StatedWording.Directed(beam, figure.Component, most);
        string asked = $"extreme = \"{(most > 0 ? "max" : "min")}\"";
        string says = worst.AreEnds && Math.Abs(comparison.Stated - most) <= comparison.Allowed
            ? $"it agrees with the worst of all that may stand or roll, {size}. If that is meant, say {asked}."
            : "held against the loads as they stand; with what may roll or be away it comes to "
                + $"{(worst.AreEnds ? "" : "at least ")}{size}. If the worst is stated, say {asked}.";
        return new Message(Severity.Caution, MessageCodes.StatedNotWorst, $"{StatedWording.Stated(figure)}: {says}");
    }
}
