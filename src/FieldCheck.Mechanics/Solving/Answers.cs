using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Makes a response to keep of what the method last solved.</summary>
internal static class Answers
{
    /// <summary>The response, with its proof.</summary>
    /// <param name="method">Solved for these loads.</param>
    /// <param name="model">The beam.</param>
    /// <param name="factors">The factor of each case.</param>
    /// <param name="touching">Which supports touch.</param>
    internal static BeamResponse Of(
        StiffnessMethod method, BeamModel model, ReadOnlySpan<double> factors, ReadOnlySpan<bool> touching)
    {
        method.Trace();
        Equilibrium equilibrium = default;
        for (int i = 0; i < factors.Length; i++)
        {
            if (factors[i] != 0)
            {
                equilibrium.Add(model.Cases[i], factors[i]);
            }
        }

        ImmutableArray<Reaction>.Builder reactions = ImmutableArray.CreateBuilder<Reaction>(touching.Length);
        for (int i = 0; i < touching.Length; i++)
        {
            Support support = model.Supports[i];
            Reaction reaction = touching[i]
                ? ReactionOf(support, method.ReactionAt(method.Grid.NodeOfSupport(i)))
                : new Reaction(0, 0, 0, support.SurfaceSlope != 0 ? 0 : null, true);
            reactions.Add(reaction);
            equilibrium.Add(support.Position, reaction);
        }

        return new BeamResponse
        {
            Reactions = reactions.MoveToImmutable(),
            Proof = equilibrium.Prove(),
            HasDeflections = model.HasAbsoluteStiffness,
            Pieces = [.. method.Pieces],
        };
    }

    /// <summary>The answer to one case alone, as far as it reaches.</summary>
    /// <param name="method">Solved for it alone.</param>
    /// <param name="model">The beam.</param>
    internal static PartAnswer PartOf(StiffnessMethod method, BeamModel model)
    {
        method.Trace();
        (int first, int end) = SupportsReached(method);
        (int from, int to) = method.Reached;
        int firstPiece = method.Grid.PointOf(from);
        return new PartAnswer(
            first,
            [.. Enumerable.Range(first, end - first).Select(i => ReactionOf(method, model, i))],
            firstPiece,
            [.. method.Pieces[firstPiece..method.Grid.PointOf(to + 1)]]);
    }

    /// <summary>Reactions and the state where each element starts, as far as one case alone reaches.</summary>
    internal static PartStarts StartsOf(StiffnessMethod method, BeamModel model)
    {
        (int firstSupport, int endSupport) = SupportsReached(method);
        double[] reactions = new double[PartStarts.ASupport * (endSupport - firstSupport)];
        for (int i = firstSupport; i < endSupport; i++)
        {
            Reaction reaction = ReactionOf(method, model, i);
            int at = PartStarts.ASupport * (i - firstSupport);
            (reactions[at], reactions[at + 1], reactions[at + 2]) =
                (reaction.Horizontal, reaction.Vertical, reaction.Moment);
        }

        (int first, int last) = method.Reached;
        double[] states = new double[PartStarts.AnElement * (last - first + 1)];
        for (int i = first; i <= last; i++)
        {
            PieceEnd start = method.StartOf(i);
            int at = PartStarts.AnElement * (i - first);
            (states[at], states[at + 1], states[at + 2]) = (start.Axial, start.Shear, start.Moment);
            (states[at + 3], states[at + 4]) = (start.Turn, start.Rise);
        }

        return new PartStarts(firstSupport, reactions, first, states);
    }

    private static (int First, int End) SupportsReached(StiffnessMethod method)
    {
        (int first, int last) = method.Reached;
        return (method.Grid.SupportFrom(first), method.Grid.SupportFrom(last + 2));
    }

    private static Reaction ReactionOf(StiffnessMethod method, BeamModel model, int support) =>
        ReactionOf(model.Supports[support], method.ReactionAt(method.Grid.NodeOfSupport(support)));

    /// <summary>What a support gives: the needed force as far as it resists that movement at all.</summary>
    internal static Reaction ReactionOf(Support support, (double Right, double Up, double Turn) needed)
    {
        double moment = IfHeld(support.Rotation, needed.Turn);
        if (support.SurfaceSlope == 0)
        {
            return new Reaction(
                IfHeld(support.Along, needed.Right), IfHeld(support.Across, needed.Up), moment, null, false);
        }

        double normal = support.NormalPart(needed.Right, needed.Up);
        (double sine, double cosine) = Math.SinCos(support.SurfaceSlope);
        return new Reaction(0 - sine * normal, cosine * normal, moment, normal, false);
    }

    private static double IfHeld(Restraint restraint, double force) => restraint is Restraint.None ? 0 : force;
}
