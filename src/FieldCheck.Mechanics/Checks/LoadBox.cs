using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>All that one load may be, given what is uncertain of it.</summary>
internal sealed class LoadBox
{
    /// <summary>A spread load is never taken as shorter than this share of its length as typed [–].</summary>
    private const double ShortestShare = 0.02;

    private LoadBox(LoadIndex index, Load load, double length, ImmutableArray<InputSpread> inputs)
    {
        Index = index;
        Load = load;
        (double least, double most) = Factor(inputs);
        double start = Sum(inputs.OfType<InputSpread.StartIntensity>());
        double end = Sum(inputs.OfType<InputSpread.EndIntensity>());
        KeepsTotal = inputs.Any(input => input is InputSpread.LoadFrom { KeepsTotal: true }
            or InputSpread.LoadTo { KeepsTotal: true });
        double place = Sum(inputs.OfType<InputSpread.LoadPosition>());
        switch (load)
        {
            case Load.Point point:
                From = To = Within(point.Position, place, 0, length);
                Sizes = [(least, least), (most, most)];
                break;
            case Load.Couple couple:
                From = To = Within(couple.Position, place, 0, length);
                Sizes = [(least, least), (most, most)];
                break;
            case Load.Distributed spread:
                double middle = (spread.From + spread.To) / 2;
                double gap = ShortestShare * (spread.To - spread.From) / 2;
                From = Within(spread.From, Sum(inputs.OfType<InputSpread.LoadFrom>()), 0, middle - gap);
                To = Within(spread.To, Sum(inputs.OfType<InputSpread.LoadTo>()), middle + gap, length);
                Sizes =
                [
                    .. from factor in Both(least, most)
                       from left in Both(spread.StartIntensity - start, spread.StartIntensity + start)
                       from right in Both(spread.EndIntensity - end, spread.EndIntensity + end)
                       select (factor * left, factor * right),
                ];
                break;
            default:
                throw new UnreachableException();
        }
    }

    internal LoadIndex Index { get; }

    /// <summary>The load as typed.</summary>
    internal Load Load { get; }

    /// <summary>Where it, or its left end, may stand [m].</summary>
    internal (double Low, double High) From { get; }

    /// <summary>Where its right end may stand [m]; as <see cref="From"/> for what acts at one place.</summary>
    internal (double Low, double High) To { get; }

    /// <summary>
    /// The corners of its size: intensities at its ends [N/m], or twice the factor [–] for what acts at one place.
    /// </summary>
    internal ImmutableArray<(double Start, double End)> Sizes { get; }

    internal bool KeepsTotal { get; }

    internal bool Moves => From.Low < From.High || To.Low < To.High;

    /// <summary>
    /// Whether one end could reach the other: the ranges are cut in the middle between them, so it is no exact answer.
    /// </summary>
    internal bool IsCut { get; private init; }

    /// <summary>One for each load that has something uncertain.</summary>
    internal static ImmutableArray<LoadBox> Of(BeamModel model, ImmutableArray<InputSpread> inputs) =>
    [
        .. inputs.Select(input => (Input: input, Load: IndexOf(input)))
            .Where(pair => pair.Load is not null)
            .GroupBy(pair => pair.Load!.Value, pair => pair.Input)
            .Select(group => Of(model, group.Key, [.. group])),
    ];

    private static LoadBox Of(BeamModel model, LoadIndex index, ImmutableArray<InputSpread> inputs)
    {
        Load load = model.Cases[index.Case].Loads[index.Load];
        bool isCut = load is Load.Distributed spread
            && Sum(inputs.Where(input => input is InputSpread.LoadFrom or InputSpread.LoadTo))
                >= (spread.To - spread.From) / 2;
        return new LoadBox(index, load, model.Length, inputs) { IsCut = isCut };
    }

    internal static LoadIndex? IndexOf(InputSpread input) => input switch
    {
        InputSpread.LoadSize size => size.Load,
        InputSpread.StartIntensity start => start.Load,
        InputSpread.EndIntensity end => end.Load,
        InputSpread.LoadPosition position => position.Load,
        InputSpread.LoadFrom from => from.Load,
        InputSpread.LoadTo to => to.Load,
        _ => null,
    };

    /// <summary>The factors multiply; a share beyond 1 turns the load round, so every corner is looked at.</summary>
    private static (double Least, double Most) Factor(ImmutableArray<InputSpread> inputs)
    {
        (double least, double most) = (1, 1);
        foreach (InputSpread.LoadSize size in inputs.OfType<InputSpread.LoadSize>())
        {
            double[] corners =
            [
                least * (1 - size.Share), least * (1 + size.Share), most * (1 - size.Share), most * (1 + size.Share),
            ];
            (least, most) = (corners.Min(), corners.Max());
        }

        return (least, most);
    }

    private static double Sum(IEnumerable<InputSpread> inputs) => inputs.Sum(input => input.HalfWidth);

    private static double[] Both(double low, double high) => low == high ? [low] : [low, high];

    /// <summary>A range about a place, cut to a stretch but never so that the place itself falls out.</summary>
    private static (double Low, double High) Within(double at, double half, double low, double high) =>
        (Math.Max(at - half, Math.Min(at, low)), Math.Min(at + half, Math.Max(at, high)));
}
