using System.Diagnostics;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Tables;

/// <summary>Sizes and places of loads in words.</summary>
/// <param name="Words">The beam's words.</param>
internal sealed record LoadWords(BeamWords Words)
{
    /// <summary>The size of a load times a factor, as "12.00 kN/m"; down goes without saying.</summary>
    internal string Size(Load load, double factor = 1) => load switch
    {
        Load.Point point => Point(point.Down * factor, point.Right * factor),
        Load.Couple couple => Words.Turning(couple.Moment * factor),
        Load.Distributed { ActsAlong: true } spread => Spread(spread, factor, " right", " left"),
        Load.Distributed spread => Spread(spread, factor, "", " up"),
        _ => throw new UnreachableException(),
    };

    /// <summary>What a load covers, as "at 3.40 m" or "from 0.60 m to 1.60 m".</summary>
    internal string Place(Load load) => load switch
    {
        Load.Point point => $"at {Words.PlaceInFull(point.Position)}",
        Load.Couple couple => $"at {Words.PlaceInFull(couple.Position)}",
        Load.Distributed spread => $"from {Words.PlaceInFull(spread.From)} to {Words.PlaceInFull(spread.To)}",
        _ => throw new UnreachableException(),
    };

    /// <summary>What a spread load comes to, as "12.00 kN"; null for others.</summary>
    internal string? InAll(Load load) => load is Load.Distributed spread
        ? Words.Say(
            Math.Abs(spread.StartIntensity + spread.EndIntensity) / 2 * (spread.To - spread.From), QuantityKind.Force)
        : null;

    private string Point(double down, double right)
    {
        if (right == 0)
        {
            return Words.Say(Math.Abs(down), QuantityKind.Force) + (down < 0 ? " up" : "");
        }

        return down == 0 ? Words.Horizontal(right) : $"{Point(down, 0)} and {Words.Horizontal(right)}";
    }

    private string Spread(Load.Distributed spread, double factor, string positive, string negative)
    {
        double start = spread.StartIntensity * factor;
        double end = spread.EndIntensity * factor;
        if (start == end)
        {
            return One(start, positive, negative);
        }

        return start * end >= 0
            ? $"{Words.Number(Math.Abs(start), QuantityKind.ForcePerLength)} to {One(end, start, positive, negative)}"
            : $"{One(start, positive, negative)} to {One(end, positive, negative)}";
    }

    private string One(double intensity, string positive, string negative) =>
        One(intensity, intensity, positive, negative);

    private string One(double intensity, double sense, string positive, string negative) =>
        Words.Say(Math.Abs(intensity), QuantityKind.ForcePerLength)
        + (sense < 0 || intensity < 0 ? negative : positive);
}
