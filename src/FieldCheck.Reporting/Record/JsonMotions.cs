using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Record;

/// <summary>The error object of a beam that can move.</summary>
internal static class JsonMotions
{
    internal static JsonError Error(BuiltBeam beam, BeamOutcome outcome, ImmutableArray<FreeMotion> motions) => new(
        "mechanism",
        [.. MotionWords.Of(beam, outcome).Select(text => new JsonProblem(Line: null, Column: null, Key: "", text))],
        [.. motions.Select(Of)]);

    private static JsonMotion Of(FreeMotion motion) => new(motion.SlidesAlong, [.. motion.Parts.Select(Of)]);

    private static JsonMovingPart Of(MovingPart part) => new(
        JsonFigure.Of(part.From),
        JsonFigure.Of(part.To),
        part.Centre is double centre ? JsonFigure.Of(centre) : null);
}
