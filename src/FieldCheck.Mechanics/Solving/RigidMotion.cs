using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Makes the parts that move, and the places they turn about, of the rises of the ends and hinges.</summary>
internal static class RigidMotion
{
    /// <summary>What counts as standing still, relative to the greatest movement [–].</summary>
    private const double Still = 1e-9;

    /// <summary>A motion.</summary>
    /// <param name="supports">The supports, which a centre that comes out beside one is meant to be.</param>
    /// <param name="ends">Places of the ends and hinges [m], n + 1 of them.</param>
    /// <param name="rises">Their rises, in any one scale.</param>
    /// <param name="shift">The movement along, in the same scale.</param>
    internal static FreeMotion Of(
        ImmutableArray<Support> supports, ReadOnlySpan<double> ends, ReadOnlySpan<double> rises, double shift)
    {
        double greatest = Math.Abs(shift);
        foreach (double rise in rises)
        {
            greatest = Math.Max(greatest, Math.Abs(rise));
        }

        double still = Still * greatest;
        ImmutableArray<MovingPart>.Builder parts = ImmutableArray.CreateBuilder<MovingPart>();
        for (int i = 0; i + 1 < ends.Length; i++)
        {
            double turn = rises[i + 1] - rises[i];
            if (Math.Abs(rises[i]) > still || Math.Abs(rises[i + 1]) > still)
            {
                double? centre = Math.Abs(turn) <= still ? null : ends[i] - rises[i] / turn * (ends[i + 1] - ends[i]);
                centre = centre is double near ? Settled(near, supports, ends) : null;
                parts.Add(new MovingPart(ends[i], ends[i + 1], centre));
            }
        }

        return new FreeMotion(Math.Abs(shift) > still, parts.ToImmutable());
    }

    /// <summary>The centre, moved to a support, a hinge or an end from which only rounding parts it.</summary>
    private static double Settled(double centre, ImmutableArray<Support> supports, ReadOnlySpan<double> ends)
    {
        double near = Still * (ends[^1] - ends[0]);
        int low = 0;
        int high = supports.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = supports[middle].Position < centre - near ? (middle + 1, high) : (low, middle);
        }

        if (low < supports.Length && supports[low].Position <= centre + near)
        {
            return supports[low].Position;
        }

        foreach (double end in ends)
        {
            if (Math.Abs(end - centre) <= near)
            {
                return end;
            }
        }

        return centre;
    }
}
