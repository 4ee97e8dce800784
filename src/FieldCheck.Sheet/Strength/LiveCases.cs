using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Strength;

/// <summary>Which cases hold loads that may grow.</summary>
internal static class LiveCases
{
    private static readonly ImmutableArray<string> Lasting = ["dead", "permanent", "own_weight", "self_weight"];

    /// <summary>For each case of the model: all but dead, permanent and that of the own weight.</summary>
    internal static ImmutableArray<bool> Of(BeamDocument document, BeamModel model) =>
        [.. model.Cases.Select(one => !Lasting.Contains(one.Name) && one.Name != document.SelfWeight?.Case)];

    /// <summary>The cases that one more load may belong to, as indices; the model has them all.</summary>
    /// <remarks>The case of a load without one, where a combination counts it; else every live one that is counted.</remarks>
    internal static ImmutableArray<int> OfOneMore(BeamDocument document, BeamModel beam, out BeamModel model)
    {
        model = WithDefault(document, beam, out int usual);
        BeamModel counted = model;
        ImmutableArray<bool> grows = Of(document, model);
        return
        [
            .. IsCounted(usual)
                ? new[] { usual }
                : Enumerable.Range(0, grows.Length).Where(index => grows[index] && IsCounted(index)),
        ];

        bool IsCounted(int index) => counted.Combinations.Any(combination => combination.Factors[index] != 0);
    }

    /// <summary>The model with the case that a load without one belongs to, and its index.</summary>
    private static BeamModel WithDefault(BeamDocument document, BeamModel model, out int index)
    {
        index = model.Cases.IndexOf(model.Cases.FirstOrDefault(one => one.Name == LoadCases.Default)!);
        if (index >= 0)
        {
            return model;
        }

        index = model.Cases.Length;
        ImmutableArray<LoadCase> cases = model.Cases.Add(new LoadCase(LoadCases.Default, []));
        return new BeamModel(
            model.Spans,
            model.Supports,
            model.Hinges,
            cases,
            CombinationRows.Of(document.Combinations, cases),
            model.HasAbsoluteStiffness);
    }
}
