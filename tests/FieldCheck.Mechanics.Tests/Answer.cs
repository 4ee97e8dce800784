using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests;

/// <summary>Solves a beam that must stand.</summary>
internal static class Answer
{
    internal static BeamResponse To(BeamModel model) => ToAll(model)[0];

    internal static BeamResponse[] ToAll(BeamModel model)
    {
        BeamOutcome.Stands stands = Assert.IsType<BeamOutcome.Stands>(new BeamSolver().Solve(model));
        Assert.Equal(model.Combinations.Length, stands.Combinations.Length);
        return [.. stands.Combinations.Select(answer => answer.Response)];
    }

    internal static double Of(Curve curve, SectionState state) => curve switch
    {
        Curve.Axial => state.Axial,
        Curve.Shear => state.Shear,
        Curve.Moment => state.Moment,
        Curve.Slope => state.Slope,
        Curve.Deflection => state.Deflection,
        _ => throw new ArgumentOutOfRangeException(nameof(curve), curve, "Not a curve."),
    };
}
