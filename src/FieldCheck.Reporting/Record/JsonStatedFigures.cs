using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Record;

/// <summary>Stated reactions beside the computed ones. What is known is given; no verdict is passed on it.</summary>
internal static class JsonStatedFigures
{
    internal static ImmutableArray<JsonStated> Of(
        Calculation calculation, ImmutableArray<CombinationResponse> answers) =>
    [
        .. from row in calculation.Document.Stated
           from component in ReactionComponent.All
           let text = component.Text(row)
           where text is not null
           let answer = CombinationOf(row, component, calculation.Beam!, answers)
           select Of(row, text, component, answer, calculation.Beam!),
    ];

    private static JsonStated Of(
        StatedEntry row, string text, ReactionComponent component, CombinationResponse? answer, BuiltBeam beam)
    {
        double? stated = QuantityReader.Read(text, component.Kind) is Reading<Quantity>.Accepted read
            ? JsonFigure.Of(read.Value.Value)
            : null;
        double? computed = answer is null ? null : JsonFigure.Of(Value(row, component, beam, answer));
        return new(
            row.Support ?? "",
            component.Name,
            answer?.Combination.Name ?? row.Combination,
            row.Basis ?? (answer is null ? "unknown" : JsonAnswer.Word(answer.Combination.Basis)),
            component.Unit,
            stated,
            computed,
            stated - computed,
            computed is 0 ? null : (stated - computed) / computed,
            Allowed: null,
            BandLow: null,
            BandHigh: null,
            Verdict: "not_judged",
            answer is null
                ? "It names no combination or extreme that this version computes a reaction for."
                : "This version computes the reaction and passes no verdict on a stated one.");
    }

    private static CombinationResponse? CombinationOf(
        StatedEntry row, ReactionComponent component, BuiltBeam beam, ImmutableArray<CombinationResponse> answers)
    {
        if (row.Case is not null || IndexOf(row, beam) < 0)
        {
            return null;
        }

        if (row.Combination is not null)
        {
            return answers.FirstOrDefault(answer => answer.Combination.Name == row.Combination);
        }

        ImmutableArray<CombinationResponse> comparable = row.Basis switch
        {
            "service" => [.. answers.Where(answer => answer.Combination.Basis == CombinationBasis.Service)],
            "factored" => [.. answers.Where(answer => answer.Combination.Basis == CombinationBasis.Factored)],
            _ => answers,
        };
        bool isOneBasis = comparable.Select(answer => answer.Combination.Basis).Distinct().Count() == 1;
        return row.Extreme switch
        {
            "max" when isOneBasis => comparable.MaxBy(answer => Value(row, component, beam, answer)),
            "min" when isOneBasis => comparable.MinBy(answer => Value(row, component, beam, answer)),
            null when comparable.Length == 1 => comparable[0],
            _ => null,
        };
    }

    private static double Value(
        StatedEntry row, ReactionComponent component, BuiltBeam beam, CombinationResponse answer) =>
        component.Value(answer.Response.Reactions[IndexOf(row, beam)]);

    // Labels are unique whatever the case.
    private static int IndexOf(StatedEntry row, BuiltBeam beam)
    {
        for (int index = 0; index < beam.Supports.Length; index++)
        {
            if (string.Equals(beam.Supports[index].Label, row.Support, StringComparison.OrdinalIgnoreCase))
            {
                return index;
            }
        }

        return -1;
    }
}
