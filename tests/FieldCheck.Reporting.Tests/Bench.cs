using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Tests;

/// <summary>Beams built straight from the model and solved, for what draws and tells of them.</summary>
internal static class Bench
{
    /// <summary>A beam of spans of one stick, E·I = 9 GPa · 75 x 225 mm.</summary>
    internal static BuiltBeam Beam(
        double[] spans, Support[] supports, Load[] loads, double[]? hinges = null, UnitSystem units = UnitSystem.Si) =>
        Beam(spans, supports, loads, hinges ?? [], units, hasStiffness: true);

    internal static BuiltBeam Beam(
        double[] spans, Support[] supports, Load[] loads, double[] hinges, UnitSystem units, bool hasStiffness)
    {
        Combination all = new("all loads", CombinationBasis.Service, [1.0]);
        BeamModel model = new(
            [.. spans.Select(length => new Span(length, 9e9 * 0.075 * Math.Pow(0.225, 3) / 12, 9e9 * 0.075 * 0.225))],
            [.. supports],
            [.. hinges],
            [new LoadCase("live", [.. loads])],
            [all],
            hasStiffness);
        ImmutableArray<NamedSupport> named =
        [
            .. supports.Select((support, i) => new NamedSupport(
                support, $"{(char)('A' + i)}", i, Joint: null, KindOf(support), ActsAsWritten: false)),
        ];
        return new BuiltBeam(
            model, named, [.. loads.Select((load, i) => new NamedLoad(load, "live", "", i))], new DisplayUnits(units))
        {
            Sticks = [.. spans.Select(_ => new Stick(null, null, null, null))],
        };
    }

    internal static CombinationResponse Answer(BuiltBeam beam) =>
        Assert.IsType<BeamOutcome.Stands>(new BeamSolver().Solve(beam.Model)).Combinations[0];

    /// <summary>3.60 m on 0.30 and 2.70: 0.25 kN/m throughout, two stacks of 12 kN/m, 1.5 kN near the tip.</summary>
    internal static BuiltBeam Trench() => Beam(
        [3.60],
        [Support.Pin(0.30), Support.Roller(2.70)],
        [
            new Load.Distributed(0, 3.60, 250, 250),
            new Load.Distributed(0.60, 1.60, 12000, 12000),
            new Load.Distributed(1.80, 2.80, 12000, 12000),
            new Load.Point(3.40, 1500),
        ]);

    private static string KindOf(Support support) => support switch
    {
        { Rotation: Restraint.Rigid, Across: Restraint.None } => "guide",
        { Rotation: Restraint.Rigid } => "fixed",
        { Across: Restraint.Spring } => "spring",
        { Along: Restraint.None } => "roller",
        _ => "pin",
    };
}
