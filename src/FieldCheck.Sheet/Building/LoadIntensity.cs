namespace FieldCheck.Sheet.Building;

/// <summary>Intensity of a distributed load, given by itself, as pressure on a width, or as a total.</summary>
internal static class LoadIntensity
{
    /// <param name="row">The load.</param>
    /// <param name="length">How far it reaches [m]; null when that is not known.</param>
    /// <returns>Intensity at its left and right end [N/m]; null where it is not known, which has been told.</returns>
    internal static (double? Start, double? End) Read(Row row, double? length)
    {
        bool isPressure = row.Has("pressure") || row.Has("width");
        string[] ways = [.. Ways(row, isPressure)];
        RefuseStrayKeys(row, isPressure);
        switch (ways)
        {
            case ["intensity"]:
                double? start = row.Value("intensity");
                return (start, row.Has("intensity_end") ? row.Value("intensity_end") : start);
            case ["pressure and width"]:
                return Pressure(row);
            case ["total"]:
                double? even = row.Value("total") / length;
                return (even, even);
            case []:
                row.Refuse("intensity", ProblemText.NoIntensity);
                return (null, null);
            default:
                row.Refuse(ways[^1], ProblemText.TwoForms("a distributed load", ways[0], ways[1]));
                return (null, null);
        }
    }

    private static IEnumerable<string> Ways(Row row, bool isPressure)
    {
        if (isPressure)
        {
            yield return "pressure and width";
        }

        if (row.Has("intensity"))
        {
            yield return "intensity";
        }

        if (row.Has("total"))
        {
            yield return "total";
        }
    }

    private static void RefuseStrayKeys(Row row, bool isPressure)
    {
        if (row.Has("intensity_end") && !row.Has("intensity"))
        {
            row.Refuse("intensity_end", ProblemText.EndWithoutIntensity);
        }

        if (row.Has("pressure_end") && !isPressure)
        {
            row.Refuse("pressure_end", ProblemText.EndWithoutPressure);
        }

        if (isPressure && row.IsTrue("axial"))
        {
            row.Refuse("axial", ProblemText.AxialPressure);
        }
    }

    private static (double? Start, double? End) Pressure(Row row)
    {
        double? start = row.Needed("pressure", ProblemText.NoPressure);
        double? width = row.NeededPositive("width", ProblemText.NoWidth);
        double? end = row.Has("pressure_end") ? row.Value("pressure_end") : start;
        return (start * width, end * width);
    }
}
