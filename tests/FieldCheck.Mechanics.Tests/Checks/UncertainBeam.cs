using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Draws what is uncertain of a beam, and beams out of that: written apart from the code it holds to account.</summary>
internal static class UncertainBeam
{
    private const int MostInputs = 10;

    /// <summary>Up to ten inputs of loads and movements, each at most once, in no order.</summary>
    internal static ImmutableArray<InputSpread> Inputs(BeamModel model, Random random)
    {
        List<InputSpread> all = [];
        for (int c = 0; c < model.Cases.Length; c++)
        {
            for (int i = 0; i < model.Cases[c].Loads.Length; i++)
            {
                all.AddRange(OfLoad(model.Cases[c].Loads[i], new LoadIndex(c, i), random));
            }
        }

        for (int s = 0; s < model.Supports.Length; s++)
        {
            if (model.Supports[s].Across is not Restraint.None)
            {
                all.Add(new InputSpread.Settlement(s, random.NextDouble() / 500));
            }
        }

        all.Add(new InputSpread.AllLoads(random.NextDouble() / 10));
        InputSpread[] drawn = [.. all];
        random.Shuffle(drawn);
        return [.. drawn.Take(random.Next(1, MostInputs + 1))];
    }

    /// <summary>Offsets inside the ranges, a good part of them at an end.</summary>
    internal static ImmutableArray<double> Offsets(ImmutableArray<InputSpread> inputs, Random random) =>
        [.. inputs.Select(input => input.HalfWidth * (random.Next(3) == 0 ? random.Next(2) * 2 - 1 : random.NextDouble() * 2 - 1))];

    /// <summary>Every input at one of its ends, in all ways.</summary>
    internal static IEnumerable<ImmutableArray<double>> Vertices(ImmutableArray<InputSpread> inputs) =>
        Enumerable.Range(0, 1 << inputs.Length).Select(vertex => ImmutableArray.CreateRange(
            inputs.Select((input, i) => (vertex >> i & 1) == 0 ? -input.HalfWidth : input.HalfWidth)));

    /// <summary>The beam with its inputs off by so much; null where a load's ends meet.</summary>
    internal static BeamModel? Altered(
        BeamModel model, ImmutableArray<InputSpread> inputs, ImmutableArray<double> offsets)
    {
        Load[][] loads = [.. model.Cases.Select(one => one.Loads.ToArray())];
        Support[] supports = [.. model.Supports];
        double scale = 1;
        for (int i = 0; i < inputs.Length; i++)
        {
            double off = offsets[i];
            switch (inputs[i])
            {
                case InputSpread.AllLoads:
                    scale += off;
                    break;
                case InputSpread.Settlement one:
                    supports[one.Support] = supports[one.Support] with
                    {
                        Settlement = supports[one.Support].Settlement + off,
                    };
                    break;
                case InputSpread input:
                    LoadIndex at = IndexOf(input);
                    if (Altered(loads[at.Case][at.Load], input, off, model.Length) is not Load altered)
                    {
                        return null;
                    }

                    loads[at.Case][at.Load] = altered;
                    break;
            }
        }

        return new BeamModel(
            model.Spans,
            [.. supports],
            model.Hinges,
            [.. loads.Select(one => new LoadCase("", [.. one]))],
            [new Combination("", CombinationBasis.Service, [.. model.Combinations[0].Factors.Select(f => f * scale)])]);
    }

    internal static LoadIndex IndexOf(InputSpread input) => input switch
    {
        InputSpread.LoadSize one => one.Load,
        InputSpread.LoadPosition one => one.Load,
        InputSpread.LoadFrom one => one.Load,
        InputSpread.LoadTo one => one.Load,
        InputSpread.StartIntensity one => one.Load,
        InputSpread.EndIntensity one => one.Load,
        _ => new LoadIndex(-1, -1),
    };

    private static IEnumerable<InputSpread> OfLoad(Load load, LoadIndex index, Random random)
    {
        double place = random.Next(1, 12) * RandomBeam.Grid / 2;
        switch (load)
        {
            case Load.Distributed spread:
                double half = Math.Min(place, (spread.To - spread.From) / 5);
                bool isEven = spread.StartIntensity == spread.EndIntensity;
                bool keepsTotal = isEven && random.Next(3) == 0;
                yield return new InputSpread.LoadFrom(index, half, keepsTotal);
                yield return new InputSpread.LoadTo(index, half / 2, keepsTotal);
                if (isEven)
                {
                    yield return new InputSpread.LoadSize(index, random.NextDouble() / 4);
                }
                else
                {
                    yield return new InputSpread.StartIntensity(index, random.NextDouble() * 200);
                    yield return new InputSpread.EndIntensity(index, random.NextDouble() * 200);
                }

                break;
            default:
                yield return new InputSpread.LoadPosition(index, place);
                yield return new InputSpread.LoadSize(index, random.NextDouble() / 4);
                break;
        }
    }

    /// <summary>Sizes are altered after places, so that shares and widths mean what they say in any order.</summary>
    internal static Load? Altered(Load load, InputSpread input, double off, double length) => (load, input) switch
    {
        (Load.Point one, InputSpread.LoadSize) => new Load.Point(
            one.Position, one.Down * (1 + off), one.Right * (1 + off)),
        (Load.Point one, _) => new Load.Point(Math.Clamp(one.Position + off, 0, length), one.Down, one.Right),
        (Load.Couple one, InputSpread.LoadSize) => new Load.Couple(one.Position, one.Moment * (1 + off), one.Side),
        (Load.Couple one, _) => new Load.Couple(Math.Clamp(one.Position + off, 0, length), one.Moment, one.Side),
        (Load.Distributed one, InputSpread.LoadSize) => Spread(
            one, one.From, one.To, one.StartIntensity * (1 + off), one.EndIntensity * (1 + off)),
        (Load.Distributed one, InputSpread.StartIntensity) => Spread(
            one, one.From, one.To, one.StartIntensity + off, one.EndIntensity),
        (Load.Distributed one, InputSpread.EndIntensity) => Spread(
            one, one.From, one.To, one.StartIntensity, one.EndIntensity + off),
        (Load.Distributed one, InputSpread.LoadFrom end) => Stretched(
            one, Math.Max(0, one.From + off), one.To, end.KeepsTotal),
        (Load.Distributed one, InputSpread.LoadTo end) => Stretched(
            one, one.From, Math.Min(length, one.To + off), end.KeepsTotal),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static Load.Distributed? Stretched(Load.Distributed load, double from, double to, bool keepsTotal)
    {
        double thinned = keepsTotal ? (load.To - load.From) / (to - from) : 1;
        return Spread(load, from, to, load.StartIntensity * thinned, load.EndIntensity * thinned);
    }

    private static Load.Distributed? Spread(Load.Distributed load, double from, double to, double start, double end) =>
        from < to ? new Load.Distributed(from, to, start, end, load.ActsAlong) : null;
}
