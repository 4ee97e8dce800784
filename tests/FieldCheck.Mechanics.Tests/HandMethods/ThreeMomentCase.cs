using System.Collections.Immutable;
using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>Works a whole beam by the three-moment equation, with its first combination.</summary>
internal static class ThreeMomentCase
{
    internal static HandBeam Prepare(BeamModel model)
    {
        ImmutableArray<bool> touching = [.. model.Supports.Select(_ => true)];
        HandWriter writer = new(model);
        double[] cuts = [.. ThreeMomentMethod.NodesOf(model, touching, 0, model.Length), .. model.Hinges];
        LoadForces loads = LoadForces.Of(
            writer,
            model,
            model.Combinations[0].Factors,
            [.. cuts.Distinct().Order()],
            ThreeMomentMethod.CutsAlong(model, touching));
        return new HandBeam(model, touching, writer, loads);
    }

    internal static HandBeam Work(BeamModel model)
    {
        HandBeam beam = Prepare(model);
        Assert.True(ThreeMomentMethod.CanWork(beam, 0, model.Length));
        Assert.True(ThreeMomentMethod.Work(beam, 0, model.Length));
        return beam;
    }

    internal static double Vertical(this HandBeam beam, int support) => beam.Vertical[support]?.Value ?? 0;

    internal static double Couple(this HandBeam beam, int support) => beam.Couple[support]?.Value ?? 0;

    /// <summary>Numbers with names of one role, with the index of each; found by a line or by a system.</summary>
    internal static ImmutableArray<(int Index, double Value)> Named(this HandBeam beam, HandRole role) =>
    [
        .. beam.Writer.Lines
            .OfType<HandLine.Finds>()
            .Where(line => line.Number.Name?.Role == role)
            .Select(line => (line.Number.Name!.Value.Index, line.Number.Value)),
    ];

    /// <summary>The one number of a role and index.</summary>
    internal static double Value(this HandBeam beam, HandRole role, int index) =>
        beam.Named(role).Single(one => one.Index == index).Value;
}
