using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Model;

/// <summary>A straight beam in SI units: what the solver reads, and all that it reads.</summary>
/// <remarks>
/// x runs right from the left end. Positions are taken as equal only when they are the same number, so whoever
/// builds the model gives a support at a joint exactly that joint's position, <see cref="JointPositions"/>.
/// </remarks>
/// <param name="Spans">Left to right, one or more.</param>
/// <param name="Supports">In order of position, no two at one place; may be empty.</param>
/// <param name="Hinges">
/// Positions of internal moment releases [m], increasing, inside the beam, none at a support that resists rotation; may
/// be empty.
/// </param>
/// <param name="Cases">The load cases; may be empty.</param>
/// <param name="Combinations">The combinations asked for; each has one factor a case.</param>
/// <param name="HasAbsoluteStiffness">
/// False: rigidities are ratios only, so slopes and deflections mean nothing.
/// </param>
/// <exception cref="ArgumentException">The order, a place or a count breaks what is said above.</exception>
public sealed record BeamModel(
    ImmutableArray<Span> Spans,
    ImmutableArray<Support> Supports,
    ImmutableArray<double> Hinges,
    ImmutableArray<LoadCase> Cases,
    ImmutableArray<Combination> Combinations,
    bool HasAbsoluteStiffness = true)
{
    /// <summary>Left to right, one or more.</summary>
    public ImmutableArray<Span> Spans { get; } = Spans;

    /// <summary>Positions of the n + 1 joints of n spans [m]: 0 first, the beam's length last.</summary>
    public ImmutableArray<double> JointPositions { get; } =
        BeamRules.Check(Joints(Require.NotEmpty(Spans)), Supports, Hinges, Cases, Combinations);

    /// <summary>Length of the beam [m].</summary>
    public double Length => JointPositions[^1];

    /// <summary>Where the elements of the beam meet, left to right, none twice [m]: joints, supports and hinges.</summary>
    internal ImmutableArray<double> NodePositions() =>
    [
        .. JointPositions.Concat(Supports.Select(support => support.Position)).Concat(Hinges).Distinct().Order(),
    ];

    private static ImmutableArray<double> Joints(ImmutableArray<Span> spans)
    {
        ImmutableArray<double>.Builder joints = ImmutableArray.CreateBuilder<double>(spans.Length + 1);
        joints.Add(0);
        foreach (Span span in spans)
        {
            joints.Add(joints[^1] + span.Length);
        }

        return joints.MoveToImmutable();
    }
}
