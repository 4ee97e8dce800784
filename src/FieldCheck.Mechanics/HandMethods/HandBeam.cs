using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>A beam being worked by hand under one combination: what touches, what loads it, what is found so far.</summary>
internal sealed class HandBeam
{
    /// <summary>Begins with nothing found.</summary>
    /// <param name="model">The beam.</param>
    /// <param name="touching">True for each support that acts.</param>
    /// <param name="writer">Takes the lines.</param>
    /// <param name="loads">The loads as forces, cut where the beam is taken apart.</param>
    internal HandBeam(BeamModel model, ImmutableArray<bool> touching, HandWriter writer, LoadForces loads)
    {
        Model = model;
        Touching = touching;
        Writer = writer;
        Loads = loads;
        Vertical = new HandNumber?[model.Supports.Length];
        Horizontal = new HandNumber?[model.Supports.Length];
        Couple = new HandNumber?[model.Supports.Length];
        Normal = new HandNumber?[model.Supports.Length];
        HingeForce = new HandNumber?[model.Hinges.Length];
        HingeLiftsLeft = new bool[model.Hinges.Length];
    }

    internal BeamModel Model { get; }

    internal ImmutableArray<bool> Touching { get; }

    internal HandWriter Writer { get; }

    internal LoadForces Loads { get; }

    /// <summary>Each support's force across the beam, positive up; null: not found, or not held.</summary>
    internal HandNumber?[] Vertical { get; }

    /// <summary>Each support's force along the beam, positive right; null: not found, or not held.</summary>
    internal HandNumber?[] Horizontal { get; }

    /// <summary>Each support's couple, positive counter-clockwise; null: not found, or not held.</summary>
    internal HandNumber?[] Couple { get; }

    /// <summary>Each sloped support's push square to its surface; null: not found, or not sloped.</summary>
    internal HandNumber?[] Normal { get; }

    /// <summary>Each hinge's force across; null: not found.</summary>
    internal HandNumber?[] HingeForce { get; }

    /// <summary>True: the hinge's force, positive, is up on the part to its left and down on that to its right.</summary>
    internal bool[] HingeLiftsLeft { get; }

    /// <summary>Sine and cosine of the sloped surfaces whose lines stand already.</summary>
    internal Dictionary<int, (HandNumber Sine, HandNumber Cosine)> Slopes { get; } = [];

    internal bool HoldsAcross(int support) =>
        Touching[support] && Model.Supports[support].Across is not Restraint.None;

    internal bool IsHeldAlong(int support) => Touching[support] && Model.Supports[support].Along is not Restraint.None;

    internal bool HoldsTurn(int support) => Touching[support] && Model.Supports[support].Rotation is not Restraint.None;

    internal bool IsSloped(int support) => Touching[support] && Model.Supports[support].SurfaceSlope != 0;

    /// <summary>Keeps what was found across.</summary>
    /// <param name="name">Whose it is.</param>
    /// <param name="number">What was found.</param>
    /// <param name="liftsLeft">Of a hinge force: whether, positive, it lifts the part on its left.</param>
    internal void Keep(HandName name, HandNumber number, bool liftsLeft)
    {
        switch (name.Role)
        {
            case HandRole.Vertical:
                Vertical[name.Index] = number;
                break;
            case HandRole.Couple:
                Couple[name.Index] = number;
                break;
            case HandRole.HingeForce:
                HingeForce[name.Index] = number;
                HingeLiftsLeft[name.Index] = liftsLeft;
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(name), name, "Must be a force or couple across.");
        }
    }

    /// <summary>What was found across; null: not found.</summary>
    /// <param name="name">Whose it is.</param>
    internal HandNumber? Found(HandName name) => name.Role switch
    {
        HandRole.Vertical => Vertical[name.Index],
        HandRole.Couple => Couple[name.Index],
        HandRole.HingeForce => HingeForce[name.Index],
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "Must be a force or couple across."),
    };
}
