using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Record;

/// <summary>The object of a beam that stands, or of one for which no answer could be found.</summary>
internal static class JsonAnswer
{
    internal static JsonCheck Of(Calculation calculation, BeamOutcome outcome, CheckRequest request, int format)
    {
        BuiltBeam beam = calculation.Beam!;
        Determinacy determinacy = outcome.Determinacy;
        var stands = outcome as BeamOutcome.Stands;
        ImmutableArray<CombinationResponse> answers = stands?.Combinations ?? [];
        return new(
            format,
            request.File,
            calculation.Document.Title ?? "",
            JsonFigure.Of(beam.Model.Length),
            determinacy.Total,
            determinacy.IsCoupled ? null : determinacy.Along,
            determinacy.IsCoupled ? null : determinacy.Across,
            [.. answers.Select((answer, index) => Of(answer, beam, request.At, JsonBands.Combination(calculation, index)))],
            JsonEnvelopes.Of(beam, calculation.Envelopes),
            JsonStatedFigures.Of(calculation),
            JsonExplanations.Of(calculation, beam),
            JsonChecks.Of(calculation, beam),
            [.. calculation.Messages.Select(Of)],
            JsonStatedFigures.BalancesOf(calculation),
            calculation.Explanations.All(set => set.Diagnosis.IsEverySlipTried));
    }

    internal static string Word(CombinationBasis basis) =>
        basis == CombinationBasis.Factored ? "factored" : "service";

    private static JsonCombination Of(
        CombinationResponse answer, BuiltBeam beam, ImmutableArray<AskedPlace> places, JsonCombinationBands? bands)
    {
        bool hasStiffness = beam.Model.HasAbsoluteStiffness;
        return new(
            answer.Combination.Name,
            Word(answer.Combination.Basis),
            [.. beam.Supports.Zip(answer.Response.Reactions, Of)],
            new(
                Along(Curve.Axial),
                Along(Curve.Shear),
                Along(Curve.Moment),
                hasStiffness ? Along(Curve.Deflection) : null),
            [.. places.Select(place => Of(place, answer.Response, beam.Model))],
            JsonFigure.Of(answer.Response.Proof.Residual),
            bands);

        JsonExtremes Along(Curve curve)
        {
            Extremes extremes = answer.Response.ExtremesOf(curve);
            return new(
                JsonFigure.Of(extremes.Max.Value),
                JsonFigure.Of(extremes.Max.Position),
                JsonFigure.Of(extremes.Min.Value),
                JsonFigure.Of(extremes.Min.Position));
        }
    }

    private static JsonReaction Of(NamedSupport support, Reaction reaction) => new(
        support.Label,
        support.Joint,
        JsonFigure.Of(support.Support.Position),
        JsonFigure.Of(reaction.Horizontal),
        JsonFigure.Of(reaction.Vertical),
        JsonFigure.Of(reaction.Moment),
        reaction.Normal is double normal ? JsonFigure.Of(normal) : null,
        reaction.IsLiftedOff);

    private static JsonPlace Of(AskedPlace place, BeamResponse response, BeamModel model)
    {
        (SectionState left, SectionState right) = response.At(place.Position);
        return new(
            JsonFigure.Of(place.Position),
            JsonFigure.Of(left.Axial),
            JsonFigure.Of(right.Axial),
            JsonFigure.Of(left.Shear),
            JsonFigure.Of(right.Shear),
            JsonFigure.Of(left.Moment),
            JsonFigure.Of(right.Moment),
            Stiff(left.Slope),
            Stiff(right.Slope),
            Stiff(left.Deflection),
            place.Text);

        double? Stiff(double value) => model.HasAbsoluteStiffness ? JsonFigure.Of(value) : null;
    }

    private static JsonMessage Of(Message message) => new(
        message.Severity switch
        {
            Severity.Note => "note",
            Severity.Caution => "caution",
            _ => "fault",
        },
        message.Code,
        message.Text);
}
