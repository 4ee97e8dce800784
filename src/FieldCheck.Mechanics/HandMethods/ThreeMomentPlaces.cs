using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Where the nodes of the three-moment equation lie.</summary>
internal static class ThreeMomentPlaces
{
    /// <summary>True: what stands at a place belongs to a stretch; at a hinge, to the stretch on its left.</summary>
    internal static bool Holds(double from, double to, double position) =>
        position <= to && (from == 0 ? position >= from : position > from);

    /// <summary>Supports of a stretch that resist turning, or hold across with a force not known yet.</summary>
    internal static ImmutableArray<int> HoldingSupports(
        BeamModel model, ImmutableArray<bool> touching, double from, double to, Func<int, bool> isKnown) =>
    [
        .. Enumerable.Range(0, model.Supports.Length).Where(i =>
            touching[i]
            && Holds(from, to, model.Supports[i].Position)
            && (model.Supports[i].Rotation is not Restraint.None
                || (model.Supports[i].Across is not Restraint.None && !isKnown(i)))),
    ];

    /// <summary>Nodes between the outermost of some supports [m], these included, increasing.</summary>
    internal static ImmutableArray<double> Nodes(BeamModel model, ImmutableArray<int> supports)
    {
        double[] held = [.. supports.Select(support => model.Supports[support].Position)];
        return held.Length == 0
            ? []
            :
            [
                .. model.Hinges.Concat(Changes(model, HasAnotherRigidity))
                    .Where(x => x > held[0] && x < held[^1])
                    .Concat(held)
                    .Distinct()
                    .Order(),
            ];
    }

    /// <summary>Joints where the sections left and right differ [m].</summary>
    internal static IEnumerable<double> Changes(BeamModel model, Func<Span, Span, bool> differ) => Enumerable
        .Range(1, model.Spans.Length - 1)
        .Where(i => differ(model.Spans[i - 1], model.Spans[i]))
        .Select(i => model.JointPositions[i]);

    private static bool HasAnotherRigidity(Span one, Span other) =>
        one.FlexuralRigidity != other.FlexuralRigidity || one.ShearRigidity != other.ShearRigidity;
}
