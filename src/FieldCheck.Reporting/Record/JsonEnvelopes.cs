using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Building;
using ReactionComponent = FieldCheck.Sheet.Stated.ReactionComponent;

namespace FieldCheck.Reporting.Record;

/// <summary>The greatest and least over all that the combinations of one basis let happen, and what governs.</summary>
internal static class JsonEnvelopes
{
    internal static ImmutableArray<JsonEnvelope> Of(BuiltBeam beam, ImmutableArray<Envelope> envelopes) =>
    [
        .. envelopes.Select(envelope => new JsonEnvelope(
            JsonAnswer.Word(envelope.Basis),
            Reactions(beam, envelope),
            new(
                Extremes(beam, envelope, Curve.Axial),
                Extremes(beam, envelope, Curve.Shear),
                Extremes(beam, envelope, Curve.Moment),
                beam.Model.HasAbsoluteStiffness ? Extremes(beam, envelope, Curve.Deflection) : null))),
    ];

    private static ImmutableArray<JsonReactionEnvelope> Reactions(BuiltBeam beam, Envelope envelope) =>
    [
        .. from index in Enumerable.Range(0, beam.Supports.Length)
           from component in ReactionComponent.All
           where component.IsGivenBy(beam.Supports[index].Support)
           let range = Range(envelope.Reactions[index], component)
           select new JsonReactionEnvelope(
               beam.Supports[index].Label,
               component.Name,
               JsonStatedFigures.Unit(component),
               JsonFigure.Of(range.Max.Value),
               JsonSituations.Of(beam, range.Max.Situation),
               JsonFigure.Of(range.Min.Value),
               JsonSituations.Of(beam, range.Min.Situation),
               Word(envelope.ReactionCertainty)),
    ];

    private static GovernedRange Range(ReactionEnvelope reaction, ReactionComponent component) =>
        component == ReactionComponent.Vertical ? reaction.Vertical
        : component == ReactionComponent.Horizontal ? reaction.Horizontal
        : reaction.Moment;

    private static JsonGovernedExtremes Extremes(BuiltBeam beam, Envelope envelope, Curve curve)
    {
        GovernedExtremes extremes = envelope.ExtremesOf(curve);
        return new(
            JsonFigure.Of(extremes.Max.Value),
            JsonFigure.Of(extremes.Max.Position),
            JsonSituations.Of(beam, extremes.Max.Situation),
            JsonFigure.Of(extremes.Min.Value),
            JsonFigure.Of(extremes.Min.Position),
            JsonSituations.Of(beam, extremes.Min.Situation),
            Word(envelope.CertaintyOf(curve)));
    }

    private static string Word(EnvelopeCertainty certainty) =>
        certainty == EnvelopeCertainty.Estimate ? "estimate" : "exact";
}
