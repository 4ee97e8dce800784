using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks.Slips;

/// <summary>
/// A beam that somebody states reactions for, as data that a slip alters: altered and solved as a whole, without any
/// of the code that looks for slips.
/// </summary>
internal sealed record SlipBeam
{
    /// <summary>Own weight [N/m].</summary>
    internal const double Weight = 600;

    /// <summary>Factors of another combination in the file.</summary>
    internal const double OtherDead = 1.1;

    internal const double OtherLive = 1.55;

    internal required ImmutableArray<double> Spans { get; init; }

    internal required ImmutableArray<Load> Dead { get; init; }

    internal required ImmutableArray<Load> Live { get; init; }

    internal double DeadFactor { get; init; } = 1;

    internal double LiveFactor { get; init; } = 1;

    internal bool HasWeight { get; init; } = true;

    internal bool IsBuiltIn { get; init; }

    internal bool AreSpansSimple { get; init; }

    internal double? HingeAt { get; init; }

    /// <summary>A support that stands elsewhere, and where.</summary>
    internal (int Support, double Position)? Moved { get; init; }

    internal double Length => Joints[^1];

    internal ImmutableArray<double> Joints => new BeamModel(SpansOfModel, [], [], [], []).JointPositions;

    /// <summary>Every load but own weight, the dead ones first.</summary>
    internal ImmutableArray<Load> Loads => [.. Dead, .. Live];

    /// <summary>Index of the first of <see cref="Loads"/> over all cases of the model.</summary>
    internal int FirstLoad => HasWeight ? Spans.Length : 0;

    private ImmutableArray<Span> SpansOfModel => [.. Spans.Select((length, i) => new Span(length, 1e7 + i * 1e6, 1e9))];

    internal BeamModel Model => new(
        SpansOfModel,
        [.. Joints.Select(SupportAt)],
        AreSpansSimple ? Joints[1..^1] : HingeAt is double hinge ? [hinge] : [],
        [
            new LoadCase("dead", [.. HasWeight ? OwnWeight() : [], .. Dead]),
            new LoadCase("live", Live),
        ],
        [
            new Combination("asked", CombinationBasis.Service, [DeadFactor, LiveFactor]),
            new Combination("other", CombinationBasis.Factored, [OtherDead, OtherLive]),
        ]);

    /// <summary>
    /// The verticals of all supports, and the moment of a built-in end [N, N·m]; null: it does not stand.
    /// </summary>
    internal double[]? Figures(BeamSolver solver)
    {
        if (solver.Solve(Model) is not BeamOutcome.Stands stands)
        {
            return null;
        }

        ImmutableArray<Reaction> reactions = stands.Combinations[0].Response.Reactions;
        double[] moment = IsBuiltIn ? [reactions[0].Moment] : [];
        return [.. reactions.Select(reaction => reaction.Vertical), .. moment];
    }

    /// <summary>The same figures as somebody writes them down.</summary>
    internal StatedSet Stated(IReadOnlyList<double> figures, int digits) => new(
        Model,
        [DeadFactor, LiveFactor],
        [.. figures.Select((value, i) => Figure(i, value, digits))])
    {
        OwnWeight = HasWeight ? [.. Enumerable.Range(0, Spans.Length)] : [],
        UncountedWeight = HasWeight ? [] : [.. Spans.Select(_ => Weight)],
        PermanentCases = [0],
    };

    private ReactionFigure Figure(int index, double value, int digits)
    {
        double unit = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(1, Math.Abs(value)))) + 1 - digits);
        ReactionPart part = index < Joints.Length ? ReactionPart.Vertical : ReactionPart.Moment;
        return new ReactionFigure(index % Joints.Length, part, Math.Round(value / unit) * unit, unit / 2);
    }

    private Support SupportAt(double joint, int index)
    {
        double position = Moved is { } moved && moved.Support == index ? moved.Position : joint;
        return index > 0 ? Support.Roller(position) : IsBuiltIn ? Support.Fixed(position) : Support.Pin(position);
    }

    private IEnumerable<Load> OwnWeight() => Enumerable.Range(0, Spans.Length)
        .Select(span => new Load.Distributed(Joints[span], Joints[span + 1], Weight, Weight));
}
