using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks.Slips;

/// <summary>Draws beams of given spans with 2 to 5 loads, one of them permanent now and then.</summary>
internal static class SlipBeams
{
    internal static SlipBeam Draw(Random random, int spans)
    {
        double[] lengths = [.. Enumerable.Range(0, spans).Select(_ => Rounded(2 + 6 * random.NextDouble(), 0.05))];
        double length = lengths.Sum();
        Load[] loads = [.. Enumerable.Range(0, random.Next(2, 6)).Select(_ => Load(random, length))];
        int dead = random.Next(0, 2);
        return new SlipBeam { Spans = [.. lengths], Dead = [.. loads[..dead]], Live = [.. loads[dead..]] };
    }

    internal static double Rounded(double value, double unit) => Math.Round(value / unit) * unit;

    private static Load Load(Random random, double length)
    {
        double place = Place(random, length);
        switch (random.Next(10))
        {
            case < 5:
                return new Load.Point(place, Force(random));
            case 5:
                return new Load.Couple(place, Force(random));
            case < 8:
                double intensity = Force(random) / 5;
                (double from, double to) = Stretch(random, length);
                return new Load.Distributed(from, to, intensity, intensity);
            default:
                (double left, double right) = Stretch(random, length);
                return new Load.Distributed(left, right, Force(random) / 5, Force(random) / 5);
        }
    }

    private static (double From, double To) Stretch(Random random, double length)
    {
        double one = Place(random, length);
        double other = Place(random, length);
        return Math.Abs(one - other) < 0.2 ? (0, Math.Min(2, length)) : (Math.Min(one, other), Math.Max(one, other));
    }

    private static double Place(Random random, double length) =>
        Math.Min(length, Rounded(length * random.NextDouble(), 0.01));

    private static double Force(Random random) => Rounded(1000 + 19_000 * random.NextDouble(), 100);
}
