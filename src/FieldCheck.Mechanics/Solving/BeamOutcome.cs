using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Solving;

/// <summary>What came of solving a beam. Closed set: the cases are the nested records.</summary>
/// <param name="Determinacy">Unknowns against equations.</param>
public abstract record BeamOutcome(Determinacy Determinacy)
{
    /// <summary>The beam stands under every combination.</summary>
    /// <param name="Determinacy">Unknowns against equations.</param>
    /// <param name="IsHeldAlong">False: nothing holds it lengthways, and no combination asks for it.</param>
    /// <param name="Combinations">One answer for each combination of the model, in its order.</param>
    public sealed record Stands(
        Determinacy Determinacy,
        bool IsHeldAlong,
        ImmutableArray<CombinationResponse> Combinations) : BeamOutcome(Determinacy)
    {
        /// <summary>One answer for each case of the model alone, factor 1, without imposed movements.</summary>
        /// <remarks>
        /// Empty when a support only pushes or only holds down: answers then do not add up. Null for a case that acts
        /// along a beam that nothing holds lengthways, and that no combination uses.
        /// </remarks>
        public ImmutableArray<BeamResponse?> Cases { get; init; } = [];

        /// <summary>
        /// The answer to settlements and imposed rotations alone; null when there are none, or answers do not add up.
        /// </summary>
        public BeamResponse? ImposedMovements { get; init; }

        /// <summary>
        /// A motion that the supports barely resist, or null: supports nearly in one place, or pushing nearly through
        /// one point.
        /// </summary>
        /// <remarks>
        /// The beam stands, but its reactions are far greater than its loads. Not looked for with over 200 hinges.
        /// </remarks>
        public FreeMotion? NearMotion { get; init; }

        /// <summary>True: the supports barely hold the beam, see <see cref="NearMotion"/>.</summary>
        public bool IsNearlyMovable => NearMotion is not null;
    }

    /// <summary>
    /// The beam can move: a mechanism, whatever the loads (or under a force lengthways that nothing holds).
    /// </summary>
    /// <param name="Determinacy">Unknowns against equations.</param>
    /// <param name="Motions">Every independent way in which it can move; at least one.</param>
    public sealed record CanMove(Determinacy Determinacy, ImmutableArray<FreeMotion> Motions)
        : BeamOutcome(Determinacy);

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

    /// <summary>No answer can be given.</summary>
    /// <param name="Determinacy">Unknowns against equations.</param>
    /// <param name="Combination">The combination in question, or null: all of them.</param>
    /// <param name="Reason">Why.</param>
    public sealed record Undecided(Determinacy Determinacy, Combination? Combination, UndecidedReason Reason)
        : BeamOutcome(Determinacy);
}
