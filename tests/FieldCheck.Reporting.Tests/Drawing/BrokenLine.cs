using System.Globalization;
using CsCheck;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;

namespace FieldCheck.Reporting.Tests.Drawing;

/// <summary>A curve of straight pieces with a jump wherever two of them do not meet: spikes, steps, anything.</summary>
/// <param name="Places">Ends of the pieces, increasing.</param>
/// <param name="Values">The value at the two ends of each piece.</param>
internal sealed record BrokenLine(double[] Places, (double Start, double End)[] Values)
{
    private static readonly Gen<double> Value =
        Gen.OneOf(Gen.Double[-20.0, 20.0], Gen.Double[-0.5, 0.5], Gen.Const(0.0));

    /// <summary>Pieces of all lengths, very short ones too, with values of both signs and level stretches.</summary>
    internal static Gen<BrokenLine> Any { get; } =
        from steps in Gen.OneOf(Gen.Double[0.001, 0.01], Gen.Double[0.1, 3.0]).Array[1, 12]
        from values in Gen.Select(Value, Value, Gen.Bool, (start, end, isLevel) => (start, isLevel ? start : end))
            .Array[steps.Length]
        from isUnbroken in Gen.Bool
        select new BrokenLine(Sums(steps), isUnbroken ? Joined(values) : values);

    internal double Length => Places[^1];

    internal double Largest => Values.Max(value => Math.Max(Math.Abs(value.Start), Math.Abs(value.End)));

    internal PlotCurve Curve(bool isLabelled = true) => new()
    {
        Length = Length,
        At = At,
        Breaks = [.. Places],
        Peaks = [.. Peaks()],
        Number = value => isLabelled ? value.ToString("+0.00;-0.00;0.00", CultureInfo.InvariantCulture) : "",
        Say = value => value.ToString("+0.00;-0.00;0.00", CultureInfo.InvariantCulture),
        Place = place => place.ToString("0.000", CultureInfo.InvariantCulture),
        Marks = [new PlotMark(0, "A"), new PlotMark(Length, "B")],
    };

    /// <summary>Ends of pieces higher, or lower, than what is left and right of them; zero past the ends.</summary>
    internal IEnumerable<Extreme> Peaks()
    {
        List<Extreme> all = [new Extreme(0, 0)];
        for (int i = 0; i < Values.Length; i++)
        {
            Add(new Extreme(Values[i].Start, Places[i]));
            Add(new Extreme(Values[i].End, Places[i + 1]));
        }

        all.Add(new Extreme(0, Length));
        return all.Where((peak, i) => i > 0 && i < all.Count - 1
            && (peak.Value - all[i - 1].Value) * (peak.Value - all[i + 1].Value) > 0);

        void Add(Extreme next)
        {
            if (next.Value != all[^1].Value)
            {
                all.Add(next);
            }
        }
    }

    private (double Left, double Right) At(double place)
    {
        int before = Array.FindLastIndex(Places, end => end < place);
        int after = Array.FindLastIndex(Places, end => end <= place);
        return (Of(before, place), Of(after, place));
    }

    private double Of(int piece, double place)
    {
        if (piece < 0 || piece >= Values.Length)
        {
            return 0;
        }

        double share = (place - Places[piece]) / (Places[piece + 1] - Places[piece]);
        return Values[piece].Start + share * (Values[piece].End - Values[piece].Start);
    }

    /// <summary>The same with every piece beginning where the last one ended, and both ends at zero.</summary>
    private static (double Start, double End)[] Joined((double Start, double End)[] values) =>
    [
        .. values.Select((value, i) => (
            i == 0 ? 0 : values[i - 1].End,
            i == values.Length - 1 ? 0 : value.End)),
    ];

    private static double[] Sums(double[] steps)
    {
        List<double> places = [0];
        places.AddRange(steps.Select((_, i) => steps[..(i + 1)].Sum()));
        return [.. places];
    }
}
