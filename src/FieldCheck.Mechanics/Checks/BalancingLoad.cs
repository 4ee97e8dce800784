using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Checks;

/// <summary>The one load that the beam carries and a set of stated reactions does not, were it only one.</summary>
/// <param name="Down">Its size [N]; negative: the stated reactions carry a load down that the beam does not.</param>
/// <param name="Position">Its place [m from the left end]; may lie off the beam.</param>
/// <param name="From">The leftmost place that the rounding of the stated figures leaves [m from the left end].</param>
/// <param name="To">The rightmost such place [m from the left end].</param>
public readonly record struct BalancingLoad(double Down, double Position, double From, double To)
{
    /// <summary>The load that makes up for what two balances lack.</summary>
    /// <param name="forces">The balance across the beam; it does not close.</param>
    /// <param name="moments">The balance of moments.</param>
    /// <param name="about">The place that moments are taken about [m].</param>
    /// <param name="verticals">The stated forces.</param>
    /// <param name="couples">The stated moments.</param>
    internal static BalancingLoad Of(
        BalanceSide forces,
        BalanceSide moments,
        double about,
        ImmutableArray<StatedForce> verticals,
        ImmutableArray<StatedForce> couples)
    {
        double down = -forces.Difference;
        double turning = -moments.Difference;
        double ofCouples = couples.Sum(couple => couple.AsWritten);
        double position = about + (turning / down);
        double from = position;
        double to = position;
        foreach (double split in verticals.Select(vertical => vertical.Position).Append(double.PositiveInfinity))
        {
            foreach (int sense in (ReadOnlySpan<int>)[1, -1])
            {
                double place = about + Arm(split, sense);
                from = Math.Min(from, place);
                to = Math.Max(to, place);
            }
        }

        return new BalancingLoad(down, position, from, to);

        // The farthest places have every force left of some point off one way, and every other and the moments the other way.
        double Arm(double split, int sense)
        {
            double force = down;
            double moment = turning + (sense * ofCouples);
            foreach (StatedForce vertical in verticals)
            {
                double off = (vertical.Position < split ? sense : -sense) * vertical.AsWritten;
                force -= off;
                moment -= off * (vertical.Position - about);
            }

            return moment / force;
        }
    }
}
