using System.Diagnostics;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>How much load there is in all, whichever way it acts.</summary>
public static class LoadSizes
{
    /// <summary>Sum of the sizes of the forces of all cases, each times the size of its factor [N].</summary>
    /// <param name="model">The beam.</param>
    /// <param name="factors">One factor for each case of the model, in its order [–].</param>
    public static double Total(BeamModel model, IReadOnlyList<double> factors)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(factors);
        return model.Cases.Zip(factors).Sum(pair => Math.Abs(pair.Second) * pair.First.Loads.Sum(Of));
    }

    private static double Of(Load load) => load switch
    {
        Load.Point point => double.Hypot(point.Down, point.Right),
        Load.Couple => 0,
        Load.Distributed spread => (spread.To - spread.From) * MeanSize(spread.StartIntensity, spread.EndIntensity),
        _ => throw new UnreachableException(),
    };

    /// <summary>Mean size of what varies in a straight line, through nothing where the ends differ in sign.</summary>
    private static double MeanSize(double start, double end)
    {
        double sizes = Math.Abs(start) + Math.Abs(end);
        bool changesSense = Math.Sign(start) * Math.Sign(end) < 0;
        return changesSense ? ((start * (start / sizes)) + (end * (end / sizes))) / 2 : sizes / 2;
    }
}
