using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Strength;

/// <summary>
/// What all situations ask of a beam. It serves every choice of strengths, seats and limits, and every choice of sections
/// that leaves the rigidities and the weights as they are.
/// </summary>
internal sealed class BeamDemands(EnvelopeProblem problem, ImmutableArray<Envelope> envelopes, BeamSolver solver)
{
    private readonly BasisDemands[] _bases =
    [
        .. Enum.GetValues<CombinationBasis>().Select(basis => new BasisDemands(
            problem, basis, envelopes.IsDefault ? null : envelopes.FirstOrDefault(one => one.Basis == basis), solver)),
    ];

    internal EnvelopeProblem Problem => problem;

    internal BeamSolver Solver => solver;

    internal Bays Bays { get; } = Bays.Of(problem.Model);

    /// <summary>A beam without movements imposed on it, but for gaps below supports that act one way.</summary>
    internal static BeamModel Still(BeamModel model) => model with
    {
        Supports =
        [
            .. model.Supports.Select(one => one with
            {
                Settlement = one.Action == SupportAction.Both ? 0 : one.Settlement,
                ImposedRotation = 0,
            }),
        ],
    };

    /// <summary>A beam without movements imposed on it whose supports all act both ways.</summary>
    internal static BeamModel HeldDown(BeamModel model) => model with
    {
        Supports = [.. model.Supports.Select(one => one with { Action = SupportAction.Both, Settlement = 0, ImposedRotation = 0 })],
    };

    internal BasisDemands Of(CombinationBasis basis) => _bases[(int)basis];

    /// <summary>Demands of the same beam under other combinations or loads, of one basis.</summary>
    internal BasisDemands Of(CombinationBasis basis, EnvelopeProblem other) => new(
        other, basis, EnvelopeSearch.Find(other, solver).FirstOrDefault(one => one.Basis == basis), solver);
}
