using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Draws the beam free: what each support can push, and unknowns counted against equations.</summary>
internal static class FreeBody
{
    internal static void Write(HandWriter writer, BeamModel model, ImmutableArray<bool> touching, bool canMove = false)
    {
        writer.Begin(new HandStep.FreeBody());
        for (int i = 0; i < model.Supports.Length; i++)
        {
            writer.Say(new HandRemark.SupportHolds(
                i, writer.Place(model.Supports[i].Position), [.. UnknownsOf(model, i)]));
        }

        for (int i = 0; i < model.Hinges.Length; i++)
        {
            writer.Say(new HandRemark.HingeTurns(i, writer.Place(model.Hinges[i])));
        }

        WriteCount(writer, model, touching, canMove);
    }

    internal static HandRemark.Count WriteCount(
        HandWriter writer, BeamModel model, ImmutableArray<bool> touching, bool canMove = false)
    {
        int[] supports = [.. Enumerable.Range(0, model.Supports.Length).Where(i => touching[i])];
        bool isHeldAlong = supports.Any(i => model.Supports[i].HoldsAlong);
        bool countsAlong = isHeldAlong || model.Cases.SelectMany(one => one.Loads).Any(ActsAlong);
        HandRemark.Count count = new(
            [.. supports.SelectMany(i => UnknownsOf(model, i))], model.Hinges.Length, countsAlong, canMove);
        writer.Say(count);
        return count;
    }

    private static bool ActsAlong(Load load) => load
        is Load.Point { Right: not 0 }
        or Load.Distributed { ActsAlong: true, StartIntensity: not 0 }
        or Load.Distributed { ActsAlong: true, EndIntensity: not 0 };

    private static IEnumerable<HandName> UnknownsOf(BeamModel model, int index)
    {
        Support support = model.Supports[index];
        if (support.Along is not Restraint.None)
        {
            yield return new HandName(HandRole.Horizontal, index);
        }

        if (support.Across is not Restraint.None)
        {
            yield return new HandName(support.SurfaceSlope != 0 ? HandRole.Normal : HandRole.Vertical, index);
        }

        if (support.Rotation is not Restraint.None)
        {
            yield return new HandName(HandRole.Couple, index);
        }
    }
}
