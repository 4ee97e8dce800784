using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>What the section itself does, as told from the slope of the deflected line.</summary>
internal static class Bending
{
    /// <summary>The slope's share from shear: the deflected line turns by it, the section does not.</summary>
    internal static double ShearSlope(Span span, double shear) =>
        span.ShearRigidity is double rigidity ? -shear / rigidity : 0;

    /// <summary>Turn of the section itself, counter-clockwise.</summary>
    internal static double Rotation(Span span, SectionState state) => state.Slope - ShearSlope(span, state.Shear);

    internal static double RotationLeftOf(BeamModel model, BeamResponse response, double x) =>
        Rotation(SpanEndingAt(model, x), response.At(x).Left);

    internal static double RotationRightOf(BeamModel model, BeamResponse response, double x) =>
        Rotation(SpanStartingAt(model, x), response.At(x).Right);

    /// <summary>Turn of the section at a place where no hinge stands.</summary>
    internal static double RotationAt(BeamModel model, BeamResponse response, double x) =>
        x > 0 ? RotationLeftOf(model, response, x) : RotationRightOf(model, response, x);

    /// <summary>The span just right of a place.</summary>
    internal static Span SpanStartingAt(BeamModel model, double x) =>
        model.Spans[Math.Min(model.JointPositions.Count(joint => joint <= x) - 1, model.Spans.Length - 1)];

    /// <summary>The span just left of a place.</summary>
    internal static Span SpanEndingAt(BeamModel model, double x) =>
        model.Spans[Math.Max(model.JointPositions.Count(joint => joint < x) - 1, 0)];
}
