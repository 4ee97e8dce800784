using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Stated;

namespace FieldCheck.Reporting.Record;

/// <summary>The greatest and least over all combinations of one basis, and which combination governs.</summary>
internal static class JsonEnvelopes
{
    internal static ImmutableArray<JsonEnvelope> Of(BuiltBeam beam, ImmutableArray<CombinationResponse> combinations) =>
    [
        .. combinations
            .GroupBy(answer => answer.Combination.Basis)
            .OrderBy(group => group.Key)
            .Select(group => Of(beam, JsonAnswer.Word(group.Key), [.. group])),
    ];

    private static JsonEnvelope Of(BuiltBeam beam, string basis, ImmutableArray<CombinationResponse> answers) =>
        new(basis, Reactions(beam, answers), Curves(beam, answers));

    private static ImmutableArray<JsonReactionEnvelope> Reactions(
        BuiltBeam beam, ImmutableArray<CombinationResponse> answers) =>
    [
        .. from index in Enumerable.Range(0, beam.Supports.Length)
           from component in ReactionComponent.All
           where component.IsGivenBy(beam.Supports[index].Support)
           select Reaction(beam.Supports[index].Label, index, component, answers),
    ];

    private static JsonReactionEnvelope Reaction(
        string support, int index, ReactionComponent component, ImmutableArray<CombinationResponse> answers)
    {
        CombinationResponse greatest = answers.MaxBy(Value)!;
        CombinationResponse least = answers.MinBy(Value)!;
        return new(
            support,
            component.Name,
            JsonStatedFigures.Unit(component),
            JsonFigure.Of(Value(greatest)),
            Governs(greatest),
            JsonFigure.Of(Value(least)),
            Governs(least));

        double Value(CombinationResponse answer) => component.Value(answer.Response.Reactions[index]);
    }

    private static JsonCurves<JsonGovernedExtremes> Curves(
        BuiltBeam beam, ImmutableArray<CombinationResponse> answers) => new(
        Extremes(answers, Curve.Axial),
        Extremes(answers, Curve.Shear),
        Extremes(answers, Curve.Moment),
        beam.Model.HasAbsoluteStiffness ? Extremes(answers, Curve.Deflection) : null);

    private static JsonGovernedExtremes Extremes(ImmutableArray<CombinationResponse> answers, Curve curve)
    {
        (CombinationResponse Answer, Extremes Extremes)[] found =
            [.. answers.Select(answer => (answer, answer.Response.ExtremesOf(curve)))];
        (CombinationResponse greatest, Extremes high) = found.MaxBy(one => one.Extremes.Max.Value);
        (CombinationResponse least, Extremes low) = found.MinBy(one => one.Extremes.Min.Value);
        return new(
            JsonFigure.Of(high.Max.Value),
            JsonFigure.Of(high.Max.Position),
            Governs(greatest),
            JsonFigure.Of(low.Min.Value),
            JsonFigure.Of(low.Min.Position),
            Governs(least));
    }

    private static JsonGoverns Governs(CombinationResponse answer) => new(answer.Combination.Name, null, null, null);
}
