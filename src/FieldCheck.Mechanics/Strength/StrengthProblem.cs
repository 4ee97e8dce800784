using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;

namespace FieldCheck.Mechanics.Strength;

/// <summary>A beam with all that its sections, seats and deflections are held against.</summary>
/// <param name="Beam">The beam and what may happen to it.</param>
/// <param name="Members">What each span of the model is made of.</param>
/// <param name="Seats">What each support of the model bears by.</param>
public sealed record StrengthProblem(
    EnvelopeProblem Beam, ImmutableArray<Member> Members, ImmutableArray<Seat> Seats)
{
    /// <summary>
    /// Indices of the supports of which it is not said that they hold the beam down: pulled, they would have to.
    /// </summary>
    public ImmutableArray<int> Untied { get; init; } = [];

    /// <summary>The rules that strengths are judged by.</summary>
    public StrengthRules Rules { get; init; }

    /// <summary>How far the beam may deflect; null: nothing is asked.</summary>
    public DeflectionLimits? Limits { get; init; }
}
