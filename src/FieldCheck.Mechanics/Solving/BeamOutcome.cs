using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>What came of solving a beam. Closed set: the cases are the nested records.</summary>
/// <param name="Determinacy">Unknowns against equations.</param>
public abstract record BeamOutcome(Determinacy Determinacy)
{
    /// <summary>The beam stands under every combination.</summary>
    /// <param name="Determinacy">Unknowns against equations.</param>
    /// <param name="IsHeldAlong">False: nothing holds it lengthways, and no combination asks for it.</param>
    /// <param name="Combinations">One answer for each combination of the model, in its order.</param>
    public sealed record Stands(Determinacy Determinacy, bool IsHeldAlong, ImmutableArray<CombinationResponse> Combinations)
        : BeamOutcome(Determinacy);

    /// <summary>The beam can move: a mechanism, whatever the loads (or under a force lengthways that nothing holds).</summary>
    /// <param name="Determinacy">Unknowns against equations.</param>
    /// <param name="Motions">Every independent way in which it can move; at least one.</param>
    public sealed record CanMove(Determinacy Determinacy, ImmutableArray<FreeMotion> Motions) : BeamOutcome(Determinacy);

    /// <summary>Supports that only push let go one after the other until the beam tips.</summary>
    /// <param name="Determinacy">Unknowns against equations with every support touching.</param>
    /// <param name="Combination">The first combination under which it tips.</param>
    /// <param name="LiftedOff">Indices of the supports that let go.</param>
    /// <param name="Motions">How it can move on what is left.</param>
    public sealed record Tips(
        Determinacy Determinacy,
        Combination Combination,
        ImmutableArray<int> LiftedOff,
        ImmutableArray<FreeMotion> Motions) : BeamOutcome(Determinacy);
}
