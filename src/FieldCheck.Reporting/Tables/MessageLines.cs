using System.Collections.Immutable;
using FieldCheck.Sheet;

namespace FieldCheck.Reporting.Tables;

/// <summary>What must be said beside the figures, gravest first.</summary>
internal static class MessageLines
{
    /// <summary>The messages, each with its word before it.</summary>
    internal static ImmutableArray<string> Of(Calculation calculation) => Of(calculation, _ => true);

    /// <summary>Those that are asked for.</summary>
    internal static ImmutableArray<string> Of(Calculation calculation, Func<Message, bool> isAsked) =>
        [.. InOrder(calculation).Where(isAsked).Select(message => $"{Word(message.Severity)}: {TypedLetters.Sentence(calculation.Beam, message.Text)}")];

    internal static IEnumerable<Message> InOrder(Calculation calculation) =>
        calculation.Messages.OrderByDescending(message => message.Severity);

    private static string Word(Severity severity) => severity switch
    {
        Severity.Fault => "FAULT",
        Severity.Caution => "CAUTION",
        _ => "note",
    };

    /// <summary>True: it says what the beam or a support may do within what was measured, which whoever reads one line must know.</summary>
    internal static bool IsWithin(Message message) => message.Code is MessageCodes.TipsWithin or MessageCodes.BandNotWhole
        or MessageCodes.UpliftWithin or MessageCodes.LiftsOffWithin;
}
