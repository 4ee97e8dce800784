using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>A model with its loads and movements off by so much.</summary>
internal static class LoadAlterations
{
    /// <summary>Takes what is uncertain of loads and movements somewhere in its range.</summary>
    /// <param name="model">The beam.</param>
    /// <param name="inputs">What is uncertain; what changes the beam itself is passed over.</param>
    /// <param name="offsets">How far each input is off, in its own unit.</param>
    /// <returns>The beam; null where the ends of a load meet.</returns>
    internal static BeamModel? Apply(
        BeamModel model, ImmutableArray<InputSpread> inputs, ImmutableArray<double> offsets)
    {
        Dictionary<LoadIndex, List<(InputSpread Input, double Offset)>> ofLoads = [];
        double scale = 1;
        ImmutableArray<Support>.Builder supports = model.Supports.ToBuilder();
        for (int i = 0; i < inputs.Length; i++)
        {
            switch (inputs[i])
            {
                case InputSpread.AllLoads:
                    scale += offsets[i];
                    break;
                case InputSpread.Settlement settlement:
                    Support support = supports[settlement.Support];
                    supports[settlement.Support] = support with { Settlement = support.Settlement + offsets[i] };
                    break;
                case InputSpread.ImposedRotation rotation:
                    Support held = supports[rotation.Support];
                    supports[rotation.Support] = held with { ImposedRotation = held.ImposedRotation + offsets[i] };
                    break;
                case InputSpread input when LoadBox.IndexOf(input) is LoadIndex index:
                    ofLoads.TryAdd(index, []);
                    ofLoads[index].Add((input, offsets[i]));
                    break;
            }
        }

        ImmutableArray<LoadCase?> cases = [.. model.Cases.Select(OfCase)];
        return cases.Contains(null) ? null : new BeamModel(
            model.Spans,
            supports.ToImmutable(),
            model.Hinges,
            cases!,
            [.. model.Combinations.Select(one => one with { Factors = [.. one.Factors.Select(f => scale * f)] })],
            model.HasAbsoluteStiffness);

        LoadCase? OfCase(LoadCase loadCase, int index)
        {
            ImmutableArray<Load?> loads =
            [
                .. loadCase.Loads.Select((load, i) => ofLoads.TryGetValue(new LoadIndex(index, i), out var changes)
                    ? Altered(load, changes, model.Length)
                    : load),
            ];
            return loads.Contains(null) ? null : loadCase with { Loads = loads! };
        }
    }

    private static Load? Altered(Load load, List<(InputSpread Input, double Offset)> changes, double length)
    {
        double factor = 1;
        (double start, double end, double at, double from, double to) = (0, 0, 0, 0, 0);
        bool keepsTotal = false;
        foreach ((InputSpread input, double offset) in changes)
        {
            factor *= input is InputSpread.LoadSize ? 1 + offset : 1;
            start += input is InputSpread.StartIntensity ? offset : 0;
            end += input is InputSpread.EndIntensity ? offset : 0;
            at += input is InputSpread.LoadPosition ? offset : 0;
            from += input is InputSpread.LoadFrom ? offset : 0;
            to += input is InputSpread.LoadTo ? offset : 0;
            keepsTotal |= input is InputSpread.LoadFrom { KeepsTotal: true } or InputSpread.LoadTo { KeepsTotal: true };
        }

        switch (load)
        {
            case Load.Point point:
                return new Load.Point(On(point.Position + at), factor * point.Down, factor * point.Right);
            case Load.Couple couple:
                return new Load.Couple(On(couple.Position + at), factor * couple.Moment, couple.Side);
            case Load.Distributed spread:
                (double left, double right) = (On(spread.From + from), On(spread.To + to));
                if (left >= right)
                {
                    return null;
                }

                double scale = keepsTotal ? factor * (spread.To - spread.From) / (right - left) : factor;
                return new Load.Distributed(
                    left,
                    right,
                    scale * (spread.StartIntensity + start),
                    scale * (spread.EndIntensity + end),
                    spread.ActsAlong);
            default:
                throw new System.Diagnostics.UnreachableException();
        }

        double On(double position) => Math.Clamp(position, 0, length);
    }
}
