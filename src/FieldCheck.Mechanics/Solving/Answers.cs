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

    /// <summary>Reactions and the state where each element starts, as <see cref="PartAnswers.Starts"/> says.</summary>
    internal static double[] StartsOf(StiffnessMethod method, BeamModel model)
    {
        int supports = model.Supports.Length;
        double[] starts = new double[PartAnswers.ASupport * supports + PartAnswers.AnElement * method.Grid.ElementCount];
        for (int i = 0; i < supports; i++)
        {
            Reaction reaction = ReactionOf(model.Supports[i], method.ReactionAt(method.Grid.NodeOfSupport(i)));
            starts[PartAnswers.ASupport * i] = reaction.Horizontal;
            starts[PartAnswers.ASupport * i + 1] = reaction.Vertical;
            starts[PartAnswers.ASupport * i + 2] = reaction.Moment;
        }

        for (int i = 0; i < method.Grid.ElementCount; i++)
        {
            PieceEnd start = method.StartOf(i);
            int at = PartAnswers.ASupport * supports + PartAnswers.AnElement * i;
            (starts[at], starts[at + 1], starts[at + 2]) = (start.Axial, start.Shear, start.Moment);
            (starts[at + 3], starts[at + 4]) = (start.Turn, start.Rise);
        }

        return starts;
    }

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
