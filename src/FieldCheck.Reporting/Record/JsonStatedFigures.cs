using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Record;

/// <summary>Stated reactions beside the computed ones. What is known is given; no verdict is passed on it.</summary>
internal static class JsonStatedFigures
{
    /// <summary>One entry for each figure stated, in the order of the rows.</summary>
    /// <param name="calculation">The beam.</param>
    /// <param name="stands">What came of it; null where no answer could be found.</param>
    internal static ImmutableArray<JsonStated> Of(Calculation calculation, BeamOutcome.Stands? stands) =>
    [
        .. from row in calculation.Document.Stated
           from component in ReactionComponent.All
           let text = component.Text(row)
           where text is not null
           select Of(row, text, component, HeldAgainst(row, component, calculation.Beam!, stands)),
    ];

    private static JsonStated Of(
        StatedEntry row, string text, ReactionComponent component, (Reaction Reaction, Combination? Of)? against)
    {
        double? stated = QuantityReader.Read(text, component.Kind) is Reading<Quantity>.Accepted read
            ? JsonFigure.Of(read.Value.Value)
            : null;
        double? computed = against is null ? null : JsonFigure.Of(component.Value(against.Value.Reaction));
        Combination? combination = against?.Of;
        return new(
            row.Support ?? "",
            component.Name,
            combination?.Name ?? row.Combination,
            row.Basis ?? (combination is null ? "unknown" : JsonAnswer.Word(combination.Basis)),
            component.Unit,
            stated,
            computed,
            stated - computed,
            computed is 0 ? null : (stated - computed) / computed,
            Allowed: null,
            BandLow: null,
            BandHigh: null,
            Verdict: "not_judged",
            computed is null
                ? "It names no combination, case or extreme that this version computes a reaction for."
                : "This version computes the reaction and passes no verdict on a stated one.",
            row.Case);
    }

    private static (Reaction Reaction, Combination? Of)? HeldAgainst(
        StatedEntry row, ReactionComponent component, BuiltBeam beam, BeamOutcome.Stands? stands)
    {
        int support = IndexOf(row, beam);
        if (stands is null || support < 0)
        {
            return null;
        }

        if (row.Case is not null)
        {
            return OfCase(row.Case, beam, stands)?.Reactions[support] is Reaction reaction ? (reaction, null) : null;
        }

        return OfCombination(row, stands.Combinations, Value) is CombinationResponse answer
            ? (answer.Response.Reactions[support], answer.Combination)
            : null;

        double Value(CombinationResponse answer) => component.Value(answer.Response.Reactions[support]);
    }

    private static BeamResponse? OfCase(string name, BuiltBeam beam, BeamOutcome.Stands stands)
    {
        for (int index = 0; index < stands.Cases.Length; index++)
        {
            if (beam.Model.Cases[index].Name == name)
            {
                return stands.Cases[index];
            }
        }

        return null;
    }

    private static CombinationResponse? OfCombination(
        StatedEntry row, ImmutableArray<CombinationResponse> answers, Func<CombinationResponse, double> value)
    {
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
            "max" when isOneBasis => comparable.MaxBy(value),
            "min" when isOneBasis => comparable.MinBy(value),
            null when comparable.Length == 1 => comparable[0],
            _ => null,
        };
    }

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
