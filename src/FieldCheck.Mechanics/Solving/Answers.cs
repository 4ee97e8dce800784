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
