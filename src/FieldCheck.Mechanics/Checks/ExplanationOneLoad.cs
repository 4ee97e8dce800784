using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Tries slips with one load: left out, doubled, of another width, elsewhere.</summary>
internal static class ExplanationOneLoad
{
    internal static void Try(ExplanationBeam beam, ExplanationList found)
    {
        ExplanationLoad[] loads = [.. beam.Loads.Where(load => load is { Factor: not 0, IsOwnWeight: false })];
        foreach (ExplanationLoad load in loads)
        {
            found.Add(new Slip.LoadLeftOut(load.Index), 2, Scaled(beam, 0, load));
            bool hasWidth = HasWidth(beam, load);
            found.Add(
                hasWidth ? new Slip.TributaryWidth(load.Index, 2) : new Slip.LoadDoubled(load.Index),
                3,
                Scaled(beam, 2, load));
            if (hasWidth)
            {
                found.Add(new Slip.TributaryWidth(load.Index, 0.5), 3, Scaled(beam, 0.5, load));
            }

            ExplanationElsewhere.Try(beam, found, load);
        }

        ExplanationLoad[] spread = [.. loads.Where(load => HasWidth(beam, load))];
        if (spread.Length > 1)
        {
            found.Add(new Slip.TributaryWidth(null, 0.5), 3, Scaled(beam, 0.5, spread));
            found.Add(new Slip.TributaryWidth(null, 2), 3, Scaled(beam, 2, spread));
        }
    }

    private static bool HasWidth(ExplanationBeam beam, ExplanationLoad load) =>
        load.Load is Load.Distributed && !beam.Stated.WithoutWidth.Contains(load.Index);

    /// <summary>The figures with some loads of another size [N or N·m].</summary>
    internal static double[]? Scaled(ExplanationBeam beam, double ratio, params ReadOnlySpan<ExplanationLoad> loads)
    {
        LoadChange[] changes = new LoadChange[loads.Length];
        for (int i = 0; i < changes.Length; i++)
        {
            changes[i] = new LoadChange(loads[i].Load, (ratio - 1) * loads[i].Factor, IsOwn: true);
        }

        return beam.With(changes);
    }

    /// <summary>The figures with other loads in place of one [N or N·m].</summary>
    internal static double[]? Instead(
        ExplanationBeam beam, ExplanationLoad load, params ReadOnlySpan<Load> others)
    {
        LoadChange[] changes = new LoadChange[others.Length + 1];
        changes[0] = new LoadChange(load.Load, -load.Factor, IsOwn: true);
        for (int i = 0; i < others.Length; i++)
        {
            changes[i + 1] = new LoadChange(others[i], load.Factor);
        }

        return beam.With(changes);
    }
}
