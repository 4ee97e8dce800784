using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;

namespace FieldCheck.Reporting.Record;

/// <summary>The error object of a beam that can move.</summary>
internal static class JsonMotions
{
    internal static JsonError Error(ImmutableArray<Message> messages, ImmutableArray<FreeMotion> motions) => new(
        "mechanism",
        [.. messages.Where(message => message.Severity == Severity.Fault).Select(Of)],
        [.. motions.Select(Of)]);

    private static JsonProblem Of(Message message) => new(Line: null, Column: null, Key: "", message.Text);

    private static JsonMotion Of(FreeMotion motion) => new(motion.SlidesAlong, [.. motion.Parts.Select(Of)]);

    private static JsonMovingPart Of(MovingPart part) => new(
        JsonFigure.Of(part.From),
        JsonFigure.Of(part.To),
        part.Centre is double centre ? JsonFigure.Of(centre) : null);
}
