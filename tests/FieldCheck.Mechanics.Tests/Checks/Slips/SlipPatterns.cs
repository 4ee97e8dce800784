using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks.Slips;

/// <summary>Loads on some bays only, and a support that stands elsewhere.</summary>
internal static class SlipPatterns
{
    internal static SlipDraw? Draw(Random random, SlipBeam beam)
    {
        ImmutableArray<double> joints = beam.Joints;
        bool[] isLoaded = [.. beam.Spans.Select(_ => random.Next(2) == 0)];
        ImmutableArray<Load> kept =
        [
            .. from bay in Enumerable.Range(0, isLoaded.Length)
               where isLoaded[bay]
               from load in beam.Live
               let part = Part(load, joints[bay], joints[bay + 1])
               where part is not null
               select part,
        ];
        ImmutableArray<Load> live = [.. kept, .. beam.Live.Where(load => IsAtSupport(load, joints))];
        return kept.IsEmpty
            ? null
            : new SlipDraw(beam, beam with { Live = live }, slip => slip is Slip.Pattern or Slip.LoadLeftOut);
    }

    internal static SlipDraw? MoveSupport(Random random, SlipBeam beam)
    {
        int support = random.Next(beam.Joints.Length);
        bool goesLeft = support > 0 && (support == beam.Spans.Length || random.Next(2) == 0);
        double room = beam.Spans[goesLeft ? support - 1 : support];
        double by = (0.05 + 0.15 * random.NextDouble()) * room;
        double position = beam.Joints[support] + (goesLeft ? -by : by);
        return new SlipDraw(
            beam,
            beam with { Moved = (support, position) },
            slip => slip is Slip.SupportMoved moved && moved.Support == support);
    }

    private static bool IsAtSupport(Load load, ImmutableArray<double> joints) => load switch
    {
        Load.Point point => joints.Contains(point.Position),
        Load.Couple couple => joints.Contains(couple.Position),
        _ => false,
    };

    private static Load? Part(Load load, double from, double to)
    {
        switch (load)
        {
            case Load.Point point:
                return from < point.Position && point.Position < to ? load : null;
            case Load.Couple couple:
                return from < couple.Position && couple.Position < to ? load : null;
            case Load.Distributed spread:
                double left = Math.Max(from, spread.From);
                double right = Math.Min(to, spread.To);
                return left < right ? new Load.Distributed(left, right, At(spread, left), At(spread, right)) : null;
            default:
                return null;
        }
    }

    private static double At(Load.Distributed spread, double place)
    {
        double share = (place - spread.From) / (spread.To - spread.From);
        return (1 - share) * spread.StartIntensity + share * spread.EndIntensity;
    }
}
