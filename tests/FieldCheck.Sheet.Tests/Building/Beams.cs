using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Building;

/// <summary>Documents to build from, and what building them gives.</summary>
internal static class Beams
{
    internal static SupportEntry Pin { get; } = new() { Kind = "pin", Joint = "0" };

    internal static SupportEntry Roller { get; } = new() { Kind = "roller", Joint = "1" };

    /// <summary>6 m on a pin and a roller, 12 kN at 2 m.</summary>
    internal static BeamDocument Simple { get; } = new()
    {
        Spans = [new() { Length = "6 m" }],
        Supports = [Pin, Roller],
        Loads = [new() { Kind = "point", At = "2 m", Force = "12 kN" }],
    };

    /// <summary>Two spans of 4 m and 5 m on three supports, indeterminate, nothing known of its stiffness.</summary>
    internal static BeamDocument TwoSpans { get; } = new()
    {
        Spans = [new() { Length = "4 m" }, new() { Length = "5 m" }],
        Supports = [Pin, Roller, new() { Kind = "roller", Joint = "2" }],
        Loads = [new() { Kind = "distributed", Intensity = "2 kN/m" }],
    };

    internal static BeamDocument With(params LoadEntry[] loads) => Simple with { Loads = [.. loads] };

    internal static BeamDocument With(params SupportEntry[] supports) => Simple with { Supports = [.. supports] };

    internal static BeamDocument With(SectionEntry section) => Simple with { Sections = [section] };

    internal static BeamDocument With(MaterialEntry material) => Simple with { Materials = [material] };

    internal static BuiltBeam Built(BeamDocument document) => Outcome(document) switch
    {
        BuildOutcome.Built built => built.Beam,
        BuildOutcome.Refused refused => throw new InvalidOperationException(string.Join("\n", Told(refused.Problems))),
        _ => throw new InvalidOperationException(),
    };

    internal static BeamModel Model(BeamDocument document) => Built(document).Model;

    /// <summary>What is wrong with a document, as "key: text".</summary>
    internal static string[] Problems(BeamDocument document) =>
        Outcome(document) is BuildOutcome.Refused refused ? Told(refused.Problems) : [];

    /// <summary>The keys of what is wrong with a document.</summary>
    internal static string[] ProblemKeys(BeamDocument document) =>
        Outcome(document) is BuildOutcome.Refused refused ? [.. refused.Problems.Select(problem => problem.Key)] : [];

    /// <summary>The one load of the model of a simple beam with this load.</summary>
    internal static Load LoadOf(LoadEntry load) => Built(With(load)).Loads.Single().Load;

    private static BuildOutcome Outcome(BeamDocument document) =>
        ModelBuilder.Build(document, SectionCatalogue.BuiltIn());

    private static string[] Told(ImmutableArray<Problem> problems) =>
        [.. problems.Select(problem => $"{problem.Key}: {problem.Text}")];
}
