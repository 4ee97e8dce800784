using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Model;

/// <summary>Finds where V·Q / (I·t) is greatest in an area.</summary>
internal static class PeakShear
{
    private const double GoldenShare = 0.6180339887498949;

    /// <summary>Shear force over the greatest shear stress, I·t/Q at the place of it [m²].</summary>
    internal static double AreaOf(PlaneArea area)
    {
        ImmutableArray<double> levels = area.Levels();
        double greatest = 0;
        for (int i = 0; i + 1 < levels.Length; i++)
        {
            greatest = Math.Max(greatest, Math.Max(
                Share(area, levels[i], area.Width(levels[i], above: true)),
                Share(area, levels[i + 1], area.Width(levels[i + 1], above: false))));
        }

        for (int i = 0; i + 1 < levels.Length; i++)
        {
            greatest = Math.Max(greatest, Inside(area, levels[i], levels[i + 1], greatest));
        }

        return area.SecondMoment / greatest;
    }

    // Between two levels Q only grows or only falls, as the centroid is a level.
    private static double Inside(PlaneArea area, double low, double high, double known)
    {
        double moment = Math.Max(area.FirstMomentAbove(low), area.FirstMomentAbove(high));
        double least = area.LeastWidth(low, high);
        if (least > 0 && moment <= known * least * (1 + 1e-12))
        {
            return 0;
        }

        double best = 0;
        while (high - low > 1e-7 * (area.Top - area.Bottom))
        {
            double first = high - GoldenShare * (high - low);
            double second = low + GoldenShare * (high - low);
            double atFirst = Share(area, first, area.Width(first, above: true));
            double atSecond = Share(area, second, area.Width(second, above: true));
            best = Math.Max(best, Math.Max(atFirst, atSecond));
            (low, high) = atFirst > atSecond ? (low, second) : (first, high);
        }

        return best;
    }

    private static double Share(PlaneArea area, double height, double width)
    {
        double moment = area.FirstMomentAbove(height);

        // Towards a rounded edge both run out into rounding.
        bool isAtEdge = moment < 1e-10 * area.Area * (area.Top - area.Bottom);
        return isAtEdge ? 0 : moment / width;
    }
}
