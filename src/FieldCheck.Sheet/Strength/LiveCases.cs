using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Strength;

/// <summary>Which cases hold loads that may grow.</summary>
internal static class LiveCases
{
    private const string Dead = "dead";

    /// <summary>For each case of the model: all but dead and that of the own weight.</summary>
    internal static ImmutableArray<bool> Of(BeamDocument document, BeamModel model) =>
        [.. model.Cases.Select(one => one.Name != Dead && one.Name != document.SelfWeight?.Case)];

    /// <summary>The model with the case that a load without one belongs to, and its index.</summary>
    internal static BeamModel WithDefault(BeamDocument document, BeamModel model, out int index)
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
