using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Sheet.Influence;

/// <summary>Influence lines of a beam as typed.</summary>
public static class InfluenceLines
{
    /// <summary>What a force of one, down, does to a figure wherever it stands; supports hold both ways.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="figure">The figure.</param>
    /// <returns>Null where the beam does not stand.</returns>
    public static InfluenceLine? Of(BuiltBeam beam, InfluenceOf figure)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(figure);
        return figure switch
        {
            InfluenceOf.Reaction reaction => InfluenceLine.OfReaction(beam.Model, reaction.Support, new BeamSolver()),
            InfluenceOf.Section section => InfluenceLine.Of(
                beam.Model,
                section.Curve,
                section.Position,
                section.Position < beam.Model.Length ? Side.Right : Side.Left,
                new BeamSolver()),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
