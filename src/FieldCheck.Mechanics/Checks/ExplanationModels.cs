using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Tries other beams: simple spans for continuous ones, and hinges overlooked.</summary>
internal static class ExplanationModels
{
    internal static void Try(ExplanationBeam beam, ExplanationList found)
    {
        // Neither changes what the supports carry in all.
        if (!beam.Fit.CouldFit(0))
        {
            return;
        }

        BeamModel model = beam.Model;
        if (model.Supports.Count(support => support.Across is not Restraint.None) > 1)
        {
            found.Add(new Slip.SimpleSpans(), 2, beam.On(Simple(model)));
        }

        for (int i = 0; i < model.Hinges.Length; i++)
        {
            found.Add(new Slip.HingeOverlooked(i), 3, beam.On(model with { Hinges = model.Hinges.RemoveAt(i) }));
        }

        if (model.Hinges.Length > 1)
        {
            found.Add(new Slip.HingeOverlooked(null), 3, beam.On(model with { Hinges = [] }));
        }
    }

    /// <summary>The same support elsewhere.</summary>
    internal static Support Moved(Support support, double position) => new(
        position,
        support.Along,
        support.Across,
        support.Rotation,
        support.SurfaceSlope,
        support.Settlement,
        support.ImposedRotation,
        support.Action);

    /// <summary>Every bay hinged at its two supports; overhangs stay on the outermost bays.</summary>
    private static BeamModel Simple(BeamModel model)
    {
        ImmutableArray<Support> supports = [.. model.Supports.Select(Turning)];
        double[] held =
        [
            .. supports.Where(support => support.Across is not Restraint.None).Select(support => support.Position),
        ];
        return model with { Supports = supports, Hinges = [.. held[1..^1]] };
    }

    private static Support Turning(Support support) => support.Rotation is Restraint.None
        ? support
        : new Support(
            support.Position,
            support.Along,
            support.Across,
            Restraint.Free,
            support.SurfaceSlope,
            support.Settlement,
            0,
            support.Action);
}
