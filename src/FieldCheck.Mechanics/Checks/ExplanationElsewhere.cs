using System.Diagnostics;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Tries one load measured from the other end, lumped or spread; what it carries in all stays.</summary>
internal static class ExplanationElsewhere
{
    internal static void Try(ExplanationBeam beam, ExplanationList found, ExplanationLoad load)
    {
        bool isWithinNumbers = double.IsFinite(Down(load.Load)) && double.IsFinite(Right(load.Load));
        if (!beam.Fit.CouldFit(0) || !isWithinNumbers)
        {
            return;
        }

        double length = beam.Model.Length;
        Load mirrored = FromOtherEnd(load.Load, length);
        found.Add(new Slip.LoadFromOtherEnd(load.Index), 3, ExplanationOneLoad.Instead(beam, load, mirrored));
        if (load.Load is Load.Distributed spread)
        {
            found.Add(new Slip.LoadLumped(load.Index), 3, ExplanationOneLoad.Instead(beam, load, Lumped(spread)));
        }

        if (load.Load is Load.Couple)
        {
            return;
        }

        TrySpread(beam, found, load, 0, length);
        double[] ends = ExplanationBays.Ends(beam.Model);
        double middle = Middle(load.Load);
        for (int i = 1; i < ends.Length && ends.Length > 2; i++)
        {
            if (ends[i - 1] < middle && middle < ends[i])
            {
                TrySpread(beam, found, load, ends[i - 1], ends[i]);
            }
        }
    }

    private static void TrySpread(
        ExplanationBeam beam, ExplanationList found, ExplanationLoad load, double from, double to)
    {
        Load.Distributed? across = Evenly(Down(load.Load), from, to, false);
        Load.Distributed? along = Evenly(Right(load.Load), from, to, true);
        double[]? predicted = (across, along) switch
        {
            (not null, not null) => ExplanationOneLoad.Instead(beam, load, across, along),
            (not null, null) => ExplanationOneLoad.Instead(beam, load, across),
            (null, not null) => ExplanationOneLoad.Instead(beam, load, along),
            _ => null,
        };
        found.Add(new Slip.LoadSpread(load.Index, from, to), 3, predicted);
    }

    private static Load.Distributed? Evenly(double size, double from, double to, bool actsAlong) => size == 0
        ? null
        : new Load.Distributed(from, to, size / (to - from), size / (to - from), actsAlong);

    private static double Down(Load load) => ExplanationLoad.Down(load);

    private static double Right(Load load) => load switch
    {
        Load.Point point => point.Right,
        Load.Distributed { ActsAlong: true } spread => Total(spread),
        _ => 0,
    };

    private static double Total(Load.Distributed spread) =>
        (spread.StartIntensity + spread.EndIntensity) / 2 * (spread.To - spread.From);

    private static double Middle(Load load) => load switch
    {
        Load.Point point => point.Position,
        Load.Couple couple => couple.Position,
        Load.Distributed spread => (spread.From + spread.To) / 2,
        _ => throw new UnreachableException(),
    };

    private static Load.Point Lumped(Load.Distributed spread) => spread.ActsAlong
        ? new Load.Point(Middle(spread), 0, Total(spread))
        : new Load.Point(Middle(spread), Total(spread));

    private static Load FromOtherEnd(Load load, double length) => load switch
    {
        Load.Point point => new Load.Point(length - point.Position, point.Down, point.Right),
        Load.Couple couple => new Load.Couple(length - couple.Position, couple.Moment, couple.Side),
        Load.Distributed spread => new Load.Distributed(
            length - spread.To, length - spread.From, spread.EndIntensity, spread.StartIntensity, spread.ActsAlong),
        _ => throw new UnreachableException(),
    };
}
