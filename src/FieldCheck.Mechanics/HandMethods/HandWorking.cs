using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>
/// The reactions of a beam worked as a person would, line by line: a second opinion, which shares only the model with
/// the solver.
/// </summary>
/// <param name="Lines">The lines, in order.</param>
/// <param name="Reactions">One for each support of the model, in its order.</param>
/// <param name="Reach">How far it came.</param>
public sealed record HandWorking(
    ImmutableArray<HandLine> Lines, ImmutableArray<HandReaction> Reactions, HandReach Reach)
{
    /// <summary>Works a beam under one combination.</summary>
    /// <param name="model">The beam.</param>
    /// <param name="factors">The factor of each case [–].</param>
    /// <param name="about">
    /// The point to take moments about [m from the left end]; null: the one that leaves fewest unknowns.
    /// </param>
    /// <param name="lifted">
    /// Supports that are out from the start, one for each support; default: they are found by trying.
    /// </param>
    /// <exception cref="ArgumentException">The number of factors is not that of the cases.</exception>
    public static HandWorking Of(
        BeamModel model, ImmutableArray<double> factors, double? about = null, ImmutableArray<bool> lifted = default)
    {
        ArgumentNullException.ThrowIfNull(model);
        Require.That(factors.Length == model.Cases.Length, "One factor for each case.", nameof(factors));
        return new HandRounds(model, factors, about).Work(lifted);
    }

    /// <summary>Sets a beam free and counts, and goes no further.</summary>
    /// <param name="model">The beam.</param>
    /// <param name="canMove">True: it is known that it can move, whatever the count.</param>
    public static HandWorking FreeBodyOf(BeamModel model, bool canMove)
    {
        ArgumentNullException.ThrowIfNull(model);
        HandWriter writer = new(model);
        FreeBody.Write(writer, model, [.. model.Supports.Select(_ => true)], canMove);
        return new HandWorking(writer.Lines, [], HandReach.CanMove);
    }

    /// <summary>Puts reactions that were found elsewhere to the proof, for a beam that these methods cannot solve.</summary>
    /// <param name="model">The beam.</param>
    /// <param name="factors">The factor of each case [–].</param>
    /// <param name="reactions">One for each support of the model.</param>
    /// <param name="lifted">True for each support that has let go.</param>
    /// <param name="about">The point to take moments about [m from the left end]; null: any.</param>
    public static HandWorking Prove(
        BeamModel model,
        ImmutableArray<double> factors,
        ImmutableArray<GivenReaction> reactions,
        ImmutableArray<bool> lifted,
        double? about = null)
    {
        ArgumentNullException.ThrowIfNull(model);
        Require.That(reactions.Length == model.Supports.Length, "One reaction for each support.", nameof(reactions));
        HandWriter writer = new(model);
        ImmutableArray<bool> touching = [.. lifted.Select(one => !one)];
        FreeBody.Write(writer, model, touching);
        Compatibility.Write(writer, model, factors, reactions, touching, about);
        return new HandWorking(
            writer.Lines, [.. lifted.Select(one => new HandReaction(null, null, null, null, one))], HandReach.Partial);
    }
}
