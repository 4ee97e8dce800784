using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>A beam, and what of its loads may stand or not, or move.</summary>
/// <param name="Model">
/// The beam with every case that a load, a pattern or a rolling load names, and the combinations asked for.
/// </param>
/// <param name="PatternCases">
/// Indices of the cases whose loads may stand or not stand on each bay and overhang; none twice; may be empty.
/// </param>
/// <param name="Rolling">The rolling loads, of which at most one is on the beam at a time; may be empty.</param>
/// <exception cref="ArgumentException">A case that is named is not in the model, or is named twice.</exception>
public sealed record EnvelopeProblem(
    BeamModel Model, ImmutableArray<int> PatternCases, ImmutableArray<RollingLoad> Rolling)
{
    /// <summary>Indices of the cases whose loads may stand or not stand on each bay and overhang.</summary>
    public ImmutableArray<int> PatternCases { get; } = CheckCases(PatternCases, Model);

    /// <summary>The rolling loads, of which at most one is on the beam at a time.</summary>
    public ImmutableArray<RollingLoad> Rolling { get; } = CheckRolling(Rolling, Model);

    private static ImmutableArray<int> CheckCases(ImmutableArray<int> cases, BeamModel model)
    {
        Require.Given(cases, nameof(PatternCases));
        Require.That(cases.All(one => IsIn(one, model)), "A pattern must be of a case of the model.", nameof(PatternCases));
        Require.That(
            cases.Distinct().Count() == cases.Length, "A case must be named once only.", nameof(PatternCases));
        return cases;
    }

    private static ImmutableArray<RollingLoad> CheckRolling(ImmutableArray<RollingLoad> rolling, BeamModel model)
    {
        Require.Given(rolling, nameof(Rolling));
        Require.That(
            rolling.All(one => IsIn(one.Case, model)), "A rolling load must be of a case of the model.", nameof(Rolling));
        return rolling;
    }

    private static bool IsIn(int loadCase, BeamModel model) => loadCase >= 0 && loadCase < model.Cases.Length;
}
