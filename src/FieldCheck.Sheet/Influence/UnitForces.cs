using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Sheet.Influence;

/// <summary>Answers to forces of one at four places of every stretch, through which its cubic goes.</summary>
internal static class UnitForces
{
    // Two nodes nearer to each other than this share of the length are one.
    private const double SamePlace = 1e-9;

    /// <summary>The stretches of an influence line; null where the beam does not stand.</summary>
    internal static ImmutableArray<CubicStretch>? Stretches(BeamModel model, InfluenceOf figure)
    {
        double[] nodes = Nodes(model, figure);
        double[] places =
        [
            .. nodes.Zip(nodes.Skip(1)).SelectMany(ends =>
                CubicStretch.Shares.ToArray().Select(share => ends.First + share * (ends.Second - ends.First))),
        ];
        if (new BeamSolver().Solve(Loaded(model, places)) is not BeamOutcome.Stands stands)
        {
            return null;
        }

        BeamResponse?[] answers = [.. stands.Cases];
        if (answers.Any(answer => answer is null))
        {
            return null;
        }

        double[] values = [.. answers.Select(answer => Value(answer!, figure, model.Length))];
        int each = CubicStretch.Shares.Length;
        return
        [
            .. Enumerable.Range(0, nodes.Length - 1)
                .Select(index => new CubicStretch(nodes[index], nodes[index + 1], values.AsSpan(each * index, each))),
        ];
    }

    private static double[] Nodes(BeamModel model, InfluenceOf figure)
    {
        double[] section = figure is InfluenceOf.Section { Position: double at } ? [at] : [];
        List<double> nodes = [];
        foreach (double place in model.JointPositions
            .Concat(model.Supports.Select(support => support.Position))
            .Concat(model.Hinges)
            .Concat(section)
            .Order())
        {
            if (nodes.Count == 0 || place - nodes[^1] > SamePlace * model.Length)
            {
                nodes.Add(place);
            }
        }

        return [.. nodes];
    }

    // The supports hold both ways, as an influence line takes them to.
    private static BeamModel Loaded(BeamModel model, double[] places) => new(
        model.Spans,
        [
            .. model.Supports.Select(support => support with
            {
                Settlement = 0, ImposedRotation = 0, Action = SupportAction.Both,
            }),
        ],
        model.Hinges,
        [.. places.Select(place => new LoadCase("unit force", [new Load.Point(place, 1)]))],
        [new Combination("each alone", CombinationBasis.Service, [.. places.Select(_ => 0.0)])],
        model.HasAbsoluteStiffness);

    private static double Value(BeamResponse response, InfluenceOf figure, double length)
    {
        if (figure is InfluenceOf.Reaction reaction)
        {
            return response.Reactions[reaction.Support].Vertical;
        }

        InfluenceOf.Section section = (InfluenceOf.Section)figure;
        (SectionState left, SectionState right) = response.At(section.Position);
        SectionState state = section.Position >= length ? left : right;
        return section.Curve == Curve.Shear ? state.Shear : state.Moment;
    }
}
