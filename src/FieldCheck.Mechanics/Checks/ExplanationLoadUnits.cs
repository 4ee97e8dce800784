using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Tries one load with its size, place or length in another unit.</summary>
internal static class ExplanationLoadUnits
{
    private static readonly UnitMixUp[] OfForce =
    [
        UnitMixUp.Thousand, UnitMixUp.KilonewtonAndKip, UnitMixUp.NewtonAndKilogram, UnitMixUp.PoundAndKilogram,
    ];

    private static readonly UnitMixUp[] OfIntensity =
    [
        .. OfForce, UnitMixUp.FootAndMetre, UnitMixUp.InchAndFoot, UnitMixUp.NewtonPerMetreAndPoundPerFoot,
    ];

    private static readonly UnitMixUp[] OfMoment =
    [
        .. OfForce, UnitMixUp.FootAndMetre, UnitMixUp.InchAndFoot, UnitMixUp.NewtonMetreAndPoundFoot,
    ];

    internal static void Try(ExplanationBeam beam, ExplanationList found)
    {
        foreach (ExplanationLoad load in beam.Loads)
        {
            if (load.Factor == 0 || load.IsOwnWeight)
            {
                continue;
            }

            UnitMixUp[] sizes = load.Load switch
            {
                Load.Point => OfForce,
                Load.Distributed => OfIntensity,
                _ => OfMoment,
            };
            foreach (UnitMixUp units in sizes)
            {
                double ratio = units.Ratio();
                found.Add(
                    new Slip.LoadUnits(load.Index, units, true), 3, ExplanationOneLoad.Scaled(beam, ratio, load));
                found.Add(
                    new Slip.LoadUnits(load.Index, units, false), 3, ExplanationOneLoad.Scaled(beam, 1 / ratio, load));
            }

            foreach (UnitMixUp units in ExplanationLengths.Units)
            {
                TryPlace(beam, found, load, units, true);
                TryPlace(beam, found, load, units, false);
            }
        }
    }

    private static void TryPlace(
        ExplanationBeam beam, ExplanationList found, ExplanationLoad load, UnitMixUp units, bool isTooGreat)
    {
        double ratio = isTooGreat ? units.Ratio() : 1 / units.Ratio();
        Load? elsewhere = load.Load switch
        {
            Load.Point point => OnBeam(beam, ratio * point.Position)
                ? new Load.Point(ratio * point.Position, point.Down, point.Right)
                : null,
            Load.Couple couple => OnBeam(beam, ratio * couple.Position)
                ? new Load.Couple(ratio * couple.Position, couple.Moment, couple.Side)
                : null,
            Load.Distributed { From: > 0 } spread => Over(beam, spread, ratio * spread.From, ratio * spread.To),
            _ => null,
        };
        if (elsewhere is not null)
        {
            found.Add(
                new Slip.PlaceUnits(load.Index, units, isTooGreat),
                3,
                ExplanationOneLoad.Instead(beam, load, elsewhere));
        }

        if (load.Load is Load.Distributed long1
            && Over(beam, long1, long1.From, long1.From + ratio * (long1.To - long1.From)) is { } other)
        {
            found.Add(
                new Slip.StretchUnits(load.Index, units, isTooGreat),
                3,
                ExplanationOneLoad.Instead(beam, load, other));
        }
    }

    private static bool OnBeam(ExplanationBeam beam, double position) => position <= beam.Model.Length;

    private static Load.Distributed? Over(ExplanationBeam beam, Load.Distributed spread, double from, double to) =>
        OnBeam(beam, to)
            ? new Load.Distributed(from, to, spread.StartIntensity, spread.EndIntensity, spread.ActsAlong)
            : null;
}
