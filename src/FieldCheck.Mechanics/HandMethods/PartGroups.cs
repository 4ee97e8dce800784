using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>
/// Says before anything is worked which parts statics will leave over, by counting alone: loads must be cut there first.
/// </summary>
internal static class PartGroups
{
    /// <summary>The stretches that statics alone cannot solve, from hinge to hinge [m], left to right.</summary>
    /// <param name="model">The beam.</param>
    /// <param name="touching">True for each support that acts.</param>
    internal static ImmutableArray<(double From, double To)> LeftOver(BeamModel model, ImmutableArray<bool> touching)
    {
        HandWriter writer = new(model);
        HandBeam beam = new(model, touching, writer, LoadForces.None(writer));
        if (AlongStatics.GivesSlope(beam))
        {
            int sloped = Enumerable.Range(0, model.Supports.Length).First(beam.IsSloped);
            beam.Vertical[sloped] = HandNumber.One;
        }

        while (BeamPart.All(beam).FirstOrDefault(PartStatics.CanWork) is BeamPart part)
        {
            foreach (PartAction unknown in part.Unknowns)
            {
                beam.Keep(unknown.Name, HandNumber.One, liftsLeft: false);
            }
        }

        return Of(beam);
    }

    /// <summary>Neighbouring parts with unknowns left, together.</summary>
    internal static ImmutableArray<(double From, double To)> Of(HandBeam beam)
    {
        List<(double From, double To)> groups = [];
        foreach (BeamPart part in BeamPart.All(beam).Where(part => !part.Unknowns.IsEmpty))
        {
            if (groups is [.., var last] && last.To == part.From)
            {
                groups[^1] = (last.From, part.To);
            }
            else
            {
                groups.Add((part.From, part.To));
            }
        }

        return [.. groups];
    }
}
