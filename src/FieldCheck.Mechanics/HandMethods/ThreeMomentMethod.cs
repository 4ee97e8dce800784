using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Works a stretch of a beam that statics alone cannot solve, by the three-moment equation.</summary>
internal static class ThreeMomentMethod
{
    /// <summary>True: the stretch is within reach of the method.</summary>
    /// <param name="beam">The beam; forces in hinges at the ends of the stretch are known.</param>
    /// <param name="from">Its left end [m]: the beam's own, or a hinge.</param>
    /// <param name="to">Its right end [m]: the beam's own, or a hinge.</param>
    internal static bool CanWork(HandBeam beam, double from, double to)
    {
        int sloped = ThreeMomentSlope.Sloped(beam, from, to).Count();
        bool alongIsClear = sloped == 0
            || (sloped == 1
                && ThreeMomentSlope.Holding(beam).Count() == 1
                && ThreeMomentSlope.Sloped(beam, 0, beam.Model.Length).Count() == 1);
        return alongIsClear && (beam.Model.HasAbsoluteStiffness || !NeedsStiffness(beam, from, to));
    }

    /// <summary>Places in a stretch where loads are to be cut [m], increasing: the nodes.</summary>
    /// <param name="model">The beam.</param>
    /// <param name="touching">True for each support that acts.</param>
    /// <param name="from">Left end of the stretch [m].</param>
    /// <param name="to">Its right end [m].</param>
    internal static ImmutableArray<double> NodesOf(
        BeamModel model, ImmutableArray<bool> touching, double from, double to) =>
        ThreeMomentPlaces.Nodes(
            model, ThreeMomentPlaces.HoldingSupports(model, touching, from, to, _ => false));

    /// <summary>Places where loads along the beam are to be cut [m], increasing: none unless a surface slopes.</summary>
    /// <param name="model">The beam.</param>
    /// <param name="touching">True for each support that acts.</param>
    internal static ImmutableArray<double> CutsAlong(BeamModel model, ImmutableArray<bool> touching)
    {
        bool slopes = model.Supports.Where((_, i) => touching[i]).Any(support => support.SurfaceSlope != 0);
        return slopes ? [.. ThreeMomentSlope.Cuts(model, touching).Distinct().Order()] : [];
    }

    /// <summary>Works the stretch: support moments first, then reactions and the forces in hinges inside.</summary>
    /// <param name="beam">The beam; <see cref="CanWork"/> holds, its loads are cut at <see cref="NodesOf"/>.</param>
    /// <param name="from">Its left end [m]: the beam's own, or a hinge whose force is known.</param>
    /// <param name="to">Its right end [m]: the beam's own, or a hinge whose force is known.</param>
    /// <returns>False: what holds the stretch cannot hold it.</returns>
    internal static bool Work(HandBeam beam, double from, double to)
    {
        HandWriter writer = beam.Writer;
        writer.Begin(new HandStep.ThreeMoments(writer.Place(from), writer.Place(to), Degree(beam, from, to)));
        ThreeMomentGroup group = ThreeMomentGroup.Of(beam, from, to);
        if (group.Nodes.IsEmpty)
        {
            return false;
        }

        ThreeMomentLoading.Put(group);
        ThreeMomentUnknowns.Put(group);
        ImmutableArray<HandEquation> rows = ThreeMomentRows.Write(group);
        if (Substitution.TrySolve(writer, rows) is not Dictionary<HandName, HandNumber> found)
        {
            return false;
        }

        ThreeMomentReactions.Write(group, found);
        return true;
    }

    /// <summary>Unknowns beyond the equations: forces and couples, less two, less one for each hinge inside.</summary>
    private static int Degree(HandBeam beam, double from, double to)
    {
        ImmutableArray<int> supports = ThreeMomentPlaces.HoldingSupports(
            beam.Model, beam.Touching, from, to, i => beam.Vertical[i] is not null);
        int across = supports.Count(i => beam.HoldsAcross(i) && beam.Vertical[i] is null);
        return across + supports.Count(beam.HoldsTurn) - 2 - beam.Model.Hinges.Count(x => x > from && x < to);
    }

    private static bool NeedsStiffness(HandBeam beam, double from, double to) => ThreeMomentPlaces
        .HoldingSupports(beam.Model, beam.Touching, from, to, i => beam.Vertical[i] is not null)
        .Select(i => beam.Model.Supports[i])
        .Any(support => support.Settlement != 0
            || support.SurfaceSlope != 0
            || support.ImposedRotation != 0
            || support.Across is Restraint.Spring
            || support.Rotation is Restraint.Spring)
        || beam.Model.Spans.Any(span => span.ShearRigidity is not null);
}
