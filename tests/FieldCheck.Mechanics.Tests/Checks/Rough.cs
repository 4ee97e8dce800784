using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Figures stated as nothing within more than the beam carries, so that all that is tried is told, with what it gives.</summary>
internal static class Rough
{
    /// <summary>Some parts of the reaction at every support, support by support; every load counts once.</summary>
    internal static StatedSet Set(BeamModel model, double halfDigit, params ReactionPart[] parts) => new(
        model,
        [.. model.Cases.Select(_ => 1.0)],
        [
            .. model.Supports.SelectMany((_, support) => parts.Select(
                part => new ReactionFigure(support, part, 0, halfDigit * Said.Kilo))),
        ]);

    internal static ExplanationBeam Beam(StatedSet stated) =>
        ExplanationBeam.Of(stated, new BeamSolver(), new StiffnessMethod())!;

    /// <summary>What was tried, with what it gives in kN and kN·m, to the last Newton.</summary>
    internal static ImmutableArray<(Slip Slip, double[] Kilo)> Tried(
        StatedSet stated, Action<ExplanationBeam, ExplanationList> attempt)
    {
        ExplanationBeam beam = Beam(stated);
        ExplanationList found = new(beam.Fit);
        attempt(beam, found);
        return [.. found.Ranked().Select(one => (one.Slip, Kilo(one.Predicted)))];
    }

    internal static double[] Of(this ImmutableArray<(Slip Slip, double[] Kilo)> tried, Slip slip) =>
        Assert.Single(tried, one => one.Slip == slip).Kilo;

    internal static double[] Kilo(IEnumerable<double> figures) => [.. figures.Select(one => Math.Round(one / Said.Kilo, 3) + 0.0)];
}
