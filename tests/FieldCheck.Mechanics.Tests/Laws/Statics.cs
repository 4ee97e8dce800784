using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Forces on the beam summed by hand, from the loads as entered (every case once) and the reactions.</summary>
internal static class Statics
{
    /// <summary>Resultant of all that acts, its moment taken counter-clockwise about a point.</summary>
    internal static (double Right, double Up, double Moment) Resultant(
        BeamModel model, ImmutableArray<Reaction> reactions, double about) =>
        Sum(Acting(model, reactions, double.PositiveInfinity, isCutRightOfIt: true), about);

    /// <summary>N, V and M at a cut just left or just right of a place, from what acts left of the cut.</summary>
    internal static (double Axial, double Shear, double Moment) AtCut(
        BeamModel model, ImmutableArray<Reaction> reactions, double x, Side side)
    {
        (double right, double up, double moment) = Sum(Acting(model, reactions, x, side == Side.Right), x);
        return (-right, up, -moment);
    }

    /// <summary>Sum of the distributed load across the beam between two places, positive down.</summary>
    internal static double SpreadBetween(BeamModel model, double from, double to, bool along) => model.Cases
        .SelectMany(one => one.Loads)
        .OfType<Load.Distributed>()
        .Where(load => load.ActsAlong == along)
        .Sum(load => Part(load, to).Force - Part(load, from).Force);

    internal static double IntensityAt(Load.Distributed load, double x) => load.StartIntensity
        + ((load.EndIntensity - load.StartIntensity) * (x - load.From) / (load.To - load.From));

    private static (double Right, double Up, double Moment) Sum(IEnumerable<Force> forces, double about)
    {
        (double right, double up, double moment) = (0.0, 0.0, 0.0);
        foreach (Force force in forces)
        {
            right += force.Right;
            up += force.Up;
            moment += force.Couple + (force.Up * (force.X - about));
        }

        return (right, up, moment);
    }

    private static IEnumerable<Force> Acting(
        BeamModel model, ImmutableArray<Reaction> reactions, double cut, bool isCutRightOfIt)
    {
        bool IsLeft(double x) => x < cut || (x == cut && isCutRightOfIt);
        IEnumerable<Force> held = model.Supports.Zip(reactions, (support, reaction) => new Force(
            support.Position, reaction.Horizontal, reaction.Vertical, reaction.Moment));
        IEnumerable<Force> loads = model.Cases.SelectMany(one => one.Loads).Select(load => load switch
        {
            Load.Point point => new Force(point.Position, point.Right, -point.Down, 0),
            Load.Couple couple => new Force(couple.Position, 0, 0, couple.Moment),
            Load.Distributed spread => Spread(spread, cut),
            _ => throw new ArgumentOutOfRangeException(nameof(model), load, "Not a load."),
        });
        return held.Concat(loads).Where(force => IsLeft(force.X));
    }

    // Moved to its left end with a couple, not to its centre: a load that changes sign may have none.
    private static Force Spread(Load.Distributed load, double cut)
    {
        (double force, double turning) = Part(load, cut);
        return load.ActsAlong ? new Force(load.From, force, 0, 0) : new Force(load.From, 0, -force, -turning);
    }

    private static (double Force, double Turning) Part(Load.Distributed load, double cut)
    {
        double length = Math.Clamp(cut, load.From, load.To) - load.From;
        double end = IntensityAt(load, load.From + length);
        return (length * (load.StartIntensity + end) / 2, length * length * (load.StartIntensity + (2 * end)) / 6);
    }

    private readonly record struct Force(double X, double Right, double Up, double Couple);
}
