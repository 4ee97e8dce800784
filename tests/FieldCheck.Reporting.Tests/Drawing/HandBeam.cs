using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;

namespace FieldCheck.Reporting.Tests.Drawing;

/// <summary>A spread load of constant intensity [N/m] from one place to another [m].</summary>
internal sealed record Spread(double From, double To, double Intensity);

/// <summary>A force [N] at a place [m].</summary>
internal sealed record Force(double At, double Down);

/// <summary>
/// A beam on two supports by hand statics, so that the pictures can be tested without the solver: V is summed from the
/// left, M is the area under V.
/// </summary>
internal sealed class HandBeam
{
    private const double Rounding = 1e-6;
    private readonly Spread[] _spreads;
    private readonly Force[] _forces;

    internal HandBeam(double length, double a, double b, Spread[] spreads, Force[] forces)
    {
        Length = length;
        A = a;
        B = b;
        _spreads = spreads;
        double total = spreads.Sum(s => s.Intensity * (s.To - s.From)) + forces.Sum(f => f.Down);
        double turning = spreads.Sum(s => s.Intensity * (s.To - s.From) * ((s.From + s.To) / 2 - a))
            + forces.Sum(f => f.Down * (f.At - a));
        ReactionB = turning / (b - a);
        ReactionA = total - ReactionB;
        _forces = [.. forces, new Force(a, -ReactionA), new Force(b, -ReactionB)];
        Breaks =
        [
            .. new[] { 0, length }
                .Concat(_forces.Select(f => f.At))
                .Concat(spreads.SelectMany(s => new[] { s.From, s.To }))
                .Distinct()
                .Order(),
        ];
    }

    internal double Length { get; }

    internal double A { get; }

    internal double B { get; }

    internal double ReactionA { get; }

    internal double ReactionB { get; }

    internal ImmutableArray<double> Breaks { get; }

    /// <summary>The beam seen from its other side.</summary>
    internal HandBeam Mirrored() => new(
        Length,
        Length - B,
        Length - A,
        [.. _spreads.Select(s => new Spread(Length - s.To, Length - s.From, s.Intensity))],
        [.. _forces[..^2].Select(f => new Force(Length - f.At, f.Down))]);

    internal (double Left, double Right) Shear(double x)
    {
        double spread = _spreads.Sum(s => s.Intensity * Math.Clamp(x - s.From, 0, s.To - s.From));
        double left = -spread - _forces.Where(f => f.At < x).Sum(f => f.Down);
        double right = -spread - _forces.Where(f => f.At <= x).Sum(f => f.Down);
        return (x <= 0 ? 0 : left, x >= Length ? 0 : right);
    }

    internal (double Left, double Right) Moment(double x)
    {
        double moment = -_forces.Where(f => f.At < x).Sum(f => f.Down * (x - f.At));
        foreach (Spread s in _spreads.Where(s => s.From < x))
        {
            double to = Math.Min(x, s.To);
            moment -= s.Intensity * (to - s.From) * (x - (s.From + to) / 2);
        }

        double clean = x <= 0 || x >= Length ? 0 : moment;
        return (clean, clean);
    }

    internal PlotCurve ShearCurve() => Curve(Shear, Breaks, ShearZeros(), "shear, kN (+ = left part pushed up)");

    internal PlotCurve MomentCurve(bool isSagDown = false) =>
        Curve(Moment, [.. Breaks.Concat(ShearZeros()).Order()], MomentZeros(), "moment, kNm") with
        {
            IsPositiveDown = isSagDown,
        };

    private double[] ShearZeros() => Zeros(Shear);

    private double[] MomentZeros()
    {
        double[] marks = [.. Breaks.Concat(ShearZeros()).Order()];
        return Zeros(Moment, marks);
    }

    private double[] Zeros(Func<double, (double Left, double Right)> at, double[]? marks = null)
    {
        marks ??= [.. Breaks];
        List<double> zeros = [];
        foreach ((double from, double to) in marks.Zip(marks.Skip(1)))
        {
            if (at(from).Right * at(to).Left < 0)
            {
                zeros.Add(Bisect(at, from, to));
            }
        }

        return [.. zeros];
    }

    private static double Bisect(Func<double, (double Left, double Right)> at, double from, double to)
    {
        double low = from;
        double high = to;
        int sign = Math.Sign(at(from).Right);
        for (int i = 0; i < 200; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Math.Sign(at(middle).Left) == sign ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private PlotCurve Curve(
        Func<double, (double Left, double Right)> at,
        ImmutableArray<double> marks,
        double[] zeros,
        string heading) => new()
        {
            Length = Length,
            At = at,
            Breaks = Breaks,
            Peaks = LocalExtremes(marks, at),
            Zeros = [.. zeros],
            Negligible = Rounding,
            Marks = [new PlotMark(A, "A"), new PlotMark(B, "B")],
            Edge = [.. heading.Split(" (")[0].Split(", ")],
            Heading = heading,
            Number = Signed,
            Say = Signed,
            Place = Place,
        };

    private static ImmutableArray<Extreme> LocalExtremes(
        ImmutableArray<double> marks, Func<double, (double Left, double Right)> at)
    {
        List<Extreme> all = [new Extreme(0, 0)];
        IEnumerable<Extreme> sides =
            marks.SelectMany(x => new[] { new Extreme(at(x).Left, x), new Extreme(at(x).Right, x) });
        foreach (Extreme next in sides)
        {
            if (Math.Abs(next.Value - all[^1].Value) > Rounding)
            {
                all.Add(next);
            }
        }

        all.Add(new Extreme(0, marks[^1]));
        return
        [
            .. all.Where((extreme, i) => i > 0 && i < all.Count - 1
                && (extreme.Value - all[i - 1].Value) * (extreme.Value - all[i + 1].Value) > 0),
        ];
    }

    private string Place(double x) =>
        x == A ? "A" : x == B ? "B" : x.ToString("0.00 m", CultureInfo.InvariantCulture);

    private static string Signed(double value)
    {
        // Through decimal, so that 13.575 rounds as a person would round it.
        decimal rounded = Math.Round((decimal)value / 1000, 2, MidpointRounding.AwayFromZero);
        return rounded.ToString("+0.00;-0.00;0.00", CultureInfo.InvariantCulture);
    }
}
