using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Solves beams. It keeps its working memory from one solve to the next; one instance a thread.</summary>
public sealed class BeamSolver
{
    /// <summary>Solves a beam for every combination that its model asks for.</summary>
    /// <param name="model">The beam.</param>
    public BeamOutcome Solve(BeamModel model) => throw new NotImplementedException();

    /// <summary>Counts unknowns against equations without solving; needs no stiffness.</summary>
    /// <param name="model">The beam.</param>
    public static Determinacy DeterminacyOf(BeamModel model) => throw new NotImplementedException();
}
